/** The names of all fields of a type, however deep. */
export type KeysOf<T> = T extends readonly (infer One)[]
  ? KeysOf<One>
  : T extends object
    ? { [Key in keyof T]-?: Key | KeysOf<T[Key]> }[keyof T]
    : never;
