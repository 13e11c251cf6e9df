import type { Wait } from './types.ts';

/** What a mould, a trade and a supplier are called, by their ids. */
export interface PlanNames {
  readonly moulds: Readonly<Record<string, string>>;
  readonly trades: Readonly<Record<string, string>>;
  readonly suppliers: Readonly<Record<string, string>>;
}

/** How many waits are worth a reader's time. */
const TOLD = 3;

/** What an order waits for, the longest first: "Fitter 12 days, parts from Acme 3 days"; empty when for nothing. */
export function waitsInWords(waits: readonly Wait[], names: PlanNames): string {
  return waits
    .slice(0, TOLD)
    .map((wait) => `${nameOf(wait, names)} ${spanInWords(wait.hours)}`)
    .join(', ');
}

/** What an order waits for as its plan tells it, or that it waits for nothing else. */
export const waitsFor = ({ binds }: { readonly binds: string }): string =>
  binds === '' ? 'nothing but its own work' : binds;

function nameOf({ cause, name }: Wait, { moulds, trades, suppliers }: PlanNames): string {
  switch (cause) {
    case 'mould':
      return `{mould} of the ${moulds[name] ?? name}`;
    case 'trade':
      return trades[name] ?? name;
    case 'part':
      return `parts from ${suppliers[name] ?? name}`;
  }
}

/** Hours of the clock as a person says them: hours below a day, whole days from there. */
function spanInWords(hours: number): string {
  const [count, unit] = hours < 24 ? [Math.ceil(hours), 'hour'] : [Math.round(hours / 24), 'day'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
