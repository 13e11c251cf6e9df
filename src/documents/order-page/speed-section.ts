import { drawPowerCurve, type PowerLine } from '../../draw/index.ts';
import { type DriveLoading, type EngineRow, enginesOf, type Figures } from '../../figures/index.ts';
import {
  type Formatter,
  formatterOf,
  decimalToNumber,
  metresPerSecond,
  NO_BREAK,
  UNIT_KINDS,
  whyNot,
} from '../../units/index.ts';
import { type CaptionedPicture, pictureOf } from '../sections/picture.ts';
import { type Part, picture, section, sentences, smallPrint } from '../blocks/block.ts';
import { speedTables } from './speed-tables.ts';
import { methodLines } from '../sections/method-notes.ts';
import { waterSentence } from '../sections/words.ts';

/** Speed by every outboard that it may carry, fuel, range, propeller and bow motor. */
export function speedSection(figures: Figures, fontCss: string): Part {
  const format = formatterOf(figures.build.yard);
  return section(
    'speed',
    'Speed and fuel',
    ...sentences(speedWords(figures, format)),
    ...speedTables(figures, format),
    ...speedPictures(figures, fontCss, format).map(picture),
    ...smallPrint(speedNotes(figures, format)),
  );
}

/** Power against speed, with every outboard marked; nothing where it planes in no loading. */
function speedPictures(
  figures: Figures,
  fontCss: string,
  format: Formatter,
): readonly CaptionedPicture[] {
  const { drive, build } = figures;
  const engines = enginesOf(figures);
  const dryFirst = (['light', 'loaded', 'light with ballast', 'loaded with ballast'] as const)
    .map((wanted) => drive.loadings.find(({ name }) => name === wanted))
    .filter((one) => one !== undefined);
  const lines = dryFirst.map((one) => powerLine(one, engines, format));
  if (lines.every(({ marks }) => marks.length === 0)) return [];
  const drawing = drawPowerCurve({
    subject: `the ${build.hull.name}`,
    lines,
    ordered: build.outboard?.model.name ?? '',
    format,
    fontCss,
  });
  const caption =
    'Power needed for a speed, likely value, with the outboard’s mass as ordered. The marks are the speeds of the outboards that the hull may carry, each with its own mass, so they may lie beside the line. Estimated to Savitsky 1964; trial to confirm.';
  return [{ ...pictureOf(drawing), caption }];
}

function powerLine(
  { name, loading, curve }: DriveLoading,
  engines: readonly EngineRow[],
  format: Formatter,
): PowerLine {
  const marks = engines.flatMap(({ model, ordered, speeds }) => {
    const speed = speeds.find((one) => one.name === name)?.speed;
    if (!speed || 'notComputed' in speed) return [];
    return [{ speed: speed.speed.likely, power: model.power, ordered }];
  });
  const most = 1.15 * Math.max(0, ...marks.map(({ power }) => power));
  const points = curve.filter(({ power }) => power <= most);
  const people = `${loading.people} aboard`;
  return { name: `${name}: ${format.mass(loading.mass)}, ${people}`, points, marks };
}

/** What speed, fuel, propeller and bow motor were computed with in this order, and by which methods. */
function speedNotes({ build, drive, known }: Figures, format: Formatter): readonly string[] {
  const { efficiency } = build.yard.drive;
  const share = (value: typeof efficiency.low): string => format.percent(decimalToNumber(value), 0);
  const { crouch, outboardDrag } = build.hull.performance;
  const drags = drive.drags.map(({ name, area, coefficient }) => {
    const size = area < 0.1 ? format.smallArea(area) : format.area(area);
    return `${name} (${size}, coefficient ${format.number(coefficient, 2)})`;
  });
  const leg = outboardDrag ? '' : ' The drag of the outboard’s leg is within that share.';
  return [
    `Light: ready to launch with one person. Loaded: with everybody ordered for and their gear. ${waterSentence(build, drive)}`,
    ...methodLines('planing', 'prePlaning'),
    `Beside the hull, the drag of ${drags.join(', ')}; ${share(efficiency.low)} to ${share(efficiency.high)} of the power moves the boat, ${share(efficiency.likely)} likely (common practice, no source).${leg}`,
    ...spreadWords(known, format),
    '* and what the table names: outside the method’s range, or on dry chines, where it is computed on the beam that is still wetted; a rough guess only. Hump: the greatest trim of any planing speed; a climb: the drag there is greater than at some higher speed.',
    ...methodLines('crouch'),
    `Crouch’s constant: ${format.number(drive.crouchConstant, 0)} (mph, hp, lb), of a ${crouch}.`,
    ...methodLines(
      'porpoising',
      'fuel',
      'propeller',
      ...(drive.bowMotor ? (['holding'] as const) : []),
    ),
    'Cruise is the speed that the order names, else the speed of best range on the plane, past the greatest trim.',
  ];
}

/** Where the spread of the loaded speed comes from. */
function spreadWords(known: Figures['known'], format: Formatter): readonly string[] {
  return known
    .filter(({ name }) => name === 'speed')
    .map(({ causes, known: all, value }) => {
      const each = causes.map(({ of, by }) => `${of} ${format.speed(metresPerSecond(by))}`);
      const trade =
        all < value / 5
          ? ' The trade reports small boats with much fitted up to a fifth faster than such an estimate (common practice, no source), which is more than these explain; nor is it the drag of a smooth bottom, which is within 2 % of that of two towed models (Fridsma 1969, second hand): go by the trial.'
          : '';
      return `Its spread, loaded: ${each.join(', ')}.${trade}`;
    });
}

/** What the speeds are, the propeller's pitch, and what the bow motor holds it against. */
function speedWords(figures: Figures, format: Formatter): readonly string[] {
  const { build } = figures;
  const words = build.outboard
    ? 'Estimated, trial to confirm. Each speed is a band, for the least and the most of the outboard’s power that may reach the water.'
    : 'No outboard is in this order: the speeds are those of outboards that the hull may carry. Estimated, trial to confirm.';
  return [
    words,
    ...climbWords(figures, format),
    ...propellerWords(figures, format),
    ...bowWords(figures, format),
  ];
}

/** Whether the outboard gets over the hump as ordered. */
function climbWords({ drive, build }: Figures, format: Formatter): readonly string[] {
  const loaded = drive.loadings.find(({ name }) => name === 'loaded');
  if (!loaded?.applies || !build.outboard) return [];
  const { climb } = loaded;
  if ('notComputed' in climb) return [`Whether the outboard gets over the hump: ${whyNot(climb)}.`];
  if ('rises' in climb)
    return ['Loaded, the drag rises all the way: there is no hump to get over.'];
  const { low, likely, high } = climb.share;
  const [least, middle, most] = [low, likely, high].map((share) => format.percent(share, 0));
  const over = likely <= 1 ? 'gets over it' : 'does not get over it';
  return [
    `Loaded, the hump at about ${format.roundSpeed(climb.speed)} takes ${middle} of the power that likely reaches the water, ${least} by one method and ${most} by the other: the outboard ${over}, if its propeller slips no more there than at full speed.`,
  ];
}

function propellerWords({ drive, build }: Figures, format: Formatter) {
  const { propeller } = drive;
  if (!propeller || !build.outboard) return [];
  if ('notComputed' in propeller) return [`Propeller: ${whyNot(propeller)}.`];
  const { fullThrottle, gearRatio } = build.outboard.model;
  const [least, most] = fullThrottle.map((turns) => format.number(turns, 0));
  const slip = format.percent(decimalToNumber(build.yard.drive.slip), 0);
  return [
    `Propeller: a pitch of about ${format.pitch(propeller.middle)}, from ${format.pitch(propeller.finest)} to ${format.pitch(propeller.coarsest)}, puts full throttle, loaded, between ${most} and ${least}${NO_BREAK}rpm, at a gear ratio of ${format.number(decimalToNumber(gearRatio), 2)} and a slip of ${slip}.`,
  ];
}

function bowWords({ drive, build }: Figures, format: Formatter) {
  const { bowMotor } = drive;
  if (!bowMotor) return [];
  const { name, thrust, needed, time } = bowMotor;
  if ('notComputed' in needed) return [`${name}: ${whyNot(needed)}.`];
  const { wind, current } = build.yard.drive.holding;
  const hours =
    'notComputed' in time
      ? `hours on the batteries ${whyNot(time)}`
      : `the batteries that are fitted last about ${format.hours(time.hours * UNIT_KINDS.duration.h)} at ${format.roundCurrent(time.current)}`;
  return [
    `${name}: holding the boat against ${format.roundSpeed(wind)} of wind and ${format.roundSpeed(current)} of current takes about ${format.force(needed.needed)} (wind ${format.force(needed.wind)} before gusts, current ${format.force(needed.current)}) of its ${format.force(thrust)}; ${hours}.`,
  ];
}
