import type { FigureDatum, Figures } from '../types.ts';

const WIRE = 'ABYC E-11 voltage drop and 33 CFR 183.425 ampacity, the larger';

/** Figures of the wiring for `figures.json`. */
export function electricsData({ electrics }: Figures): Readonly<Record<string, FigureDatum>> {
  if ('notComputed' in electrics) return {};
  const data: Record<string, FigureDatum> = {};
  const set = (name: string, value: number, unit: string, method: string): void => {
    data[name] = { value: Number(value.toPrecision(6)), unit, method };
  };
  const { circuits, feeder, starter, budget, bank, charging, seriesBanks } = electrics;
  for (const { row } of circuits) {
    const name = `wire.${row.label}`;
    data[`${name}.for`] = {
      value: row.circuit.name,
      unit: '',
      method: 'in the order of the panel',
    };
    set(`${name}.current`, row.circuit.current, 'A', 'as the catalogue has it');
    set(`${name}.run`, row.circuit.run, 'm', 'along the axes, times the routing factor');
    set(`${name}.area`, row.conductor.metricMm2, 'mm2', WIRE);
    set(`${name}.fuse`, row.fuse, 'A', 'at least the load, at most the wire');
  }
  if (feeder && 'row' in feeder) {
    set('wire.M1.area', feeder.row.conductor.metricMm2, 'mm2', WIRE);
    set('wire.M1.fuse', feeder.row.fuse, 'A', 'at least the load, at most the wire');
  }
  if (starter && 'metricMm2' in starter.cable) {
    const area = Math.max(starter.cable.metricMm2, starter.makersMm2 ?? 0);
    const how = 'ABYC E-11 voltage drop, cranking; at least what the engine’s maker asks for';
    set('wire.starter.area', area, 'mm2', how);
  }
  set('energy.day', budget.ampereHours, 'Ah', 'current times hours');
  for (const { volts, budget: day, bank: own } of seriesBanks) {
    set(`energy.day.${volts}V`, day.ampereHours, 'Ah', `current times hours at ${volts} V`);
    if ('notComputed' in own) continue;
    set(`battery.usable.${volts}V`, own.usable, 'Ah', 'usable share of batteries in series');
  }
  if ('notComputed' in bank) return data;
  set('battery.usable', bank.usable, 'Ah', 'usable share of the rating');
  if (typeof bank.daysOfAutonomy === 'number') {
    set('battery.days', bank.daysOfAutonomy, 'd', 'usable share over the daily budget');
  }
  for (const { source, hours } of charging) {
    if (typeof hours === 'number')
      set(`charge.${source}`, hours, 'h', 'a day’s use over the current');
  }
  return data;
}
