import {
  chargeFileSchema,
  outboardFileSchema,
  trailerFileSchema,
} from './engine-trailer-charge.ts';
import { hullSchema } from './hull.ts';
import { materialFileSchema, stockFileSchema } from './materials.ts';
import { optionFileSchema } from './option.ts';
import { orderSchema } from './order.ts';
import { partSchema } from './part.ts';
import { yardSchema } from './yard.ts';

/** Each kind of YAML file: what it holds, and where it stands in the workspace. */
export const YAML_FILES = {
  order: { schema: orderSchema, file: 'orders/*.yaml' },
  yard: { schema: yardSchema, file: 'catalogue/yard.yaml' },
  hull: { schema: hullSchema, file: 'catalogue/hulls/*.yaml' },
  options: { schema: optionFileSchema, file: 'catalogue/options/*.yaml' },
  outboards: { schema: outboardFileSchema, file: 'catalogue/outboards.yaml' },
  trailers: { schema: trailerFileSchema, file: 'catalogue/trailers.yaml' },
  charges: { schema: chargeFileSchema, file: 'catalogue/charges.yaml' },
  materials: { schema: materialFileSchema, file: 'catalogue/materials.yaml' },
  stock: { schema: stockFileSchema, file: 'catalogue/stock.yaml' },
} as const;

/** Every kind of file that people write. */
export const FILES = {
  ...YAML_FILES,
  parts: { schema: partSchema, file: 'catalogue/parts/*.csv' },
} as const;
