import { breakLine } from '../drafting/breakLine.ts';
import { clipArea, clipLine, type Window } from '../drafting/clip.ts';
import type { Hatch, Pen, Stroke } from '../drafting/ink.ts';
import { closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import type { Body, Bore, Dowel } from '../section/shapes.ts';

/** A line, or an area where it is `closed`, of the real joint, in mm. */
export interface Piece {
  readonly pen: Pen;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** What is drawn of a joint, in mm: boards, then what is in and on them. */
export interface Figure {
  readonly bodies: readonly Body[];
  readonly pieces: readonly Piece[];
}

/** From mm of the joint to px of the sheet. */
export type Place = (point: Point) => Point;

/** Pens that draw a line and fill nothing. */
const LINES: readonly Pen[] = ['outline', 'hidden', 'thin', 'center', 'phantom'];

export function hatchName(body: Body): string {
  return `${body.grain}${body.angle}`;
}

/** The patterns of section lines that a figure's boards need. */
export function hatchesOf(bodies: readonly Body[]): readonly Hatch[] {
  return [
    ...new Map(
      bodies.map((body) => [
        hatchName(body),
        { name: hatchName(body), grain: body.grain, angle: body.angle },
      ]),
    ).values(),
  ];
}

/** A hole in section: its air, its walls, and what came out of the wood. */
export function borePieces(bore: Bore): readonly Piece[] {
  const line = (pen: Pen, points: readonly Point[]): Piece => ({ pen, points, closed: false });
  const lines = [...bore.inWood, ...bore.through];
  if (bore.hidden) return lines.map((points) => line('hidden', points));
  return [
    { pen: 'hole', points: bore.outline, closed: true },
    ...bore.inWood.map((points) => line('outline', points)),
    ...bore.through.map((points) => line('phantom', points)),
    ...(bore.shoulder === null ? [] : [line('thin', bore.shoulder)]),
    line('thin', bore.mouth),
  ];
}

export function dowelPiece(dowel: Dowel): Piece {
  return { pen: 'pin', points: dowel.outline, closed: true };
}

function woodPen(body: Body): Pen {
  return body.member === 'b' ? 'wood-b' : 'wood-a';
}

function sidesOf(body: Body): { from: Point; to: Point; broken: boolean }[] {
  return body.outline.map((from, i) => ({
    from,
    to: body.outline[(i + 1) % body.outline.length]!,
    broken: body.breaks.includes(i),
  }));
}

function drawBody(body: Body, place: Place): Stroke[] {
  const sides = sidesOf(body).map(({ from, to, broken }) => ({
    line: broken ? [...breakLine(place(from), place(to)), place(to)] : [place(from), place(to)],
    broken,
  }));
  return [
    {
      pen: woodPen(body),
      d: closed(sides.flatMap(({ line }) => line.slice(0, -1))),
      hatch: hatchName(body),
    },
    ...sides.map(({ line, broken }): Stroke => ({
      pen: broken ? 'thin' : 'outline',
      d: open(line),
    })),
  ];
}

/** A figure on the sheet. */
export function drawFigure(figure: Figure, place: Place): readonly Stroke[] {
  return [
    ...figure.bodies.flatMap((body) => drawBody(body, place)),
    ...figure.pieces.map((piece): Stroke => {
      const points = piece.points.map(place);
      return { pen: piece.pen, d: piece.closed ? closed(points) : open(points) };
    }),
  ];
}

/** As much of a figure as is seen through a window of the sheet: a detail. */
export function drawThrough(figure: Figure, place: Place, window: Window): readonly Stroke[] {
  const area = (pen: Pen, points: readonly Point[], hatch?: string): Stroke[] => {
    const seen = clipArea(points.map(place), window);
    return seen.length < 3 ? [] : [{ pen, d: closed(seen), ...(hatch && { hatch }) }];
  };
  const line = (pen: Pen, points: readonly Point[]): Stroke[] =>
    clipLine(points.map(place), window).map((part) => ({ pen, d: open(part) }));
  return [
    ...figure.bodies.flatMap((body) => [
      ...area(woodPen(body), body.outline, hatchName(body)),
      ...sidesOf(body).flatMap(({ from, to, broken }) =>
        line(broken ? 'thin' : 'outline', [from, to]),
      ),
    ]),
    ...figure.pieces.flatMap(({ pen, points, closed: whole }) => {
      if (!whole) return line(pen, points);
      // What is only a line has no edge where the window cuts it off.
      return LINES.includes(pen)
        ? line(pen, [...points, ...points.slice(0, 1)])
        : area(pen, points);
    }),
  ];
}
