import type { FiguredAlternative, Figures } from '../../figures/index.ts';
import { type Finding, FINDING_CODES, type FindingCode } from '../../findings/index.ts';
import { isZero, type Money } from '../../money/index.ts';
import { createFormatter, kilograms } from '../../units/index.ts';
import type { Fact, QuoteAlternative } from './types.ts';
import { NO_CHANGE, sentence, signedMoney, signedSize, speedChange } from '../sections/words.ts';

/** Findings about what the boat may carry and what fits; the others are the shop's own affair. */
const FOR_THE_CUSTOMER: ReadonlySet<FindingCode> = new Set([
  'REQUIREMENT_UNMET',
  'EXCLUDED',
  'DOES_NOT_FIT',
  'PLACE_TAKEN',
  'POWER_OVER_RATING',
  'ENGINE_TOO_HEAVY',
  'PEOPLE_OVER_RATING',
  'LOAD_OVER_RATING',
  'SHAFT_LENGTH',
  'TRAILER_OVERLOADED',
  'TRAILER_LENGTH',
  'PEOPLE_OVER_METHOD',
  'POWER_OVER_METHOD',
  'LOAD_OVER_METHOD',
  'STEERING_MISMATCH',
  'DOES_NOT_PLANE',
  'BRAKES_MISSING',
  'BRAKES_ADVISED',
  'BALL_LOAD_LOW',
  'BALL_LOAD_HIGH',
  'TRAILER_TOO_WIDE',
  'TRAILER_TOO_LONG',
  'AXLE_OR_TYRE_OVERLOADED',
  'VEHICLE_OVERLOADED',
  'ROOF_OVERLOADED',
]);

/** What each alternative changes, as the customer sees it: price, mass, people and what stands in its way. */
export function quoteAlternatives(
  alternatives: readonly FiguredAlternative[],
  { build }: Figures,
): readonly QuoteAlternative[] {
  return alternatives.map(({ name, differences, findings }) => ({
    name,
    differences: differences ? differenceFacts(differences, build) : [],
    cautions: findings.filter(({ code }) => FOR_THE_CUSTOMER.has(code)).map(findingText),
  }));
}

function differenceFacts(
  differences: NonNullable<FiguredAlternative['differences']>,
  { yard, trailer }: Figures['build'],
): readonly Fact[] {
  const { driveAway, massOnTrailer, people, onBall } = differences;
  const format = createFormatter(yard.locale, yard.units);
  const mass = format.mass(kilograms(Math.abs(massOnTrailer)));
  return [
    { label: 'Drive-away price', value: moneyChange(driveAway, yard.locale) },
    {
      label: trailer ? 'Mass on the road' : 'Mass, ready',
      value: numberChange(massOnTrailer, mass, 0.5),
    },
    {
      label: 'People she may carry',
      value: numberChange(people, format.number(Math.abs(people), 0), 0.5),
    },
    { label: 'Full speed, loaded', value: speedChange(differences, format) },
    ...(onBall === undefined
      ? []
      : [
          {
            label: 'Mass on the tow ball',
            value: numberChange(onBall, format.mass(kilograms(Math.abs(onBall))), 0.5),
          },
        ]),
  ];
}

function moneyChange(change: Money, locale: string): string {
  return isZero(change) ? NO_CHANGE : signedMoney(change, locale);
}

/** "+12 kg", "−12 kg"; "no change" below what is printed. */
function numberChange(change: number, size: string, least: number): string {
  if (Math.abs(change) < least) return NO_CHANGE;
  return signedSize(change, size);
}

function findingText({ code, received, expected, severity }: Finding): string {
  const facts = received === undefined ? '' : `: ${received}`;
  const wanted = expected === undefined ? '' : `; wanted: ${expected}`;
  const lead = severity === 'error' ? 'Cannot be built so. ' : '';
  return `${lead}${sentence(`${FINDING_CODES[code].means}${facts}${wanted}`)}`;
}
