import {
  type DataPoint,
  mixingTable,
  type MixingTable,
  type NotComputed,
} from '../../laminate/index.ts';
import { type Build, stageOfPart } from '../../resolve/index.ts';
import { type Mixing, type Stage, STAGES } from '../../schema/index.ts';
import { dataMissing, decimalToNumber } from '../../units/index.ts';
import { materialOf } from './input.ts';

/** Catalyst by the batch, for one resin or coat of the boat. */
export interface MixingFigures {
  readonly part: string;
  /** In which it is mixed. */
  readonly stages: readonly Stage[];
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

/** One table for every coat and resin of the boat whose mixing is known, in the order in which they are mixed. */
export function mixingOf(build: Build): readonly MixingFigures[] {
  const stages = new Map<string, Set<Stage>>();
  for (const item of build.items) {
    for (const part of item.parts) {
      const before = stages.get(part.code) ?? new Set();
      stages.set(part.code, before.add(stageOfPart(item, part)));
    }
  }
  return [...stages]
    .flatMap(([part, mixedIn]) => {
      const { mixing } = materialOf(build, part, 'coat') ?? materialOf(build, part, 'resin') ?? {};
      return mixing ? [{ ...mixingFigures(build, part, mixing), stages: [...mixedIn] }] : [];
    })
    .toSorted((a, b) => firstOf(a) - firstOf(b));
}

const firstOf = ({ stages }: MixingFigures): number =>
  Math.min(...stages.map((stage) => STAGES.indexOf(stage)));

function mixingFigures(build: Build, part: string, mixing: Mixing): Omit<MixingFigures, 'stages'> {
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
      : dataMissing(
          `nothing is known of the catalyst ${mixing.catalyst}`,
          'catalogue/materials.yaml',
        );
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
