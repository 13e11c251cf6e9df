import { type CrossWater, drawBodyPlan, drawRighting, drawWaterlines } from '../../draw/index.ts';
import { type Afloat, conditionOf, type Figures } from '../../figures/index.ts';
import { DEGREE, formatterOf, metres, QUANTITIES } from '../../units/index.ts';
import { hullShape, outboardShape } from './drawing-input.ts';
import { conditionName, surfaceAt } from './float-words.ts';
import { type CaptionedPicture, pictureOf } from './picture.ts';

/** The surface of the water on its profile: nobody aboard, fully loaded, everyone aft. */
export function waterlinesPicture(
  figures: Figures,
  afloat: Afloat,
  fontCss: string,
): CaptionedPicture {
  const { build } = figures;
  const format = formatterOf(build.yard);
  const empty = build.outboard ? 'with engine' : 'light';
  const waters = ([empty, 'fully loaded', 'people aft'] as const).flatMap((name) => {
    const condition = conditionOf(afloat, name);
    const state = condition?.state;
    if (!condition || !state) return [];
    const fore = surfaceAt(state.plane, afloat.length);
    const aft = surfaceAt(state.plane, metres(0));
    const draughts = `${format.dimension(metres(aft))} at the transom, ${format.dimension(metres(fore))} at the stem head`;
    return [{ name: `${conditionName(condition, figures)}: ${draughts}`, aft, fore }];
  });
  const drawing = drawWaterlines({
    hull: hullShape(build),
    ...outboardShape(build),
    waters,
    fontCss,
  });
  return {
    ...pictureOf(drawing),
    caption:
      'Where the water stands above the baseline; keel level on the paper. Estimated from the drawn lines and counted masses; verify by {draught} marks.',
  };
}

/** The body plan with the surface of the water amidships, fully loaded and with everyone on one side. */
export function heeledPicture(
  figures: Figures,
  afloat: Afloat | undefined,
  fontCss: string,
): CaptionedPicture {
  const hull = hullShape(figures.build);
  const waters = afloat ? crossWaters(figures, afloat) : [];
  const water =
    waters.length > 0
      ? ' The surface of the water is that amidships, starboard on the right: estimated; verify by {draught} marks and by an offset-load test.'
      : '';
  return {
    ...pictureOf(drawBodyPlan({ hull, waters, fontCss })),
    caption: `Sections to the outside of the {moulding}, forward on the right, aft on the left.${water}`,
  };
}

/** Righting arms with the heels that matter; nothing when it does not float fully loaded. */
export function rightingPicture(
  figures: Figures,
  afloat: Afloat,
  fontCss: string,
): readonly CaptionedPicture[] {
  const { curve } = afloat;
  const side = conditionOf(afloat, 'people to one side')?.state;
  const { build } = figures;
  if (!curve) return [];
  const format = formatterOf(build.yard);
  const mark = (name: string, heel: number | undefined) =>
    heel === undefined
      ? []
      : [{ name: `${name}: ${format.degrees(heel)}`, heel: Math.abs(heel) / DEGREE }];
  const { greatest, vanishing, downflooding } = curve;
  const marks = [
    ...mark('Everyone to one side', side?.heel),
    ...mark(`Water comes in at the ${downflooding?.opening ?? 'sheer'}`, downflooding?.heel),
    ...mark(`Greatest arm, ${format.dimension(greatest.arm)}`, greatest.heel),
    ...mark('Righting arm zero, if the boat stays dry', vanishing),
  ];
  const drawing = drawRighting({
    subject: `the ${build.hull.name}, fully loaded`,
    arms: curve.arms.map(({ heel, arm }) => [
      heel / DEGREE,
      arm / QUANTITIES.dimension[format.system].factor,
    ]),
    unit: format.unit('dimension'),
    marks: marks.toSorted((a, b) => a.heel - b.heel),
    fontCss,
  });
  return [
    {
      ...pictureOf(drawing),
      caption: `Righting arm, fully loaded, heeled to ${curve.side}. Beyond the angle at which water comes in it holds only for a boat that stays dry. Estimated from the drawn lines; verify by an inclining test.`,
    },
  ];
}

function crossWaters(figures: Figures, afloat: Afloat): readonly CrossWater[] {
  const { build } = figures;
  const format = formatterOf(build.yard);
  return (['fully loaded', 'people to one side'] as const).flatMap((name) => {
    const condition = conditionOf(afloat, name);
    const state = condition?.state;
    if (!condition || !state) return [];
    const { heel, leans } = state;
    const lean = leans === 'upright' ? 'upright' : `${format.degrees(heel)} ${leans}`;
    const height = surfaceAt(state.plane, metres(afloat.length / 2));
    return [{ name: `${conditionName(condition, figures)}: ${lean}`, height, heel }];
  });
}
