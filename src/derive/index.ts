export { derive, type DerivedBuild, type Instance, instancesOf } from './derive.ts';
