export * from './money.ts';
export { shareOut } from './share-out.ts';
