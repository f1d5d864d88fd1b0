import { breakLine } from '../drafting/breakLine.ts';
import type { Hatch, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { cautionSign, edgeMark, faceMark } from '../drafting/marks.ts';
import { closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import type { Frame } from './frame.ts';
import type { Body, SectionShapes } from './shapes.ts';

function hatchName(body: Body): string {
  return `${body.grain}${body.angle}`;
}

/** The board as a filled shape with its section lines, its real edges and its break lines. */
export function drawBody(body: Body, frame: Frame): Stroke[] {
  const corners = body.outline.map(frame.place);
  const outline: Point[] = [];
  const edges: Point[][] = [];
  const breaks: Point[][] = [];
  corners.forEach((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    if (body.breaks.includes(i)) {
      const wave = breakLine(corner, next);
      outline.push(...wave);
      breaks.push([...wave, next]);
      return;
    }
    outline.push(corner);
    const run = edges.at(-1);
    if (run !== undefined && !body.breaks.includes(i - 1)) run.push(next);
    else edges.push([corner, next]);
  });
  const firstEdge = edges[0];
  const lastEdge = edges.at(-1);
  if (
    edges.length > 1 &&
    firstEdge &&
    lastEdge &&
    !body.breaks.includes(corners.length - 1) &&
    !body.breaks.includes(0)
  ) {
    edges.pop();
    edges[0] = [...lastEdge, ...firstEdge.slice(1)];
  }
  return [
    {
      pen: body.member === 'b' ? 'wood-b' : 'wood-a',
      d: closed(outline),
      hatch: hatchName(body),
    },
    ...breaks.map((line): Stroke => ({ pen: 'thin', d: open(line) })),
    ...edges.map((line): Stroke => ({
      pen: 'outline',
      d: body.breaks.length === 0 ? closed(corners) : open(line),
    })),
  ];
}

/** The holes: seen ones cut open, those behind dashed, and what came out of the wood. */
export function drawBores(shapes: SectionShapes, frame: Frame): Stroke[] {
  const seen = shapes.bores.filter((bore) => !bore.hidden);
  const hidden = shapes.bores.filter((bore) => bore.hidden);
  const line = (points: readonly Point[]) => open(points.map(frame.place));
  return [
    ...hidden.flatMap((bore) =>
      [...bore.inWood, ...bore.through].map((part): Stroke => ({ pen: 'hidden', d: line(part) })),
    ),
    ...seen.map((bore): Stroke => ({ pen: 'hole', d: closed(bore.outline.map(frame.place)) })),
    ...seen.flatMap((bore): Stroke[] => [
      ...bore.inWood.map((part): Stroke => ({ pen: 'outline', d: line(part) })),
      ...bore.through.map((part): Stroke => ({ pen: 'phantom', d: line(part) })),
      ...(bore.shoulder === null ? [] : [{ pen: 'thin', d: line(bore.shoulder) } as const]),
      { pen: 'thin', d: line(bore.mouth) },
    ]),
  ];
}

/** The pins. */
export function drawDowels(shapes: SectionShapes, frame: Frame): Stroke[] {
  return shapes.dowels.map((dowel): Stroke => ({
    pen: dowel.hidden ? 'hidden' : 'pin',
    d: closed(dowel.outline.map(frame.place)),
  }));
}

/** The holes' axes, a little longer than they are. */
export function drawAxes(shapes: SectionShapes, frame: Frame): Stroke[] {
  return shapes.axes.map(([from, to]): Stroke => {
    const [p, q] = [frame.place(from), frame.place(to)];
    const length = Math.hypot(q.x - p.x, q.y - p.y) || 1;
    const [dx, dy] = [((q.x - p.x) / length) * 5, ((q.y - p.y) / length) * 5];
    return {
      pen: 'center',
      d: open([
        { x: p.x - dx, y: p.y - dy },
        { x: q.x + dx, y: q.y + dy },
      ]),
    };
  });
}

/** The marks of reference sides, and a sign where a point came through. */
export function drawMarks(shapes: SectionShapes, frame: Frame): Stroke[] {
  return [
    ...shapes.marks.map(({ kind, at, turn }): Stroke => {
      const foot = frame.place(at);
      return { pen: 'mark', d: kind === 'face' ? faceMark(foot, turn) : edgeMark(foot, turn) };
    }),
    ...shapes.cautions.flatMap((at): Stroke[] => {
      const tip = frame.place(at);
      const outward = tip.x > (frame.box.left + frame.box.right) / 2 ? 20 : -20;
      const sign = cautionSign({ x: tip.x + outward, y: tip.y });
      return [
        { pen: 'sign', d: sign.plate },
        { pen: 'sign', d: sign.bar },
      ];
    }),
  ];
}

/** The boards' letters. */
export function drawLetters(shapes: SectionShapes, frame: Frame): Label[] {
  return shapes.bodies.map(({ letter, member }) => ({
    ...frame.place(letter.at),
    anchor: 'middle',
    kind: 'letter',
    text: words(letter.text),
    over: member === 'b' ? 'wood-b' : 'wood-a',
  }));
}

/** The patterns of section lines that the boards need. */
export function hatchesOf(shapes: SectionShapes): Hatch[] {
  const byName = new Map(
    shapes.bodies.map((body) => [
      hatchName(body),
      { name: hatchName(body), grain: body.grain, angle: body.angle },
    ]),
  );
  return [...byName.values()];
}
