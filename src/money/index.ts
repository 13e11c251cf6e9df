export * from './money.ts';
export * from './round.ts';
export { shareOut } from './share-out.ts';
