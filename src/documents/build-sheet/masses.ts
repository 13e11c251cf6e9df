import { type Figures, weighedAt, type WeighedStage } from '../../figures/index.ts';
import type { Build } from '../../resolve/index.ts';
import { formatterOf, percentText } from '../../units/index.ts';
import { type Block, column, row, table, words } from '../blocks/block.ts';

/** What the boat must weigh on the way, outside which band the office is asked, and what it did weigh. */
export function targetMasses(figures: Figures): readonly Block[] {
  const { build, gates } = figures;
  const format = formatterOf(build.yard);
  const rows = gates.map((gate) => {
    const weighed = weighedAt(build, gate.stage);
    return row(
      'plain',
      { text: '', strong: CONDITIONS[gate.stage], under: gateContents(build, gate.stage) },
      format.mass(gate.expected),
      `${format.mass(gate.least)} to ${format.mass(gate.most)}`,
      weighed === undefined ? '' : format.mass(weighed.mass),
    );
  });
  return [...table(TARGETS, rows), ...words('small', massMethod(figures))];
}

const TARGETS = [
  column('head', 'Condition'),
  column('value', 'Target'),
  column('num', 'Band'),
  column('write', 'Weighed'),
];

/** How the targets were found and how far to trust them. */
function massMethod({ build: { yard } }: Figures): string {
  const { workshop, massContingency } = yard;
  const scale = formatterOf(yard).mass(workshop.scale);
  return `Targets are estimated: the sum of what is aboard, with ${percentText(massContingency)} contingency on what is fitted; verify by weighing. The band joins what each stage may differ by (the shell by ${percentText(workshop.weighSpread.release)}) and the scale’s ${scale} as the root of the sum of squares. Outside it: what to do stands at the gate.`;
}

const CONDITIONS: Readonly<Record<WeighedStage, string>> = {
  release: 'Bare shell',
  'fit-out': 'Fitted out',
  wiring: 'Completed',
  engine: 'Ready to launch',
  trailer: 'On the trailer',
};

/** What is aboard when it is weighed after a stage. */
export function gateContents({ outboard, order, yard, items }: Build, stage: WeighedStage): string {
  const wired = items.some(({ hours }) => hours.some((one) => one.stage === 'wiring'));
  switch (stage) {
    case 'release':
      return 'Out of the {mould}, trimmed, nothing fitted';
    case 'fit-out':
      return wired ? 'Fitted out, nothing of the wiring yet' : 'Everything fitted; no loose gear';
    case 'wiring':
      return 'Everything fitted and wired; no outboard, no fuel, no loose gear';
    case 'engine': {
      const format = formatterOf(yard);
      const fuel =
        order.fuel === undefined || order.fuel === 0
          ? []
          : [`${format.volume(order.fuel)} of fuel`];
      const afloat = [...(outboard ? [`outboard (${format.mass(outboard.mass)})`] : []), ...fuel];
      return `Completed, with ${afloat.join(' and ')}; nobody aboard`;
    }
    case 'trailer':
      return 'Ready to launch, on the trailer, no loose gear';
  }
}
