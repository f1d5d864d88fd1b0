import type { DrilledRow } from '../../core/trial/drilledRow.ts';
import { clipArea, roundWindow } from '../drafting/clip.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import { type Point, overlap } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import { magnify } from './magnify.ts';

const LARGEST = 340;
/** From a circle's edge to the number beside it, px. */
const BESIDE = 12;
const CROSS = 7;

/** The part that all circles of equal or unequal size have in common; empty where there is none. */
export function common(centers: readonly Point[], radii: readonly number[]): readonly Point[] {
  return centers.reduce<readonly Point[]>(
    (left, center, i) => (i === 0 ? left : clipArea(left, roundWindow(center, radii[i]!))),
    roundWindow(centers[0]!, radii[0]!),
  );
}

/**
 * All circles of play laid on one another, on a sheet at most `width` px wide. Each is where the
 * board may lie for one pin, and the cross where it lies: in the part that they have in common,
 * where there is one.
 */
export function arrangeTogether(row: DrilledRow, width: number): Sheet {
  const size = Math.min(width, LARGEST);
  const center: Point = { x: size / 2, y: size / 2 };
  const extent = Math.max(
    ...row.pins.map(({ left, play }) => Math.hypot(left.along, left.across) + play),
  );
  const { times, scale } = magnify(extent, size / 2 - 2 * BESIDE);
  const circles = row.pins.map(({ left, play, goesIn }) => ({
    at: { x: center.x + left.along * scale, y: center.y - left.across * scale },
    radius: play * scale,
    goesIn,
  }));
  const area = common(
    circles.map(({ at }) => at),
    circles.map(({ radius }) => radius),
  );
  const strokes: Stroke[] = [
    ...(area.length > 2 ? [{ pen: 'pin', d: closed(area) } as const] : []),
    ...circles.map(({ at, radius, goesIn }): Stroke => ({
      pen: goesIn ? 'outline' : 'phantom',
      d: circle(at, radius),
    })),
    ...[
      [
        { x: center.x - CROSS, y: center.y },
        { x: center.x + CROSS, y: center.y },
      ],
      [
        { x: center.x, y: center.y - CROSS },
        { x: center.x, y: center.y + CROSS },
      ],
    ].map((line): Stroke => ({ pen: 'mark', d: open(line) })),
  ];
  const labels: Label[] = [];
  circles.forEach(({ at, radius, goesIn }, j) => {
    // Outward from the cross, or else as near to that as there is room.
    const outward = Math.atan2(at.y - center.y, at.x - center.x);
    // Clear of every line first; where there is no such place, clear of the other numbers.
    const clear = (label: Label) =>
      circles.every(
        (other) =>
          Math.abs(Math.hypot(label.x - other.at.x, label.y - other.at.y) - other.radius) >= 9,
      );
    for (let turn = 0; turn < 48; turn++) {
      const angle =
        outward + ((turn % 2 === 0 ? 1 : -1) * Math.ceil((turn % 24) / 2) * Math.PI) / 12;
      const label: Label = {
        x: at.x + (radius + BESIDE) * Math.cos(angle),
        y: at.y + (radius + BESIDE) * Math.sin(angle),
        anchor: 'middle',
        kind: 'word',
        text: words(String(j + 1)),
        ...(!goesIn && { caution: true }),
      };
      if (turn < 24 && !clear(label)) continue;
      if (labels.some((other) => overlap(labelBox(other), labelBox(label)))) continue;
      labels.push(label);
      break;
    }
  });
  labels.push({
    x: 2,
    y: size + 12,
    anchor: 'start',
    kind: 'word',
    text: words(`${times} : 1`),
  });
  return { width: size, height: Math.ceil(size + 26), strokes, labels, hatches: [] };
}

/** The circles in a sentence. */
export function describeTogether(row: DrilledRow): string {
  const count = row.pins.length;
  if (count === 1) return 'One circle of play: the board lies in its middle.';
  const outside = row.pins.flatMap(({ goesIn }, j) => (goesIn ? [] : [j + 1]));
  return row.fits
    ? `The ${count} circles of play have a part in common, and the board lies in it.`
    : `The ${count} circles of play have no part in common. Where the board lies best it is outside the circle${outside.length === 1 ? '' : 's'} of pin ${outside.join(', ')}.`;
}
