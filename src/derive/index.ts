export { derive, type DerivedBuild, type DerivedItem, type Instance } from './derive.ts';
