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
import { createFormatter, decimalToNumber } from '../units/index.ts';
import { checkElectrics } from './check-electrics.ts';
import { checkDrive } from './check-drive.ts';
import { checkGates } from './check-gates.ts';
import { checkLaminate } from './check-laminate.ts';
import { checkLimits } from './check-limits.ts';
import { checkTow } from './check-tow.ts';
import { checkFloat } from './check-float.ts';
import { checkPlaces } from './check-places.ts';
import type { Figures } from './types.ts';

/** Findings that need computed figures: load, trailer, margin, and those of the rooms. */
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
