import path from 'node:path';
import { type LoadedWorkspace, loadWorkspace } from '../../src/cli/load.ts';
import { type Figures, type FiguredOrder, figureOrders } from '../../src/figures/index.ts';
import { readYaml, validate } from '../../src/read/index.ts';
import { type Build, resolveOrder } from '../../src/resolve/index.ts';
import { type Catalogue, type Hull, type Order, orderSchema } from '../../src/schema/index.ts';
import { decimalToNumber } from '../../src/units/index.ts';

export const ROOT = path.resolve(import.meta.dirname, '../..');

/** The demonstration as a command sees it. */
export const loaded: LoadedWorkspace = loadWorkspace(ROOT);
if (!loaded.catalogue) throw new Error('the demonstration has a sound yard file');

export const catalogue: Catalogue = loaded.catalogue;
export const orders: readonly FiguredOrder[] = loaded.computed;
/** Figures of every order, and each with its order's number, for a table of tests. */
export const figured: readonly Figures[] = orders.flatMap(({ figures }) => figures ?? []);
export const byNumber = figured.map((figures) => [figures.build.order.number, figures] as const);

/** An order of the demonstration's catalogue that a test makes up, and what reading it found. */
function orderOf(hull: string, more: string) {
  const text = `number: T-1
status: enquiry
dates: { enquiry: 2026-11-20 }
customer: { name: A Test }
boat: { use: None., people: 2 }
hull: ${hull}
${more}`;
  return validate<Order>(orderSchema, readYaml(text, 'test.yaml'));
}

/** Such an order resolved, without its figures: quick. */
export function buildOf(hull: string, more = ''): Build {
  const { sourced } = orderOf(hull, more);
  const build = sourced && resolveOrder(sourced, catalogue, new Set()).build;
  if (!build) throw new Error(`${hull} with ${more} cannot be resolved`);
  return build;
}

/** The figures of such an order. */
export function figuresOf(hull: string, more = ''): Figures {
  const { sourced, findings: ill } = orderOf(hull, more);
  const [entry] = figureOrders(sourced ? [sourced] : [], catalogue, new Set());
  const codes = [...ill, ...(entry?.findings ?? [])].map(({ code, received }) => [code, received]);
  if (!entry?.figures) throw new Error(JSON.stringify(codes));
  return entry.figures;
}

/** Length times beam, m²: like boats of different sizes are held against each other by a square metre of it. */
export const footprintOf = ({ dimensions }: Hull): number => dimensions.length * dimensions.beam;

/** Hours of every stage together, or of those named. */
export const hoursOf = ({ stageHours }: Figures, ...stages: readonly string[]): number =>
  stageHours
    .filter(({ stage }) => stages.length === 0 || stages.includes(stage))
    .reduce((sum, { hours }) => sum + decimalToNumber(hours), 0);
