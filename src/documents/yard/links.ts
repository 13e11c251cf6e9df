/** Pages of the yard as the others lead to them. */
export const TO = {
  orders: { text: 'All orders', page: 'index.html' },
  plan: { text: 'Plan', page: 'plan.html' },
  purchases: { text: 'Purchases', page: 'purchases.html' },
  methods: { text: 'How figures are found, and what is not computed', page: 'methods.html' },
  checks: { text: 'Checks against published values', page: 'checks.html' },
  fields: { text: 'Fields of all files', page: 'fields.html' },
} as const;
