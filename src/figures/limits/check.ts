import { type Finding, finding } from '../../findings/index.ts';
import type { Rating } from '../../limits/index.ts';
import { formatterOf, kilograms, metres, UNIT_KINDS } from '../../units/index.ts';
import type { Figures } from '../types.ts';
import { methodName } from './carries.ts';

type Checked = Pick<Figures, 'build' | 'limits'>;

/** The order against the methods that the yard goes by, the helm against the outboard, and the screening. */
export function checkLimits(figures: Checked): readonly Finding[] {
  const { ratings } = figures.limits;
  return [
    ...('notComputed' in ratings
      ? []
      : ratings.flatMap((rating) => againstMethod(figures, rating))),
    ...loadOverMethod(figures),
    ...sternLow(figures),
    ...helmMismatch(figures),
    ...notScreened(figures),
  ];
}

function againstMethod({ build }: Checked, rating: Rating): readonly Finding[] {
  const { order, outboard, yard } = build;
  const format = formatterOf(yard);
  const { people, power, governing, name } = rating;
  const findings: Finding[] = [];
  if (typeof people === 'number' && order.boat.people > people) {
    findings.push(
      finding('PEOPLE_OVER_METHOD', build.place(['boat', 'people']), {
        received: `${order.boat.people}`,
        expected: `at most ${people} by ${methodName(name)}: ${governing?.words ?? ''}`,
      }),
    );
  }
  if (typeof power === 'number' && outboard && outboard.model.power > power) {
    findings.push(
      finding('POWER_OVER_METHOD', build.place(['outboard', 'model']), {
        received: format.power(outboard.model.power),
        expected: `at most ${format.power(power)} by ${methodName(name)}`,
      }),
    );
  }
  if (typeof people === 'object' && people.notComputed.startsWith('not required')) {
    findings.push(
      finding('NOT_REQUIRED_BY_LAW', build.place(['hull']), {
        received: people.notComputed,
      }),
    );
  }
  return findings;
}

/** The load as ordered against what the ISO-style method allows. */
function loadOverMethod({ build, limits }: Checked): readonly Finding[] {
  const { asOrdered } = limits;
  if (typeof asOrdered?.left !== 'number' || asOrdered.left >= 0) return [];
  const format = formatterOf(build.yard);
  const allowed = kilograms(asOrdered.onPlate + asOrdered.left);
  return [
    finding('LOAD_OVER_METHOD', build.place(['boat', 'people']), {
      received: `${format.mass(asOrdered.onPlate)} of people, effects, portable fuel and water`,
      expected: `at most ${format.mass(allowed)} by the ISO small craft method`,
    }),
  ];
}

function sternLow({ build, limits }: Checked): readonly Finding[] {
  const stern = limits.engine?.stern;
  if (!stern || 'notComputed' in stern || stern.holds) return [];
  const format = formatterOf(build.yard);
  return [
    finding('STERN_FREEBOARD_LOW', build.place(['outboard', 'model']), {
      received: format.dimension(metres(stern.value)),
      expected: `at least ${format.dimension(metres(stern.limit))}, common practice`,
    }),
  ];
}

function helmMismatch({ build, limits }: Checked): readonly Finding[] {
  const faults = limits.engine?.fit.faults ?? [];
  return faults.map((received) =>
    finding('STEERING_MISMATCH', build.place(['outboard', 'model']), { received }),
  );
}

function notScreened({ build, limits }: Checked): readonly Finding[] {
  const { categories } = limits;
  if (build.yard.limits.categories.length === 0) return [];
  const at = build.place(['boat', 'people']);
  if ('notComputed' in categories) {
    return [finding('CATEGORY_NOT_SCREENED', at, { received: categories.notComputed })];
  }
  if (categories.some(({ passes }) => passes)) return [];
  const format = formatterOf(build.yard);
  const failed = categories.at(-1)?.checks.filter(({ holds }) => !holds) ?? [];
  const words = failed.map(({ name, value, limit, unit }) => {
    const print = (number: number): string =>
      unit === 'm' ? format.dimension(metres(number)) : format.angle(number * UNIT_KINDS.angle.deg);
    return `${name}: ${print(value)} against ${print(limit)}`;
  });
  return [finding('CATEGORY_NOT_SCREENED', at, { received: words.join('; ') })];
}
