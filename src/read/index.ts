export {
  BEGUN,
  digestOf,
  headOf,
  ISSUED,
  LEDGER,
  type Ledger,
  type LedgerLine,
  readLedger,
  SEALED_KINDS,
  type SealedKind,
  sealedName,
  withLines,
} from './ledger.ts';
export { type PlacedValue, type Path } from './placed.ts';
export {
  type IssuedFiles,
  openSealed,
  sealedBytes,
  type SealedQuote,
  canonicalWithDigest,
} from './read-issued.ts';
export type { BrokenOrder, OrderFilter } from './read-orders.ts';
export { readWorkspace, type Workspace } from './read-workspace.ts';
export { readYaml, type YamlText } from './read-yaml.ts';
export { validate, type Validated } from './validate.ts';
