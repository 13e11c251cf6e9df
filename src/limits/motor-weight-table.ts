/** Weights of petrol outboards and what belongs to them, in pounds, for motors up to a rated horsepower. */
export interface MotorRow {
  /** The row is for motors above the row before and up to this. */
  readonly upTo: number;
  /** Column 2: heaviest published dry weight of the class, and a tenth. */
  readonly dry: number;
  /** Column 3: 105 % of the dry weight. */
  readonly running: number;
  /** Column 4: in the water to where a swamped boat lets it hang. */
  readonly swamped: number;
  /** Column 5: controls and rigging. */
  readonly controls: number;
  /** Column 6. */
  readonly battery: number;
  /** Column 7. */
  readonly batterySubmerged: number;
  /** Column 8: full portable tank. */
  readonly fuel: number;
  /** Column 9: columns 3, 5, 6 and 8. */
  readonly total: number;
}

const row = (
  ...[upTo, dry, running, swamped, controls, battery, batterySubmerged, fuel, total]: readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
): MotorRow => ({
  upTo,
  dry,
  running,
  swamped,
  controls,
  battery,
  batterySubmerged,
  fuel,
  total,
});

/**
 * Table 183.75 of 33 CFR 183, subpart E, in force since 1 June 2018 (82 FR 16512, 82 FR 49737), which follows
 * ABYC S-30; the rows are those of S-30 table 1A as a builders' site copies it, to be confirmed against the law.
 */
export const MOTOR_WEIGHTS: readonly MotorRow[] = [
  row(2, 30, 32, 27, 0, 0, 0, 0, 32),
  row(3.9, 42, 44, 37, 0, 0, 0, 0, 44),
  row(6.9, 66, 69, 59, 0, 0, 0, 25, 94),
  row(10.9, 105, 110, 94, 5, 20, 11, 50, 185),
  row(22.9, 127, 133, 113, 6, 45, 25, 50, 234),
  row(34.9, 187, 196, 167, 9, 45, 25, 100, 350),
  row(64.9, 286, 300, 255, 14, 45, 25, 100, 459),
  row(94.9, 439, 461, 392, 22, 45, 25, 100, 628),
  row(104.9, 458, 481, 409, 23, 45, 25, 100, 649),
  row(144.9, 526, 552, 469, 26, 45, 25, 100, 723),
  row(194.9, 561, 589, 501, 28, 45, 25, 100, 762),
  row(209.9, 652, 685, 582, 33, 45, 25, 100, 863),
  row(300, 699, 734, 624, 35, 45, 25, 100, 914),
  row(350, 884, 928, 789, 44, 45, 25, 100, 1117),
];
