import {
  type DataPoint,
  mixingTable,
  type MixingTable,
  type NotComputed,
  type Panel,
} from '../laminate/index.ts';
import type { Build } from '../resolve/index.ts';
import type { Hull, Mixing } from '../schema/index.ts';
import { decimalToNumber } from '../units/index.ts';
import { materialOf, resinOf } from './laminate-input.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** Catalyst by the batch, for one resin or coat of the lay-up. */
export interface MixingFigures {
  readonly part: string;
  readonly catalyst: string;
  /** Share by mass. */
  readonly share: number;
  readonly celsius: number;
  /** At the shop's temperature. */
  readonly table: MixingTable | NotComputed;
  /** At other temperatures of the maker's data. */
  readonly others: readonly { readonly celsius: number; readonly table: MixingTable }[];
}

/** Gel times of a maker's data sheet, minutes by degrees C. */
export const gelPoints = (mixing: Mixing | undefined): readonly DataPoint[] =>
  (mixing?.gel ?? []).map(({ celsius, minutes }) => ({
    celsius: decimalToNumber(celsius),
    value: decimalToNumber(minutes),
  }));

/** One table for every coat and resin of the lay-up whose mixing is known. */
export function mixingOf(
  build: Build,
  laminate: Laminate,
  panels: readonly Panel[],
): readonly MixingFigures[] {
  const layers = panels.flatMap((panel) => panel.layers);
  const coats = layers.flatMap((layer) => (layer.kind === 'gelcoat' ? [layer.name] : []));
  const resins = layers.flatMap((layer) => resinOf(build, layer, laminate.infusion?.resin) ?? []);
  return [...new Set([...coats, ...resins])].flatMap((part) => {
    const mixing = (materialOf(build, part, 'coat') ?? materialOf(build, part, 'resin'))?.mixing;
    return mixing ? [mixingFigures(build, part, mixing)] : [];
  });
}

function mixingFigures(build: Build, part: string, mixing: Mixing): MixingFigures {
  const facts = materialOf(build, mixing.catalyst, 'catalyst');
  const { workshop } = build.yard;
  const share = decimalToNumber(mixing.share);
  const at = (celsius: number): MixingTable | NotComputed =>
    facts
      ? mixingTable({
          catalyst: {
            least: decimalToNumber(facts.least),
            most: decimalToNumber(facts.most),
            density: facts.density / 1000,
          },
          share,
          celsius,
          gelMinutes: gelPoints(mixing),
          potShare: decimalToNumber(workshop.potShare),
          kilogramsAMinute: mixing.aMinute,
          largestBatch: mixing.largestBatch,
          batches: mixing.batches,
        })
      : { notComputed: `nothing is known of the catalyst ${mixing.catalyst}` };
  const celsius = decimalToNumber(workshop.temperature);
  const others = gelPoints(mixing).filter((point) => point.celsius !== celsius);
  return {
    part,
    catalyst: mixing.catalyst,
    share,
    celsius,
    table: at(celsius),
    others: others.flatMap((point) => {
      const table = at(point.celsius);
      return 'rows' in table ? [{ celsius: point.celsius, table }] : [];
    }),
  };
}
