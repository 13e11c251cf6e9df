import { type Finding, finding, type FindingCode } from '../../findings/index.ts';
import type { Condition, LinesProblem } from '../../float/index.ts';
import {
  cubicMetres,
  DEGREE,
  type Formatter,
  formatterOf,
  kilograms,
  metres,
} from '../../units/index.ts';
import { defaultsUsed } from '../hull-defaults.ts';
import { checkCrew } from './check-crew.ts';
import { conditionOf } from './conditions.ts';
import { outcomeText, remedyText } from './outcome.ts';
import type { Afloat, Ballast, Screened } from './types.ts';
import type { Figures } from '../types.ts';

type Computed = Omit<Figures, 'findings'>;

/** A lean that everyone aboard notices: a degree. Common practice, no source. */
const LIST = DEGREE;
/** Water left in a tank that still counts as drained. Common practice, no source. */
const DRAINED = 0.05;
/** Share of the displacement that may be a guess between the cross-sections. Common practice, no source. */
const MAX_SPREAD = 0.03;
/** Conditions in which people sit where they are meant to. */
const SEATED = ['with engine', 'performance test', 'fully loaded', 'custom'] as const;

const OUTCOME_CODES = {
  swamps: 'FLOAT_SWAMPED',
  'goes down': 'FLOAT_GOES_DOWN',
  capsizes: 'FLOAT_NOT_UPRIGHT',
  'not computed': 'FLOAT_NOT_COMPUTED',
} as const;

/** Findings of how it floats: lines, conditions, trim and list, people to one side, ballast and foam. */
export function checkFloat(figures: Computed): readonly Finding[] {
  const { build, float } = figures;
  const { hull } = build;
  if (hull.lines.length === 0)
    return [finding('HULL_WITHOUT_LINES', build.place(['hull']), { received: hull.name })];
  const lines = float.problems.map((problem) => linesFinding(figures, problem));
  const { afloat } = float;
  if (!afloat) return lines;
  const format = formatterOf(build.yard);
  return [
    ...lines,
    ...checkSpread(figures, afloat, format),
    ...inEitherWater(afloat, (one) => [
      ...checkSeated(figures, one, format),
      ...checkCrew(figures, one),
    ]),
    ...checkAtRest(figures, afloat, format),
    ...checkDefaults(figures),
    ...(afloat.ballast ? checkBallast(figures, afloat.ballast, format) : []),
    ...checkFoam(figures, afloat, format),
    ...checkGrowth(figures, afloat),
  ];
}

function linesFinding({ build }: Computed, problem: LinesProblem): Finding {
  const { kind, fatal, station, what, received, declared } = problem;
  const place = build.place(['hull']);
  const format = formatterOf(build.yard);
  const size = (value = 0): string =>
    what === 'volume' ? format.bulk(value) : format.fineLength(value);
  if (kind === 'differs from declared') {
    return finding('LINES_DIFFER', place, {
      received: `${what ?? 'size'} ${size(received)} by the lines of the ${build.hull.name}`,
      expected: `${size(declared)}, within 2 %`,
    });
  }
  const where = station === undefined ? '' : `, cross-section ${station + 1}`;
  return finding(fatal ? 'LINES_UNSOUND' : 'LINES_ODD', place, {
    received: `${build.hull.name}${where}: ${kind}`,
  });
}

/** What is found in one water, and what in the other alone. */
function inEitherWater(
  afloat: Afloat,
  check: (one: Screened) => readonly Finding[],
): readonly Finding[] {
  const first = check(afloat);
  if (!afloat.other) return first;
  const { water } = afloat.other;
  const alone = check(afloat.other).filter(({ code }) => !first.some((one) => one.code === code));
  return [
    ...first,
    ...alone.map((one) => ({ ...one, received: `${one.received}, in ${water} water` })),
  ];
}

function checkDefaults({ build }: Computed): readonly Finding[] {
  const used = defaultsUsed(build);
  if (used.length === 0) return [];
  return [finding('RESTS_ON_DEFAULTS', build.place(['hull']), { received: used.join('; ') })];
}

function checkSpread(
  { build }: Computed,
  { spread }: Afloat,
  format: Formatter,
): readonly Finding[] {
  if (!spread || Math.abs(spread.share) <= MAX_SPREAD) return [];
  const { displacement, share } = spread;
  return [
    finding('LINES_COARSE', build.place(['hull']), {
      received: `${format.mass(kilograms(Math.abs(displacement)))} of displacement, ${format.percent(Math.abs(share), 1)}, between curved and straight lines of the ${build.hull.name}, fully loaded`,
      expected: `at most ${format.percent(MAX_SPREAD, 0)}`,
    }),
  ];
}

function checkSeated({ build }: Computed, afloat: Screened, format: Formatter): readonly Finding[] {
  return SEATED.flatMap((name) => conditionOf(afloat, name) ?? []).flatMap((condition) => {
    const place = build.place(condition.name === 'custom' ? ['condition'] : ['boat', 'people']);
    const tell = (code: FindingCode, received: string): readonly Finding[] => {
      const remedy = remedyText(condition.remedy, format);
      const told = `${conditionName(condition, build)}: ${received}`;
      return [finding(code, place, { received: told, ...(remedy && { remedy }) })];
    };
    const { equilibrium, state } = condition;
    if (equilibrium.outcome !== 'floats') {
      return tell(OUTCOME_CODES[equilibrium.outcome], toldOutcome(condition, format));
    }
    const height = state?.metacentricHeight?.byForm;
    return height === undefined || height > 0
      ? []
      : tell('FLOAT_LOLLS', `GM ${format.dimension(height)}`);
  });
}

/** What comes of it, with how far under water or how heavy. */
function toldOutcome({ equilibrium, load }: Condition, format: Formatter): string {
  if (equilibrium.outcome !== 'swamps') return outcomeText(equilibrium);
  const { opening, capacity } = equilibrium;
  return opening
    ? `${opening.name} ${format.dimension(metres(0 - opening.freeboard))} under water`
    : `${format.mass(load.mass)}, at most ${format.mass(capacity)} stays afloat`;
}

function checkAtRest(
  { build }: Computed,
  { trim, conditions }: Afloat,
  format: Formatter,
): readonly Finding[] {
  const state = conditionOf({ conditions }, 'fully loaded')?.state;
  if (!state) return [];
  const place = build.place(['boat', 'people']);
  const findings: Finding[] = [];
  if ((trim.outside ?? 0) > 0) {
    const [move] = trim.moves;
    findings.push(
      finding('TRIM_OUT_OF_BAND', move ? placeOf(build, move.item.key) : place, {
        received: trimText(state.trim, format),
        expected: `from ${trimText(trim.band.least, format)} to ${trimText(trim.band.most, format)}`,
        remedy: move
          ? `Place ${move.item.count > 1 ? 'one ' : ''}${move.item.name} ${move.to.name}: that gains ${format.degrees(move.gain)}`
          : `Seat people or stow gear further ${state.trim < trim.band.least ? 'aft' : 'forward'}; moving equipment will not fix this`,
      }),
    );
  }
  if (Math.abs(state.heel) > LIST) {
    findings.push(
      finding('LIST_AT_REST', place, {
        received: `${format.degrees(state.heel)} ${state.leans}`,
        expected: `within ${format.degrees(LIST)}`,
        remedy: `Move batteries, gear or people further to ${state.leans === 'to port' ? 'starboard' : 'port'}`,
      }),
    );
  }
  return findings;
}

function checkBallast(
  { build }: Computed,
  { item, itemKey, effect, drains, leftShare = 0, tooLarge = [] }: Ballast,
  format: Formatter,
): readonly Finding[] {
  const place = placeOf(build, itemKey);
  if (!effect) return [finding('TANK_OUTSIDE_HULL', place, { received: item })];
  if (tooLarge.length > 0)
    return tooLarge.map(({ name, area, in: cutIn, of }) =>
      finding('TANK_OPENING_TOO_LARGE', place, {
        received: `${item}: ${name} of ${format.smallArea(area)}`,
        expected: `at most ${format.smallArea(of)}, all of ${cutIn}`,
      }),
    );
  if (!drains) return [];
  if (drains.outcome === 'does not flow')
    return [finding('TANK_DOES_NOT_DRAIN', place, { received: `${item}: ${drains.why}` })];
  return leftShare > DRAINED
    ? [
        finding('TANK_DOES_NOT_DRAIN', place, {
          received: `${item}: ${format.percent(leftShare, 0)} of the water stays below the outlet`,
        }),
      ]
    : [];
}

function checkFoam(
  { build }: Computed,
  { swamped }: Afloat,
  format: Formatter,
): readonly Finding[] {
  if (!swamped) return [];
  const { rule, foam, balance } = swamped;
  const place = build.place(['hull']);
  const { length } = build.hull.dimensions;
  if ('notComputed' in rule)
    return [finding('FLOTATION_RULE_NOT_APPLICABLE', place, { received: rule.notComputed })];
  if (!rule.applies) {
    return [
      finding('FLOTATION_RULE_NOT_APPLICABLE', place, {
        received: `${build.hull.name}, ${format.length(length)}`,
        expected: 'an outboard boat shorter than 20 ft, for 33 CFR 183 subpart G',
      }),
    ];
  }
  const needed = Math.max(rule.stillNeeded, balance.stillNeeded);
  return needed > 0
    ? [
        finding('FOAM_SHORT', place, {
          received: `${format.volume(foam)} of foam`,
          expected: `${format.volume(cubicMetres(foam + needed))}, ${rule.caution}`,
        }),
      ]
    : [];
}

/** What stands in the order for an item. */
function placeOf(build: Computed['build'], key: string): Finding['place'] {
  return build.items.find((item) => item.key === key)?.place ?? build.place(['options']);
}

const conditionName = ({ name }: Condition, { order }: Computed['build']): string =>
  name === 'custom' ? (order.condition?.name ?? name) : name;

function trimText(angle: number, format: Formatter): string {
  if (angle === 0) return 'level';
  return `${format.degrees(angle)} by the ${angle > 0 ? 'stern' : 'bow'}`;
}

/** Growth that the yard allows for against the first limit that growth brings it to; limits past without it are others' to find. */
function checkGrowth(
  { build }: Pick<Figures, 'build'>,
  { growth: { allowed, first } }: Afloat,
): readonly Finding[] {
  if (!first || allowed <= first.growth) return [];
  const format = formatterOf(build.yard);
  return [
    finding('GROWTH_OVER_LIMIT', build.place(['hull']), {
      received: `${format.mass(allowed)} allowed for over the years`,
      expected: `at most ${format.mass(first.growth)}, where it reaches ${first.name}`,
    }),
  ];
}
