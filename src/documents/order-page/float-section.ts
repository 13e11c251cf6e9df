import {
  type Afloat,
  conditionOf,
  defaultsUsed,
  type Figures,
  movedFar,
  outcomeText,
  placeWords,
  remedyText,
} from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import {
  DEGREE,
  type Formatter,
  formatterOf,
  kilograms,
  type Metres,
  metres,
  UNIT_KINDS,
  whyNot,
} from '../../units/index.ts';
import { ballastSentences } from '../sections/float-ballast-words.ts';
import { growthSentences, growthTable } from './float-growth.ts';
import { heeledPicture, rightingPicture, waterlinesPicture } from '../sections/float-pictures.ts';
import { swampedTable } from './float-swamped.ts';
import {
  adviceSentence,
  conditionName,
  conditionSentence,
  trimByEnd,
  everyoneSentence,
  sideSentence,
  takenSentence,
  toldConditions,
} from '../sections/float-words.ts';
import {
  captioned,
  type Cell,
  figureColumns,
  type Part,
  picture,
  row,
  section,
  sentences,
  smallPrint,
  type Table,
} from '../blocks/block.ts';
import { present, waterSentence } from '../sections/words.ts';

type Condition = Afloat['conditions'][number];
type State = NonNullable<Condition['state']>;
/** Moves less than this print as nothing: a twentieth of a degree. */
const PRINTS = DEGREE / 20;
/** A freeboard less than this prints as none, m. */
const PRINTS_LENGTH = 5e-4;

/** How it floats, for the yard: every condition, stability, trim, ballast and what is left when swamped. */
export function floatSection(figures: Figures, fontCss: string): Part {
  const afloat = figures.float?.afloat;
  if (!afloat) {
    return section(
      'floating',
      'Floating',
      'Stability and freeboard are not computed: the lines of the hull do not close to a shape.',
    );
  }
  const { swamped, crew } = afloat;
  const { rated } = crew;
  const format = formatterOf(figures.build.yard);
  return section(
    'floating',
    'Floating',
    ...sentences(
      present([
        adviceSentence(figures, afloat),
        takenSentence(afloat),
        // The tables have those that float.
        ...toldConditions(figures, afloat).flatMap((condition) =>
          condition.state || condition.name.endsWith('to one side')
            ? []
            : `${conditionSentence(condition, figures)}${remedyOf(condition, format)}`,
        ),
        centimetreSentence(afloat, format),
        spreadSentence(afloat, format),
        sideSentence(crew.ordered, format, 'as ordered'),
        sideSentence(
          rated,
          format,
          `at the shop’s rating${rated.isBare === true ? ' with nothing stowed' : ''}`,
        ),
        edgeSentence(afloat, format),
        ...ballastSentences(figures, afloat),
        ...growthSentences(figures, afloat),
        ...(swamped
          ? []
          : ['Flotation when swamped is not computed: the hull file gives no foam.']),
      ]),
    ),
    ...conditionTables(figures, afloat, format),
    trimTable(afloat, format),
    growthTable(afloat.growth, format),
    ...(swamped ? [swampedTable(swamped, format)] : []),
    ...[
      waterlinesPicture(figures, afloat, fontCss),
      heeledPicture(figures, afloat, fontCss),
      ...rightingPicture(figures, afloat, fontCss),
    ].map(picture),
    ...smallPrint([
      ...crewNotes(figures, afloat, format),
      ...methodLines('growth'),
      'A place for a thing that moves counts as free where nothing of known size stands; look before you move it.',
      ...(afloat.ballast ? methodLines('ballast') : []),
      ...(swamped ? methodLines('handbook', 'archimedes') : []),
      ...(swamped?.uncounted ?? []).map((one) => `Not counted: ${one}.`),
      'These are estimates, not proof of compliance with any rule.',
    ]),
  );
}

/** In which water, by which screens, and on which guesses. */
const crewNotes = ({ build }: Figures, afloat: Afloat, format: Formatter): readonly string[] => [
  waterSentence(build, afloat),
  ...methodLines('hydrostatics', 'crew'),
  `People to one side are held against: ${build.yard.offsetLoad?.basis ?? 'water coming in, as the yard file gives no limits'}.`,
  everyoneSentence(afloat, format),
  ...defaultsUsed(build).map((one) => `Assumed, as the hull file does not say: ${one}.`),
];

/** What would let a boat float in a condition in which it does not. */
function remedyOf({ remedy }: Condition, format: Formatter): string {
  const told = remedyText(remedy, format);
  return told === undefined ? '' : ` ${told}.`;
}

/** What the edge of the cockpit bears with nobody aboard, against what the shop wants of it. */
function edgeSentence({ crew: { edge } }: Afloat, format: Formatter): string {
  const { bears, wanted } = edge;
  const want = `${format.mass(wanted)} is wanted there, 0.6 of the rated people`;
  if ('notComputed' in bears) return `What the edge of the cockpit bears is ${whyNot(bears)}.`;
  const borne = {
    met: () => format.mass(bears.outcome === 'met' ? bears.growth : wanted),
    'not met': () => `more than ${format.mass(kilograms(2 * wanted))}`,
    'already past': () => 'nothing',
  }[bears.outcome]();
  return `With nobody aboard and tanks full the edge of the cockpit bears ${borne} until water comes in; ${want}.`;
}

/** How much of displacement and freeboard rests on the way that the lines run between the cross-sections. */
function spreadSentence({ spread }: Afloat, format: Formatter): string | undefined {
  if (!spread) return undefined;
  const { other, displacement, share, freeboard } = spread;
  const [taken, would] = other === 'straight' ? ['curved', 'Straight'] : ['straight', 'Curved'];
  const side = (value: number): string => (value < 0 ? 'less' : 'more');
  const carry = `${format.mass(kilograms(Math.abs(displacement)))} (${format.percent(Math.abs(share), 1)}) ${side(displacement)}`;
  return `Between its cross-sections the lines are taken as ${taken}. ${would} ones would carry ${carry} at the same waterline, fully loaded${leftText(freeboard, side, format)}.`;
}

function leftText(
  freeboard: Metres | undefined,
  side: (value: number) => string,
  format: Formatter,
): string {
  if (freeboard === undefined) return '';
  if (Math.abs(freeboard) < PRINTS_LENGTH) return ', and leave as much freeboard';
  const left = format.dimension(metres(Math.abs(freeboard)));
  return `, and leave ${left} ${side(freeboard)} freeboard`;
}

/** How much weight it feels, for whoever moves or adds some. */
function centimetreSentence({ perCentimetre }: Afloat, format: Formatter): string | undefined {
  if (!perCentimetre) return undefined;
  const { sinks, trims } = perCentimetre;
  const { in: inch, cm } = UNIT_KINDS.length;
  const [step, by] = format.system === 'us' ? [inch / cm, '1 in'] : [1, '1 cm'];
  const { mass, far } = movedFar(trims * step, format);
  return `Fully loaded, ${format.mass(kilograms(sinks * step))} more lowers the boat by ${by}, and ${mass} moved ${far} forward or aft trims it by ${by} over the length in the water.`;
}

/** Draught, trim and heel in one table, freeboards and GM in the next: together they would not fit a page. */
function conditionTables(figures: Figures, afloat: Afloat, format: Formatter): readonly Table[] {
  const told = toldConditions(figures, afloat);
  const stateRow = (
    condition: Condition,
    cells: (state: State) => readonly Cell[],
    count: number,
  ) => {
    const { state, equilibrium } = condition;
    const name = conditionName(condition, figures);
    if (state) return row('plain', name, ...cells(state));
    const blanks = Array.from({ length: count - 1 }, () => '–');
    return row('flag', name, outcomeText(equilibrium), ...blanks);
  };
  return [
    captioned(
      '{Draught}, trim and heel',
      figureColumns(
        'Condition',
        '{Draught} aft',
        '{Draught} fore',
        'Trim',
        'Heel',
        'People',
        'Mass',
      ),
      told.map((condition) =>
        stateRow(
          condition,
          (state) => [
            format.dimension(state.draughtAft),
            format.dimension(state.draughtFore),
            state.trims === 'level' ? 'level' : `${format.degrees(state.trim)} ${state.trims}`,
            state.leans === 'upright' ? 'upright' : `${format.degrees(state.heel)} ${state.leans}`,
            format.number(condition.people, 0),
            format.mass(condition.load.mass),
          ],
          6,
        ),
      ),
    ),
    captioned(
      'Freeboard and GM',
      figureColumns('Condition', 'Bow', 'Side', 'Transom', 'Lowest opening', 'GM'),
      told.map((condition) => stateRow(condition, (state) => freeboardCells(state, format), 5)),
    ),
  ];
}

function freeboardCells(
  { freeboards, metacentricHeight }: State,
  format: Formatter,
): readonly Cell[] {
  const { bow, side, transom, lowest } = freeboards;
  return [
    ...[bow, side, transom].map(({ freeboard }) => format.dimension(freeboard)),
    { text: format.dimension(lowest.freeboard), under: placeWords(lowest.name) },
    metacentricHeight ? format.dimension(metacentricHeight.byForm) : 'not computed',
  ];
}

function trimTable(afloat: Afloat, format: Formatter): Table {
  const { trimEffects, trim } = afloat;
  const way = (angle: number): string => trimByEnd(angle, format);
  const state = conditionOf(afloat, 'fully loaded')?.state;
  return captioned(
    'What changes the trim most, fully loaded, and what moving one thing would gain',
    figureColumns('What', 'Mass', 'Trim'),
    [
      ...trimEffects
        .filter(({ trim: angle }) => Math.abs(angle) >= PRINTS)
        .map(({ name, mass, trim: angle }) => row('plain', name, format.mass(mass), way(angle))),
      ...(state ? [row('sum', 'As ordered', '', way(state.trim))] : []),
      ...trim.moves.map(({ item, to }) =>
        row(
          'plain',
          `${item.count > 1 ? 'one of ' : ''}${item.name}, moved ${to.name}`,
          format.mass(item.each),
          way(to.plane.trim),
        ),
      ),
    ],
  );
}
