import { type Finding, finding, type FindingCode } from '../../findings/index.ts';
import type { Condition, Equilibrium } from '../../float/index.ts';
import { type Formatter, formatterOf, kilograms, whyNot } from '../../units/index.ts';
import { isNotComputed } from '../facts/fact.ts';
import { crewDefaults } from '../hull-defaults.ts';
import type { Figures } from '../types.ts';
import { conditionOf } from './conditions.ts';
import { outcomeText, remedyText } from './outcome.ts';
import type { Screened } from './types.ts';

type Checked = Pick<Figures, 'build'>;

/** At the shop's rating, seated: what never may fail. */
const RATED = ['rated', 'rated half tanks'] as const;
/** Everyone at one end. */
const ENDS = ['people aft', 'people forward', 'rated aft', 'rated forward'] as const;

/** Findings of people aboard: at the shop's rating, at the edge of the cockpit, to one side, and at either end. */
export function checkCrew({ build }: Checked, afloat: Screened): readonly Finding[] {
  const format = formatterOf(build.yard);
  const told = (code: FindingCode, received: string, more: object = {}): Finding =>
    finding(code, build.place(['boat', 'people']), {
      received: `${received}${assumed(build)}`,
      ...more,
    });
  const lost = (code: FindingCode, { equilibrium, people, remedy }: Condition, where: string) => {
    const fix = remedyText(remedy, format);
    return told(code, `${people} people${where}: it ${outcomeText(equilibrium)}`, {
      ...(fix && { remedy: fix }),
    });
  };
  return [
    ...unknown(afloat).map((received) => told('FLOAT_NOT_COMPUTED', received)),
    ...failing(afloat, RATED).map((one) => lost('RATING_NOT_AFLOAT', one, ', seated')),
    ...failing(afloat, ENDS).map((one) =>
      lost('CROWD_AT_END', one, one.name.endsWith('aft') ? ' aft' : ' forward'),
    ),
    ...atEdge(afloat, format, told),
    ...few(afloat.crew).map((fewOfAll) =>
      told('FEW_TO_ONE_SIDE', fewOfAll, {
        expected: `at least half of them (${build.yard.offsetLoad?.basis ?? 'what keeps the water out'})`,
      }),
    ),
  ];
}

function failing(afloat: Screened, names: readonly Condition['name'][]): readonly Condition[] {
  return names
    .flatMap((name) => conditionOf(afloat, name) ?? [])
    .filter(({ equilibrium: { outcome }, people }) => people > 0 && isLost(outcome));
}

const isLost = (outcome: Equilibrium['outcome']): boolean =>
  outcome !== 'floats' && outcome !== 'not computed';

/** Fewer than half, at the rating and as ordered: "1 of 3 people"; once where they come to the same. */
function few({ rated, ordered }: Screened['crew']): readonly string[] {
  const told = [rated, ordered].flatMap(({ most, people }) =>
    typeof most === 'number' && 2 * most < people ? [`${most} of ${people} people`] : [],
  );
  return [...new Set(told)];
}

function unknown(afloat: Screened): readonly string[] {
  const { crew } = afloat;
  const conditions = [...RATED, ...ENDS, 'people to one side' as const].flatMap((name) => {
    const equilibrium = conditionOf(afloat, name)?.equilibrium;
    return isNotComputed(equilibrium) ? [`${name}: ${whyNot(equilibrium)}`] : [];
  });
  const others = [crew.one, crew.rated.most, crew.ordered.most, crew.edge.bears].flatMap((one) =>
    isNotComputed(one) ? [`at the edge of the cockpit: ${whyNot(one)}`] : [],
  );
  return [...new Set([...conditions, ...others])];
}

function atEdge(
  { crew: { one, edge } }: Screened,
  format: Formatter,
  told: (code: FindingCode, received: string, more?: object) => Finding,
): readonly Finding[] {
  const { bears, wanted } = edge;
  const borne = bears.outcome === 'met' ? bears.growth : kilograms(0);
  const isWeak = bears.outcome === 'already past' || (bears.outcome === 'met' && borne < wanted);
  return [
    ...(isLost(one.outcome) ? [told('ONE_AT_EDGE', `it ${outcomeText(one)}`)] : []),
    ...(isWeak
      ? [
          told('EDGE_BEARS_LITTLE', `${format.mass(borne)} at the edge`, {
            expected: `at least ${format.mass(wanted)}, 0.6 of the rated people, as 33 CFR 183.41(a)(2) has the idea`,
          }),
        ]
      : []),
  ];
}

/** What the figures rest on that no file says. */
function assumed(build: Checked['build']): string {
  const used = crewDefaults(build);
  return used.length === 0 ? '' : `; assumed: ${used.join(', ')}`;
}
