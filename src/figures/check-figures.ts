import { type Finding, finding, type Place } from '../findings/index.ts';
import { formatMoney, isNegative, isZero, type Money, subtractMoney } from '../money/index.ts';
import { loadTanksFull } from '../mass/index.ts';
import { formatterOf, decimalToNumber } from '../units/index.ts';
import { checkElectrics } from './electrics/check.ts';
import { checkDrive } from './performance/check.ts';
import { checkLaminate } from './laminate/check.ts';
import { checkLimits } from './limits/check.ts';
import { checkTow } from './tow/check.ts';
import { checkFloat } from './float/check.ts';
import { checkPlaces } from './float/check-places.ts';
import type { Figures } from './types.ts';
import { judgeWeighing } from '../laminate/index.ts';

/** Findings that need computed figures: load, trailer, margin, and those of the rooms. */
export function checkFigures(figures: Omit<Figures, 'findings'>): readonly Finding[] {
  const { build, mass, price, trailerLoad } = figures;
  const { yard, hull, trailer } = build;
  const format = formatterOf(yard);
  const findings: Finding[] = [];
  const brimful = loadTanksFull(mass);
  if (brimful > hull.ratings.load) {
    findings.push(
      finding('LOAD_OVER_RATING', build.place(['boat', 'people']), {
        received: `${format.mass(brimful)}, tanks full`,
        expected: `at most ${format.mass(hull.ratings.load)} on the ${hull.name}`,
      }),
    );
  }
  if (trailer && trailerLoad && trailerLoad.left < 0) {
    findings.push(
      finding('TRAILER_OVERLOADED', build.place(['trailer']), {
        received: `${format.mass(trailerLoad.total)}, boat, fuel, gear and trailer together`,
        expected: `at most ${format.mass(trailer.rating)} on ${trailer.name}`,
      }),
    );
  }
  if (price.belowFloor) {
    const share = price.marginShare
      ? format.percent(decimalToNumber(price.marginShare), 1)
      : 'no margin at all';
    findings.push(
      finding('MARGIN_BELOW_FLOOR', build.place(['discount']), {
        received: share,
        expected: `at least ${format.percent(decimalToNumber(yard.marginFloor), 1)}`,
      }),
    );
  }
  return [
    ...findings,
    ...checkPackages(figures),
    ...checkLines(figures),
    ...checkDrive(figures),
    ...checkLimits(figures),
    ...checkTow(figures),
    ...checkGates(figures),
    ...checkLaminate(figures),
    ...checkElectrics(figures),
    ...checkFloat(figures),
    ...checkPlaces(figures),
  ];
}

/** Items that are free without a reason, those sold for less than they cost, and a whole that is. */
function checkLines({ build, price }: Omit<Figures, 'findings'>): readonly Finding[] {
  const items = new Map(build.items.map((item) => [item.key, item]));
  const print = (money: Money): string => formatMoney(money, build.yard.locale);
  const below = (place: Place, what: string, net: Money, cost: Money): Finding =>
    finding('LINE_BELOW_COST', place, {
      received: `${what}: ${print(net)} before tax`,
      expected: `at least its cost, ${print(cost)}`,
    });
  const lines = price.lines.flatMap((line) => {
    const item = items.get(line.key);
    if (!item || item.free !== undefined) return [];
    const ofHull = item.kind === 'shell' || item.kind === 'structure';
    const place = ofHull ? build.place(['hull']) : item.place;
    // The structure of a hull may have nothing of its own.
    if (isZero(line.price) && item.kind !== 'structure')
      return [finding('FREE_WITHOUT_REASON', place, { received: item.name })];
    return isNegative(subtractMoney(line.price, line.cost))
      ? [below(place, item.name, line.price, line.cost)]
      : [];
  });
  return isNegative(price.margin)
    ? [...lines, below(build.place(['discount']), 'the whole', price.taxable, price.cost)]
    : lines;
}

/** Packages that save nothing. */
function checkPackages({ build, price }: Omit<Figures, 'findings'>): readonly Finding[] {
  const { order, packages } = build;
  const nothing = packages.filter(({ keys }) =>
    price.lines.every((line) => !keys.includes(line.key) || isZero(line.saving)),
  );
  return nothing.map(({ id, name }) =>
    finding('PACKAGE_SAVES_NOTHING', build.place(['packages', order.packages.indexOf(id)]), {
      received: name,
    }),
  );
}

/** What was weighed after a stage, against the gate of that stage. */
function checkGates({ build, gates }: Omit<Figures, 'findings'>): readonly Finding[] {
  const format = formatterOf(build.yard);
  return (build.order.record?.masses ?? []).flatMap(({ stage, mass }, index) => {
    const gate = gates.find((one) => one.stage === stage);
    if (!gate) return [];
    const { verdict, todo } = judgeWeighing(gate, mass);
    if (verdict === 'within') return [];
    return [
      finding('MASS_OUT_OF_GATE', build.place(['record', 'masses', index, 'mass']), {
        received: `${format.mass(mass)} weighed after ${stage}`,
        expected: `from ${format.mass(gate.least)} to ${format.mass(gate.most)}`,
        remedy: todo.replace(/\.$/, ''),
      }),
    ];
  });
}
