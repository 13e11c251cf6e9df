import { type Finding, finding } from '../findings/index.ts';
import {
  addMoney,
  formatMoney,
  isNegative,
  isZero,
  type Money,
  moneyOf,
  subtractMoney,
  zeroMoney,
} from '../money/index.ts';
import type { Stage } from '../schema/index.ts';
import { createFormatter, decimalToNumber, type Kilograms, kilograms } from '../units/index.ts';
import { checkDrive } from './check-drive.ts';
import { checkLimits } from './check-limits.ts';
import { checkTow } from './check-tow.ts';
import { checkFloat } from './check-float.ts';
import type { Figures } from './types.ts';

/** Findings that need computed figures: load, trailer, margin, and what was weighed against what was computed. */
export function checkFigures(figures: Omit<Figures, 'findings'>): readonly Finding[] {
  const { build, mass, price, trailerLoad } = figures;
  const { yard, hull, trailer } = build;
  const format = createFormatter(yard.locale, yard.units);
  const findings: Finding[] = [];
  if (mass.load > hull.ratings.load) {
    findings.push(
      finding('LOAD_OVER_RATING', build.place(['boat', 'people']), {
        received: format.mass(mass.load),
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
    ...checkMoney(figures),
    ...checkRecordedMasses(figures),
    ...checkDrive(figures),
    ...checkLimits(figures),
    ...checkTow(figures),
    ...checkFloat(figures),
  ];
}

/** Packages that save nothing, and more paid than there is to pay. */
function checkMoney({ build, price }: Omit<Figures, 'findings'>): readonly Finding[] {
  const { order, yard, packages, currency } = build;
  const print = (money: Money): string => formatMoney(money, yard.locale);
  const nothing = packages.filter(({ keys }) =>
    price.lines.every((line) => !keys.includes(line.key) || isZero(line.saving)),
  );
  const findings = nothing.map(({ id, name }) =>
    finding('PACKAGE_SAVES_NOTHING', build.place(['packages', order.packages.indexOf(id)]), {
      received: name,
    }),
  );
  const given = order.tradeIn ? moneyOf(order.tradeIn.value, currency) : zeroMoney(currency);
  const received = addMoney(given, price.paid);
  if (isNegative(subtractMoney(price.driveAway, received))) {
    findings.push(
      finding('PAID_TOO_MUCH', build.place([order.paid.length > 0 ? 'paid' : 'tradeIn']), {
        received: print(received),
        expected: `at most ${print(price.driveAway)}`,
      }),
    );
  }
  return findings;
}

/** What was weighed at release, after fit-out, with the engine and on the trailer, against the computed masses and the contingency. */
function checkRecordedMasses({ build, mass }: Omit<Figures, 'findings'>): readonly Finding[] {
  const { order, yard } = build;
  const format = createFormatter(yard.locale, yard.units);
  const tolerance = decimalToNumber(yard.massContingency);
  const computed: Partial<Record<Stage, Kilograms>> = {
    release: mass.bareHull.mass,
    wiring: mass.completed.mass,
    engine: mass.ready.mass,
    ...(build.trailer && { trailer: kilograms(mass.ready.mass + build.trailer.tare) }),
  };
  return (order.record?.masses ?? []).flatMap((weighed, index) => {
    const expected = computed[weighed.stage];
    if (expected === undefined || Math.abs(weighed.mass - expected) <= tolerance * expected)
      return [];
    return [
      finding('RECORD_MASS_OFF', build.place(['record', 'masses', index, 'mass']), {
        received: `${format.mass(weighed.mass)} weighed after ${weighed.stage}`,
        expected: `${format.mass(expected)}, within ${format.percent(tolerance, 0)}`,
      }),
    ];
  });
}
