import { type Dimensions, arrowAt } from '../drafting/dimension.ts';
import { roundWindow } from '../drafting/clip.ts';
import type { Stroke } from '../drafting/ink.ts';
import { circle, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, shownReading, words } from '../drafting/reading.ts';
import { type Figure, type Place, drawThrough } from './figure.ts';
import type { SmallLength } from './section.ts';

/** Enlargements of ISO 5455, of the drawing that the detail belongs to. */
const SCALES = [2, 5, 10, 20, 50, 100, 200, 500];
/** A length under this many px on the drawing can hardly be seen there. */
export const SEEN = 6;
/** So many px it gets in a detail at the least. */
const WANTED = 15;

/** Height that a detail takes with the words under it, px. */
export const DETAIL_WORDS = 52;

/** A detail chosen for a drawing: its letter, how much it enlarges, and what it shows. */
export interface Chosen {
  readonly letter: string;
  readonly times: number;
  readonly small: SmallLength;
}

/** The details that a drawing of so many px for a mm needs: two at the most, lettered from X. */
export function chooseDetails(small: readonly SmallLength[], scale: number): readonly Chosen[] {
  return small
    .filter(({ from, to }) => to - from > 1e-6 && (to - from) * scale < SEEN)
    .slice(0, 2)
    .map((each, i) => {
      const size = (each.to - each.from) * scale;
      const times = SCALES.find((one) => one * size >= WANTED) ?? SCALES.at(-1)!;
      return { letter: 'XY'[i]!, times, small: each };
    });
}

/** The circle on the drawing that a detail enlarges, with its letter over it or under it. */
export function markDetail(
  chosen: Chosen,
  place: Place,
  radius: number,
  letter: 'over' | 'under',
): Dimensions {
  const center = place(chosen.small.at);
  const around = Math.max(9, radius / chosen.times);
  return {
    strokes: [{ pen: 'thin', d: circle(center, around) }],
    labels: [
      {
        x: center.x + around * 0.75 + 4,
        y: center.y + (letter === 'over' ? -1 : 1) * (around * 0.75 + 9),
        anchor: 'start',
        kind: 'number',
        text: words(chosen.letter),
      },
    ],
  };
}

/** Two arrowheads that point at the ends of a small length from outside, with extension lines. */
function pinch(
  axis: 'x' | 'y',
  from: number,
  to: number,
  across: number,
  feature: number,
): Stroke[] {
  const at = (along: number, off = across): Point =>
    axis === 'x' ? { x: along, y: off } : { x: off, y: along };
  const arrow = (tip: number, way: 1 | -1): Stroke[] => [
    {
      pen: 'arrow',
      caution: true,
      d: axis === 'x' ? arrowAt(at(tip), way, 0) : arrowAt(at(tip), 0, way),
    },
    { pen: 'thin', caution: true, d: open([at(tip), at(tip - way * 26)]) },
    { pen: 'thin', caution: true, d: open([at(tip, feature), at(tip, across)]) },
  ];
  return [...arrow(from, 1), ...arrow(to, -1)];
}

/** A detail at `center` on the sheet: what is seen through the circle, its size, letter and scale. */
export function drawDetail(
  chosen: Chosen,
  figure: Figure,
  scale: number,
  center: Point,
  radius: number,
  unit: Unit | 'both',
): Dimensions {
  const { small, times, letter } = chosen;
  const place: Place = (point) => ({
    x: center.x + (point.x - small.at.x) * scale * times,
    y: center.y + (point.y - small.at.y) * scale * times,
  });
  const aside = radius * 0.45;
  const ends = [small.from, small.to].map((value) =>
    small.axis === 'x' ? place({ x: value, y: 0 }).x : place({ x: 0, y: value }).y,
  ) as [number, number];
  const size = shownReading(small.text, unit);
  return {
    strokes: [
      ...drawThrough(figure, place, roundWindow(center, radius)),
      { pen: 'thin', d: circle(center, radius) },
      ...pinch(
        small.axis,
        ...ends,
        ...(small.axis === 'x'
          ? ([center.y + aside, center.y] as const)
          : ([center.x - aside, center.x] as const)),
      ),
    ],
    labels: [
      {
        x: center.x,
        y: center.y + radius + 17,
        anchor: 'middle',
        kind: 'number',
        text: words(`${letter}  ${times}\u2009:\u20091`),
      },
      {
        x: center.x,
        y: center.y + radius + 38,
        anchor: 'middle',
        kind: 'number',
        caution: true,
        text: size,
      },
    ],
  };
}
