/** The names of all fields of a type, however deep. */
export type KeysOf<T> = T extends readonly (infer One)[]
  ? KeysOf<One>
  : T extends object
    ? { [Key in keyof T]-?: Key | KeysOf<T[Key]> }[keyof T]
    : never;

/** Fields that hold money, or what money is made of. */
export type MoneyKey =
  | 'cost'
  | 'unitCost'
  | 'price'
  | 'amount'
  | 'margin'
  | 'marginShare'
  | 'rate'
  | 'labour'
  | 'materials'
  | 'overhead';
