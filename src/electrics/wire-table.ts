/** Temperature rating of the insulation, degrees C: the columns of the ampacity table. */
export type Insulation = 60 | 75 | 80 | 90 | 105 | 125 | 200;

/** One conductor size. */
export interface WireSize {
  /** American wire gauge: "16", "1/0". */
  readonly awg: string;
  /** Area of copper, circular mils. */
  readonly circularMils: number;
  /** Current it may carry outside an engine space (30 C), A, by insulation. */
  readonly ampacity: Readonly<Record<Insulation, number>>;
}

const size = (
  awg: string,
  circularMils: number,
  currents: readonly [number, number, number, number, number, number, number],
): WireSize => {
  const [c60, c75, c80, c90, c105, c125, c200] = currents;
  return {
    awg,
    circularMils,
    ampacity: { 60: c60, 75: c75, 80: c80, 90: c90, 105: c105, 125: c125, 200: c200 },
  };
};

/**
 * Conductor sizes, thinnest first.
 *
 * Areas: ASTM B258. Ampacity: 33 CFR 183.425, Table 5 (public domain); that subpart is law for petrol inboard boats
 * and good practice for others. Cable sold by SAE gauge holds 6 to 11 % less copper than its AWG.
 */
export const WIRE_SIZES: readonly WireSize[] = [
  size('18', 1620, [10, 10, 15, 20, 20, 25, 25]),
  size('16', 2580, [15, 15, 20, 25, 25, 30, 35]),
  size('14', 4110, [20, 20, 25, 30, 35, 40, 45]),
  size('12', 6530, [25, 25, 35, 40, 45, 50, 55]),
  size('10', 10_380, [40, 40, 50, 55, 60, 70, 70]),
  size('8', 16_510, [55, 65, 70, 70, 80, 90, 100]),
  size('6', 26_240, [80, 95, 100, 100, 120, 125, 135]),
  size('4', 41_740, [105, 125, 130, 135, 160, 170, 180]),
  size('3', 52_620, [120, 145, 150, 155, 180, 195, 210]),
  size('2', 66_360, [140, 170, 175, 180, 210, 225, 240]),
  size('1', 83_690, [165, 195, 210, 210, 245, 265, 280]),
  size('1/0', 105_600, [195, 230, 245, 245, 285, 305, 325]),
  size('2/0', 133_100, [225, 265, 285, 285, 330, 355, 370]),
  size('3/0', 167_800, [260, 310, 330, 330, 385, 410, 430]),
  size('4/0', 211_600, [300, 360, 385, 385, 445, 475, 510]),
];

/** Share of the ampacity that is left in an engine space (50 C). 105 C: 33 CFR 183.425; the others from memory. */
export const ENGINE_SPACE_SHARE: Readonly<Record<Insulation, number>> = {
  60: 0.58,
  75: 0.75,
  80: 0.78,
  90: 0.82,
  105: 0.85,
  125: 0.89,
  200: 1,
};

/** Standard areas of metric cable, mm2 (IEC 60228, class 5 and 6). */
export const METRIC_AREAS: readonly number[] = [
  0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120,
];

/** Ratings that fuses and breakers are sold in, A; common practice, no source. */
export const PROTECTION_RATINGS: readonly number[] = [
  1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 90, 100, 125, 150, 175, 200, 225,
  250, 300, 350, 400,
];
