import type { System } from '../../core/joint/types.ts';
import type { Mm } from '../../core/length/mm.ts';
import { breakLine } from '../drafting/breakLine.ts';
import type { Dimensions } from '../drafting/dimension.ts';
import type { Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Reading, type Unit, shownReading, words } from '../drafting/reading.ts';
import { type Candidate, type Candidates, sizeName, verdictText } from './geometry.ts';

/** Where one end is drawn, px, and its scale, px for a mm. */
export interface Cell {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly tall: number;
  readonly scale: number;
}

/** Writes a length with words before and after it. */
export type Write = (length: number, before?: string, after?: string) => Reading;

/** A sign beside the verdict: a tick, a dot, a cross. */
function signOf(verdict: Candidate['verdict'], { x, y }: Point): Stroke {
  const d = {
    chosen: `M${x - 6},${y}L${x - 2},${y + 5}L${x + 6},${y - 6}`,
    fits: circle({ x, y }, 4),
    rejected: `M${x - 5},${y - 5}L${x + 5},${y + 5}M${x + 5},${y - 5}L${x - 5},${y + 5}`,
  }[verdict];
  return { pen: 'mark', d };
}

/** The pin in the end of the board: whole where it is taken, empty where it fits, dashed where not. */
function drawPin({ verdict }: Candidate, center: Point, radius: number): Stroke[] {
  const d = circle(center, radius);
  if (verdict === 'chosen') return [{ pen: 'pin', d, hatch: 'pin' }];
  if (verdict === 'fits') {
    return [
      { pen: 'hole', d },
      { pen: 'outline', d },
    ];
  }
  return [
    { pen: 'hole', d },
    { pen: 'hidden', d },
  ];
}

/** A diameter by its name; its unit goes without saying where it is the reader's. */
function diameterText(diameter: Mm, system: System): Reading {
  const name = `Ø${sizeName(diameter, system)}`;
  return {
    in: system === 'in' ? name : `${name} mm`,
    mm: system === 'mm' ? name : `${name} in`,
  };
}

/** One pin in the middle of the board's end, with the wood beside it and what became of it. */
export function drawEnd(
  candidate: Candidate,
  { thickness, grain, system }: Candidates,
  { left, top, width, tall, scale }: Cell,
  write: Write,
  unit: Unit | 'both',
): Dimensions {
  const middle = top + tall / 2;
  const [upper, lower] = [middle - (thickness / 2) * scale, middle + (thickness / 2) * scale];
  const right = left + width;
  const corners = [
    { x: left + 5, y: upper },
    { x: right - 5, y: upper },
    { x: right - 5, y: lower },
    { x: left + 5, y: lower },
  ] as const;
  const rightSide = breakLine(corners[1], corners[2]);
  const leftSide = breakLine(corners[3], corners[0]);
  const center = { x: left + width / 2, y: middle };
  const radius = (candidate.diameter / 2) * scale;
  const words3 = top + tall + 20;
  const verdict = verdictText(candidate);
  const label = (y: number, kind: Label['kind'], text: Reading): Label => ({
    x: center.x,
    y,
    anchor: 'middle',
    kind,
    text,
  });
  const arm = Math.max(radius, (thickness / 2) * scale) + 6;
  return {
    strokes: [
      {
        pen: 'wood-a',
        d: closed([corners[0], ...rightSide, corners[2], ...leftSide]),
        hatch: grain,
      },
      { pen: 'thin', d: open([...rightSide, corners[2]]) },
      { pen: 'thin', d: open([...leftSide, corners[0]]) },
      { pen: 'outline', d: `${open([corners[0], corners[1]])}${open([corners[3], corners[2]])}` },
      ...drawPin(candidate, center, radius),
      {
        pen: 'center',
        d: `${open([
          { x: center.x - radius - 8, y: middle },
          { x: center.x + radius + 8, y: middle },
        ])}${open([
          { x: center.x, y: middle - arm },
          { x: center.x, y: middle + arm },
        ])}`,
      },
      signOf(candidate.verdict, { x: center.x - 44, y: words3 + 40 }),
    ],
    labels: [
      label(words3, 'number', shownReading(diameterText(candidate.diameter, system), unit)),
      label(
        words3 + 20,
        'word',
        candidate.beside > 0 ? write(candidate.beside, '', ' beside') : words('no wood beside'),
      ),
      {
        ...label(words3 + 40, 'number', words(verdict)),
        x: center.x - 32,
        anchor: 'start',
      },
    ],
  };
}
