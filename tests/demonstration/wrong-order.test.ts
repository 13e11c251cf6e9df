import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { figureOrders } from '../../src/figures/index.ts';
import { type Finding, FINDING_CODES, positionAt } from '../../src/findings/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { overviewOrders, planShop } from '../../src/plan/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { checkCatalogue } from '../../src/resolve/index.ts';
import { type IsoDate, parseIsoDate } from '../../src/units/index.ts';
import { SPOTS } from './wrong-order-spots.ts';

const FOLDER = path.resolve(import.meta.dirname, '../fixtures/wrong-order');
/** Codes that no plain file can raise, with the test that raises each. */
const RAISED_IN: Readonly<Record<string, string>> = {
  FILE_TOO_LARGE: 'demonstration/wrong-order.test.ts',
  ISSUED_ALTERED: 'issued/attacks-on-files.test.ts',
  ISSUED_MISSING: 'issued/attacks-on-files.test.ts',
  ISSUED_NOT_IN_LEDGER: 'issued/attacks-on-files.test.ts',
  ISSUED_OF_OTHER_ORDER: 'issued/refused.test.ts',
  LEDGER_BROKEN: 'issued/attacks-on-the-ledger.test.ts',
  LEDGER_IN_DOUBT: 'issued/attacks-on-the-ledger.test.ts',
  RATING_DRAFT: 'issued/fit-to-be-sent.test.ts',
  PLAN_REFUSED: 'plan/shop-plan.test.ts',
  QUOTE_DIFFERS: 'issued/issued.test.ts',
  REVISION_NOT_ISSUED: 'issued/refused.test.ts',
  VARIATION_DIFFERS: 'figures/variations.test.ts',
  LAYUP_IMPOSSIBLE: 'figures/laminate.test.ts',
  LAYUP_MASS_OFF: 'figures/laminate.test.ts',
  KIT_DIFFERS: 'figures/laminate.test.ts',
  PANEL_SCREENING_OVER: 'figures/laminate.test.ts',
  INFUSION_TOO_SLOW: 'figures/laminate.test.ts',
  CATALYST_OUT_OF_RANGE: 'figures/laminate.test.ts',
  WIRE_REFUSED: 'figures/electrics.test.ts',
  FUSE_ABOVE_DEVICE: 'figures/electrics.test.ts',
  PANEL_FULL: 'figures/electrics.test.ts',
  VOLTAGE_WITHOUT_BANK: 'figures/electrics.test.ts',
  BANK_TOO_SMALL: 'figures/electrics.test.ts',
  BOX_OUTSIDE_HULL: 'figures/places.test.ts',
  ACCEPTED_NOT_FOUND: 'figures/crew.test.ts',
  HULL_WITHOUT_LINES: 'figures/float.test.ts',
  RESTS_ON_DEFAULTS: 'figures/crew.test.ts',
  FLOAT_LOLLS: 'figures/float.test.ts',
  FLOAT_NOT_UPRIGHT: 'figures/float.test.ts',
  FLOAT_SWAMPED: 'figures/float.test.ts',
  FLOAT_GOES_DOWN: 'figures/float-outcomes.test.ts',
  FLOAT_NOT_COMPUTED: 'figures/float-outcomes.test.ts',
  EDGE_BEARS_LITTLE: 'figures/crew.test.ts',
  FEW_TO_ONE_SIDE: 'figures/crew.test.ts',
  ONE_AT_EDGE: 'figures/crew.test.ts',
  RATING_NOT_AFLOAT: 'figures/crew.test.ts',
  FLOTATION_RULE_NOT_APPLICABLE: 'figures/swamped.test.ts',
  FOAM_SHORT: 'figures/swamped.test.ts',
  GROWTH_OVER_LIMIT: 'figures/growth.test.ts',
  ITEMS_IN_ONE_PLACE: 'figures/places.test.ts',
  FILE_MISSING: 'read/read-workspace.test.ts',
  LINES_COARSE: 'figures/float-outcomes.test.ts',
  LINES_DIFFER: 'figures/float.test.ts',
  LINES_ODD: 'figures/float.test.ts',
  LINES_UNSOUND: 'figures/float.test.ts',
  LIST_AT_REST: 'figures/float.test.ts',
  TANK_DOES_NOT_DRAIN: 'figures/float.test.ts',
  TANK_OPENING_TOO_LARGE: 'figures/float.test.ts',
  TANK_OUTSIDE_HULL: 'figures/float.test.ts',
  TRIM_OUT_OF_BAND: 'figures/float.test.ts',
  DOES_NOT_PLANE: 'figures/performance.test.ts',
  MAY_PORPOISE: 'figures/performance.test.ts',
  BOW_MOTOR_WEAK: 'figures/performance.test.ts',
  SPEED_METHODS_DIFFER: 'figures/performance.test.ts',
  OUTSIDE_METHOD_RANGE: 'figures/performance.test.ts',
  STERN_FREEBOARD_LOW: 'figures/performance.test.ts',
  POWER_OVER_METHOD: 'figures/performance.test.ts',
  STEERING_MISMATCH: 'figures/performance.test.ts',
  CATEGORY_NOT_SCREENED: 'figures/performance.test.ts',
  NOT_REQUIRED_BY_LAW: 'figures/performance.test.ts',
  BRAKES_MISSING: 'figures/performance.test.ts',
  BRAKES_ADVISED: 'figures/performance.test.ts',
  BALL_LOAD_LOW: 'figures/performance.test.ts',
  BALL_LOAD_HIGH: 'figures/performance.test.ts',
  AXLE_OR_TYRE_OVERLOADED: 'figures/performance.test.ts',
  TRAILER_TOO_WIDE: 'figures/performance.test.ts',
  TRAILER_TOO_LONG: 'figures/performance.test.ts',
  WINCH_POST_OUT_OF_REACH: 'figures/performance.test.ts',
  VEHICLE_OVERLOADED: 'figures/performance.test.ts',
  ROOF_OVERLOADED: 'figures/performance.test.ts',
};
const TODAY: IsoDate = parseIsoDate('2026-11-26') ?? expect.fail('a date');

/** Every finding that reading, resolving, computing and planning make of a workspace, with its orders. */
function checked(folder: string) {
  const { catalogue, brokenIds, orders, findings, sources } = readWorkspace(folder);
  if (!catalogue) throw new Error('the yard file of the fixture is sound');
  const figured = figureOrders(orders, catalogue, brokenIds);
  const { quoteDays } = catalogue.yard.value;
  const plan = planShop(figured, catalogue.yard.value, TODAY);
  if ('notComputed' in plan) throw new Error(plan.notComputed);
  const { orders: states } = overviewOrders(figured, quoteDays, TODAY, plan ? { plan } : {});
  const all = [
    ...findings,
    ...checkCatalogue(catalogue, brokenIds),
    ...states.flatMap((state) => state.findings),
  ];
  return { figured, sources, findings: all };
}

const { figured, findings, sources } = checked(FOLDER);

function spotOf({ code, place }: Finding): string {
  const text = sources.get(place.file);
  if (!place.range || text === undefined) return code;
  const { line, column } = positionAt(text, place.range[0]);
  return `${line}:${column} ${code}`;
}

const spotsIn = (file: string): readonly string[] => [
  ...new Set(findings.filter(({ place }) => place.file === file).map(spotOf)),
];
const told = (code: string, file: string): string =>
  findings
    .filter((one) => one.code === code && one.place.file === file)
    .map((one) => `${one.received}; ${one.expected ?? ''}; ${one.remedy}`)
    .join('\n');

describe('a workspace that is wrong on purpose', () => {
  it.each(Object.keys(SPOTS))('is told its mistakes at their places: %s', (file) => {
    expect(spotsIn(file).toSorted()).toEqual([...(SPOTS[file] ?? [])].toSorted());
  });

  it('is told of no mistake in any other file', () => {
    const files = new Set(findings.map(({ place }) => place.file));
    expect([...files].toSorted()).toEqual(Object.keys(SPOTS).toSorted());
  });

  it('is told every code that there is, but for those that another test raises', () => {
    const codes = new Set<string>(findings.map(({ code }) => code));
    const missing = Object.keys(FINDING_CODES).filter((code) => !codes.has(code));
    expect(missing.toSorted()).toEqual(Object.keys(RAISED_IN).toSorted());
    for (const [code, file] of Object.entries(RAISED_IN))
      expect(readFileSync(path.resolve(import.meta.dirname, '..', file), 'utf8')).toContain(code);
  });

  it.each([
    ['WRONG_VALUE', 'orders/wrong-fields.yaml', 'Did you mean "quoted"?'],
    ['UNKNOWN_KEY', 'orders/wrong-fields.yaml', 'Did you mean "phone:"?'],
    ['UNKNOWN_ID', 'orders/wrong-rules.yaml', 'the nearest is "rail"'],
    ['UNKNOWN_ID', 'orders/wrong-names.yaml', 'which has mistakes of its own'],
    ['UNIT_KIND', 'orders/wrong-fields.yaml', '"20 kg", which is a mass'],
    ['EXCLUDED', 'orders/wrong-rules.yaml', 'Hood together with Rail'],
    ['PLACE_TAKEN', 'orders/wrong-rules.yaml', 'Bench and Seat at middle'],
    ['REQUIREMENT_UNMET', 'orders/wrong-rules.yaml', 'Add battery to the options'],
    ['REQUIREMENT_CIRCULAR', 'catalogue/options/wrong.yaml', 'hen -> egg -> hen'],
    ['QUANTITY_OUT_OF_RANGE', 'orders/wrong-rules.yaml', 'from 1 to 8'],
    ['UNKNOWN_ID', 'catalogue/parts/acme-prats.csv', 'Did you mean "acme-parts"?'],
  ])('is told what would remedy it: %s in %s', (code, file, words) => {
    expect(told(code, file)).toContain(words);
  });
});

describe('the orders beside the wrong ones', () => {
  const sound = figured.filter(({ figures }) => figures !== undefined);

  it('are computed when nothing worse than a warning is found', () => {
    expect(sound.map(({ order }) => order.value.number)).toEqual([
      'W-8',
      'W-1',
      'W-9',
      'W-7',
      // Its errors are of safety: figured, and never sent.
      'W-6',
    ]);
  });

  it('have the price that a hand works out', () => {
    // Hull (12 m2 x 6.80 x 1.1 + 20 h x 88 + 400) / 0.72 and 10 h x 88 / 0.72; engine (5200 + 3 h x 88) / 0.86;
    // trailer (2100 + 2 h x 88) / 0.84: 3124.67 + 1222.22 + 6353.49 + 2709.52 = 13409.90; with 10 % tax 14750.89.
    const one = sound.find(({ order }) => order.value.number === 'W-1');
    expect(one?.findings).toEqual([]);
    expect(one?.figures && moneyToText(one.figures.price.driveAway)).toBe('14750.89');
  });

  it('stay as they are when another file is larger than any order', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'orlop-wrong-'));
    try {
      cpSync(FOLDER, folder, { recursive: true });
      writeFileSync(path.join(folder, 'orders/huge.yaml'), '#'.repeat(512 * 1024 + 1));
      const grown = checked(folder);
      const added = grown.findings.filter(({ place }) => !(place.file in SPOTS));
      expect(added.map(({ code, place }) => `${place.file} ${code}`)).toEqual([
        'orders/huge.yaml FILE_TOO_LARGE',
      ]);
      expect(grown.figured.filter(({ figures }) => figures)).toHaveLength(sound.length);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
