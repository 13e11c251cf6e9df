export { type PlacedValue, type Path } from './placed.ts';
export { digestOf, type IssuedFile, sealed } from './read-issued.ts';
export type { BrokenOrder, OrderFilter } from './read-orders.ts';
export { readWorkspace, type Workspace } from './read-workspace.ts';
export { readYaml, type YamlText } from './read-yaml.ts';
export { validate, type Validated } from './validate.ts';
