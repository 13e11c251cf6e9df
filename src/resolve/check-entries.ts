import { type Finding, finding } from '../findings/index.ts';
import type { Catalogue, Outboard, Sourced, SourcedOrder } from '../schema/index.ts';
import { checkRates } from './check-rates.ts';
import { checkRequirements, type Chosen, unknownId } from './check-compatibility.ts';

/** Findings of the outboard against the shaft asked for and the options beside it. */
export function checkOutboard(
  order: SourcedOrder,
  { value }: Sourced<Outboard>,
  chosen: readonly Chosen[],
  catalogue: Catalogue,
): readonly Finding[] {
  const place = order.place(['outboard', 'model']);
  const ordered = new Set(chosen.map(({ option }) => option.value.id));
  const shaft = order.value.outboard?.shaft;
  const comesWith = Object.keys(value.shafts);
  const unavailable =
    shaft !== undefined && !comesWith.includes(shaft)
      ? [
          finding('DOES_NOT_FIT', order.place(['outboard', 'shaft']), {
            received: `${value.name} with a ${shaft} shaft`,
            expected: `a shaft that it comes with: ${comesWith.join(', ')}`,
            remedy: 'Choose one of those shafts, or another outboard',
          }),
        ]
      : [];
  return [
    ...unavailable,
    ...checkRequirements(value.name, value.requires, ordered, place, catalogue),
  ];
}

/**
 * Findings for charges that are left out and that nobody charges.
 *
 * @param broken - ids of entries that could not be read
 */
export function checkLeftOut(
  order: SourcedOrder,
  { charges }: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  return order.value.leaveOutCharges.flatMap(({ charge }, index) =>
    charges.has(charge) || broken.has(charge)
      ? []
      : [
          unknownId(
            'charge',
            charge,
            charges.keys(),
            order.place(['leaveOutCharges', index, 'charge']),
          ),
        ],
  );
}

/**
 * Findings for the margin classes and parts that one-off items name.
 *
 * @param broken - ids of entries that could not be read
 */
export function checkExtras(
  order: SourcedOrder,
  { parts, yard }: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  const classes = Object.keys(yard.value.margins);
  return order.value.extras.flatMap((extra, index) => [
    ...checkRates(order, ['extras', index, 'hours'], extra.hours, yard.value),
    ...(classes.includes(extra.class)
      ? []
      : [unknownId('margin class', extra.class, classes, order.place(['extras', index, 'class']))]),
    ...extra.parts.flatMap(({ part }, at) =>
      parts.has(part) || broken.has(part)
        ? []
        : [
            unknownId(
              'part',
              part,
              parts.keys(),
              order.place(['extras', index, 'parts', at, 'part']),
            ),
          ],
    ),
  ]);
}
