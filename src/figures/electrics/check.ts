import { type Finding, finding } from '../../findings/index.ts';
import { formatterOf, type Formatter, UNIT_KINDS } from '../../units/index.ts';
import type { ElectricsFigures } from './electrics.ts';
import type { Figures } from '../types.ts';

/** Circuits that cannot be wired soundly, a panel with too few places, and a bank that is flat too soon. */
export function checkElectrics({
  build,
  electrics,
}: Omit<Figures, 'findings'>): readonly Finding[] {
  if ('notComputed' in electrics) return [];
  const format = formatterOf(build.yard);
  const { feeder, panel } = electrics;
  return [
    ...checkCircuits(electrics, format),
    ...(feeder && 'notComputed' in feeder && panel
      ? [finding('WIRE_REFUSED', panel.item.place, { received: `feeder: ${feeder.notComputed}` })]
      : []),
    ...checkPanel(electrics),
    ...checkBank(electrics, format),
    ...checkSeries(electrics, format),
  ];
}

function checkCircuits({ refused }: ElectricsFigures, format: Formatter): readonly Finding[] {
  return refused.map(({ item, circuit, reason, aboveDevice }) =>
    aboveDevice && circuit.largestFuse !== undefined
      ? finding('FUSE_ABOVE_DEVICE', item.place, {
          received: `${circuit.name} draws ${format.current(circuit.current)}${circuit.continuous ? ', a quarter more for a fuse as it never rests' : ''}`,
          expected: `at most ${format.current(circuit.largestFuse)}`,
        })
      : finding('WIRE_REFUSED', item.place, { received: `${circuit.name}: ${reason}` }),
  );
}

function checkPanel({ panel, circuits }: ElectricsFigures): readonly Finding[] {
  const switched = circuits.filter(({ from }) => from === 'panel').length;
  if (!panel || switched <= panel.ways) return [];
  return [
    finding('PANEL_FULL', panel.item.place, {
      received: `${switched} circuits`,
      expected: `at most ${panel.ways} on ${panel.item.name}`,
    }),
  ];
}

function checkBank(
  { bank, budget }: Pick<ElectricsFigures, 'bank' | 'budget'>,
  format: Formatter,
): readonly Finding[] {
  if ('notComputed' in bank || typeof bank.wanted !== 'number') return [];
  const [item] = bank.items;
  const charge = (hours: number): string => format.charge(hours * UNIT_KINDS.charge.Ah);
  if (!item || bank.wanted <= bank.batteries) return [];
  return [
    finding('BANK_TOO_SMALL', item.place, {
      received: `${charge(bank.usable)} may be used, ${charge(budget.ampereHours)} are drawn in a day`,
      expected: `${bank.wanted} such batteries`,
    }),
  ];
}

/** A voltage that the order's batteries do not make, and a row in series that is flat too soon. */
function checkSeries(
  { seriesBanks, circuits }: ElectricsFigures,
  format: Formatter,
): readonly Finding[] {
  return seriesBanks.flatMap((one) => {
    const { bank, volts } = one;
    if (!('notComputed' in bank)) return checkBank(one, format);
    const device = circuits.find((wired) => wired.volts === volts)?.item;
    if (!device) return [];
    const received = `${device.name}, ${format.voltage(volts)}: ${bank.notComputed}`;
    return [finding('VOLTAGE_WITHOUT_BANK', device.place, { received })];
  });
}
