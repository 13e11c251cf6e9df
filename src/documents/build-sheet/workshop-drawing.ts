import { drawMassBars, drawPlacing, drawPlacingSide } from '../../draw/index.ts';
import type { Figures } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import { drawnItems, drawnNumbers, hullShape, outboardShape } from '../sections/drawing-input.ts';
import { heeledPicture, waterlinesPicture } from '../sections/float-pictures.ts';
import { type CaptionedPicture, pictureOf } from '../sections/picture.ts';

interface WorkshopDrawing {
  /** Where items go from above and from the side, the hull's sections, where the water stands, the mass by group. */
  readonly pictures: readonly CaptionedPicture[];
  /** The number of an item in the drawing, by the item's key: the same as in the quote. */
  readonly numbers: ReadonlyMap<string, string>;
}

/** What the workshop builds by: the plan view with its grid, the body plan, where the water stands, and bars of mass. */
export function drawForWorkshop(figures: Figures, fontCss: string): WorkshopDrawing {
  const { build } = figures;
  const hull = hullShape(build);
  const afloat = figures.float?.afloat;
  const placing = {
    hull,
    items: drawnItems(build),
    ...outboardShape(build),
    fontCss,
  };
  const isBare = placing.items.length === 0 && !build.outboard;
  return {
    pictures: [
      ...(isBare ? [] : placingPictures(placing)),
      heeledPicture(figures, afloat, fontCss),
      ...(afloat ? [waterlinesPicture(figures, afloat, fontCss)] : []),
      {
        ...pictureOf(massBars(figures, fontCss)),
        caption: 'Mass by group, and the share of each in the whole.',
      },
    ],
    numbers: drawnNumbers(build),
  };
}

function placingPictures(placing: Parameters<typeof drawPlacing>[0]): readonly CaptionedPicture[] {
  return [
    {
      ...pictureOf(drawPlacing(placing)),
      caption:
        'Positions: a cross at the middle of each, its number beside it. The table of positions has the dimensions.',
    },
    {
      ...pictureOf(drawPlacingSide(placing)),
      caption: 'The same from the starboard side: how far up from the baseline.',
    },
  ];
}

function massBars({ build, mass }: Figures, fontCss: string) {
  const format = formatterOf(build.yard);
  const groups = mass.groups.map((group) => ({
    name: group.group,
    mass: group.mass,
    figure: `${format.mass(group.mass)}, ${format.percent(group.share, 0)}`,
  }));
  return drawMassBars({ subject: `the ${build.hull.name}`, groups, fontCss });
}
