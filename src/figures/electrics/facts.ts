import { type Computed, HOUR, UNIT_KINDS } from '../../units/index.ts';
import { type Fact, factsOf, valueOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';
import type { BankFigures } from './batteries.ts';
import type { ElectricsFigures } from './electrics.ts';

const AMPERE_HOUR = UNIT_KINDS.charge.Ah;
const MM2 = UNIT_KINDS.area.mm2;
const DAY = UNIT_KINDS.duration.d;

const wire = factsOf('wire');
const WIRE = {
  for: wire('workshop', 'text', '*.for', 'Wire to', 'ordered'),
  current: wire('workshop', 'current', '*.current', 'Current', 'ordered'),
  run: wire('workshop', 'length', '*.run', 'Run', 'wire'),
  area: wire('workshop', 'wireArea', '*.area', 'Conductor', 'wire'),
  fuse: wire('workshop', 'current', '*.fuse', 'Fuse', 'wire'),
};
const STARTER = wire('workshop', 'wireArea', 'starter.area', 'Starter cable', 'starter');
const energy = factsOf('energy');
const A_DAY = energy('customer', 'charge', '*', 'Battery use in a day', 'battery');
const battery = factsOf('battery');
const USABLE = battery('customer', 'charge', '*', 'Batteries, usable', 'battery');
const DAYS = battery('customer', 'days', 'days', 'Lasts without charging', 'battery');
const CHARGE = factsOf('charge')('customer', 'hours', '*', 'To put a day’s use back', 'battery');

export interface EnergyFacts {
  readonly aDay: Fact<'customer'>;
  readonly usable: Fact<'customer'>;
  readonly days: Fact<'customer'>;
}

/** Wires, batteries and charging; nothing where nothing electrical is ordered. */
export function electricsFacts({ electrics: all }: Pick<Figures, 'electrics'>): readonly Fact[] {
  if ('notComputed' in all) return [];
  const { feeder, starter, budget, bank, charging, seriesBanks } = all;
  const own = energyFacts(budget.ampereHours, bank);
  return [
    ...wireFacts(all),
    ...(feeder && 'row' in feeder
      ? [
          WIRE.area(feeder.row.conductor.metricMm2 * MM2, { of: 'M1' }),
          WIRE.fuse(feeder.row.fuse, { of: 'M1' }),
        ]
      : []),
    ...(starter && 'metricMm2' in starter.cable
      ? [STARTER(Math.max(starter.cable.metricMm2, starter.makersMm2 ?? 0) * MM2)]
      : []),
    own.aDay,
    own.usable,
    own.days,
    ...seriesBanks.flatMap(({ volts, budget: day, bank: row }) => [
      A_DAY(day.ampereHours * AMPERE_HOUR, { of: `day.${volts}V` }),
      USABLE(
        valueOf(row, ({ usable }) => usable * AMPERE_HOUR),
        { of: `usable.${volts}V` },
      ),
    ]),
    ...charging.map(({ source: of, hours }) =>
      CHARGE(
        valueOf(hours, (known) => known * HOUR),
        { of },
      ),
    ),
  ];
}

/** A day’s use of the boat’s own voltage, and how long the batteries last. */
export function energyFacts(ampereHours: number, bank: Computed<BankFigures>): EnergyFacts {
  const aDay = A_DAY(ampereHours * AMPERE_HOUR, { of: 'day' });
  const usable = USABLE(
    valueOf(bank, (known) => known.usable * AMPERE_HOUR),
    { of: 'usable' },
  );
  const days = valueOf(bank, ({ daysOfAutonomy }) => valueOf(daysOfAutonomy, (some) => some * DAY));
  return { aDay, usable, days: DAYS(days, { from: [usable.key, aDay.key] }) };
}

function wireFacts({ circuits }: ElectricsFigures): readonly Fact<'workshop'>[] {
  return circuits.flatMap(({ row }) => {
    const of = row.label;
    return [
      WIRE.for(row.circuit.name, { of }),
      WIRE.current(row.circuit.current, { of }),
      WIRE.run(row.circuit.run, { of }),
      WIRE.area(row.conductor.metricMm2 * MM2, { of }),
      WIRE.fuse(row.fuse, { of }),
    ];
  });
}
