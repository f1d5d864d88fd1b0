import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Hatch, Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox, textWidth } from '../drafting/label.ts';
import { cautionSign, edgeMark, faceMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import { type Box, type Point, boxAround, shift } from '../drafting/point.ts';
import { type Unit, shownReading, words } from '../drafting/reading.ts';
import { slantedDimension } from '../drafting/slanted.ts';
import type { Body, Measure, Note, SectionShapes, Side, SlantedMeasure, Step } from './shapes.ts';

/** Between rows of dimensions, and between the joint and the first row, in px. */
const ROW = 31;
const FIRST_ROW = 30;
/** More of it where the name of a row stands over its line instead of beside it. */
const NAME_OVER = 18;
/** Below this width a drawing uses its short words. */
const NARROW = 520;
const TALLEST = { narrow: 300, wide: 420 } as const;
const LARGEST_SCALE = 11;

/** How the reader has it. */
export interface Look {
  readonly unit: Unit | 'both';
  /** Ids of the measures that the reader controls. */
  readonly set: readonly string[];
}

/** How the page and the joint lie to each other. */
interface Frame {
  /** px for a mm. */
  readonly scale: number;
  readonly place: (point: Point) => Point;
  /** The joint on the page, in px. */
  readonly box: Box;
  /** From one row of dimensions to the next, in px. */
  readonly row: number;
}

function tiersOf(shapes: SectionShapes, side: Side): number {
  const tiers = shapes.measures.filter((m) => m.side === side).map((m) => m.tier + 1);
  return Math.max(0, ...tiers);
}

function boundsOf(shapes: SectionShapes): Box {
  const points = [
    ...shapes.bodies.flatMap((body) => body.outline),
    ...shapes.bores.flatMap((bore) => bore.outline),
    ...shapes.dowels.flatMap((dowel) => dowel.outline),
  ];
  return boxAround(points) ?? { left: 0, top: 0, right: 1, bottom: 1 };
}

function hatchName(body: Body): string {
  return `${body.grain}${body.angle}`;
}

/** The board as a filled shape with its section lines, its real edges and its break lines. */
function drawBody(body: Body, frame: Frame): Stroke[] {
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

function drawBores(shapes: SectionShapes, frame: Frame): Stroke[] {
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

function drawDowels(shapes: SectionShapes, frame: Frame): Stroke[] {
  return shapes.dowels.map((dowel): Stroke => ({
    pen: dowel.hidden ? 'hidden' : 'pin',
    d: closed(dowel.outline.map(frame.place)),
  }));
}

function drawAxes(shapes: SectionShapes, frame: Frame): Stroke[] {
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

function drawMarks(shapes: SectionShapes, frame: Frame): Stroke[] {
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

function spanOf(measure: Measure, frame: Frame, look: Look): Span {
  const [from, to] = [frame.place(measure.from), frame.place(measure.to)];
  const alongX = measure.side === 'above' || measure.side === 'below';
  const end = (p: Point) => (alongX ? { along: p.x, feature: p.y } : { along: p.y, feature: p.x });
  return {
    from: measure.openAt === 'from' ? { ...end(from), feature: null } : end(from),
    to: measure.openAt === 'to' ? { ...end(to), feature: null } : end(to),
    text: shownReading(measure.text, look.unit),
    outside: measure.outside,
    ...(measure.openAt && { openAt: measure.openAt }),
    ...(measure.caution === true && { caution: true }),
    ...(look.set.includes(measure.id) && { set: true }),
  };
}

/** Where a row of dimensions lies across its direction, in px. */
function rowAt(side: Side, tier: number, frame: Frame, widest: number): number {
  const { box, row } = frame;
  if (side === 'above') return box.top - FIRST_ROW - tier * row;
  if (side === 'below') return box.bottom + FIRST_ROW - ROW - 4 + (tier + 1) * row;
  const out = 16 + widest / 2 + tier * (widest + 12);
  return side === 'left' ? box.left - out : box.right + out;
}

interface Rows extends Dimensions {
  /** How far words on the left run into the rows, in px. */
  readonly crowding: number;
}

function drawRows(
  shapes: SectionShapes,
  frame: Frame,
  narrow: boolean,
  look: Look,
  nameX: number,
  apart: boolean,
): Rows {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  let crowding = 0;
  for (const side of ['above', 'below', 'left', 'right'] as const) {
    const axis = side === 'above' || side === 'below' ? 'x' : 'y';
    for (let tier = 0; tier < tiersOf(shapes, side); tier++) {
      const measures = shapes.measures.filter((m) => m.side === side && m.tier === tier);
      const spans = measures.map((m) => spanOf(m, frame, look));
      const widest = Math.max(
        0,
        ...measures.map((m) => textWidth(shownReading(m.text, look.unit), 'number')),
      );
      const across = rowAt(side, tier, frame, widest);
      const row = dimensionRow(axis, across, spans);
      strokes.push(...row.strokes);
      labels.push(...row.labels);
      const name = shapes.rowNames[`${side} ${tier}`];
      if (axis === 'y' || name === undefined || spans.length === 0) continue;
      const label: Label = {
        x: nameX,
        y: frame.row > ROW ? across - NAME_OVER : across,
        anchor: 'start',
        kind: 'word',
        text: words(narrow ? name.short : name.long),
      };
      const numbers = row.labels.map(labelBox);
      // A name over its line only has to keep clear of a number that stands over it too.
      const leftmost =
        frame.row > ROW
          ? Math.min(...numbers.filter((box) => box.bottom < across).map((box) => box.left))
          : Math.min(
              ...spans.map((span) => Math.min(span.from.along, span.to.along) - 6),
              ...numbers.map((box) => box.left),
            );
      const over = labelBox(label).right + 12 - leftmost;
      // Names that the joint at home has taught make way when it is pulled apart.
      if (apart && over > 0) continue;
      labels.push(label);
      crowding = Math.max(crowding, over);
    }
  }
  return { strokes, labels, crowding };
}

/** Overhang, reveal and setback: beside the joint, over A's reference face. */
function drawStep(step: Step, frame: Frame, look: Look): Dimensions {
  const from = frame.place({ x: step.x, y: step.from });
  const to = frame.place({ x: step.x, y: step.to });
  // On the side of the board that lies lower.
  const lower = step.to > 0 ? 1 : -1;
  const row = dimensionRow('y', from.x + lower * 14, [
    {
      from: { along: from.y, feature: from.x },
      to: { along: to.y, feature: null },
      text: shownReading(step.text, look.unit),
      outside: lower === 1 ? 'after' : 'before',
      ...(look.set.includes(step.id) && { set: true }),
    },
  ]);
  const clear = (label: Label) =>
    label.anchor === 'middle' ? label : { ...label, y: Math.min(label.y, to.y - 12) };
  return { strokes: row.strokes, labels: row.labels.map(clear) };
}

function drawSlanted(measure: SlantedMeasure, frame: Frame, look: Look): Dimensions {
  return slantedDimension({
    from: frame.place(measure.from),
    to: frame.place(measure.to),
    text: shownReading(measure.text, look.unit),
    offset: measure.offset,
    ...(measure.caution === true && { caution: true }),
    ...(look.set.includes(measure.id) && { set: true }),
  });
}

function drawNote(note: Note, frame: Frame, look: Look): Dimensions {
  const at = shift(frame.place(note.at), note.dx, note.dy);
  const text = shownReading(note.text, look.unit);
  const label: Label = { ...at, anchor: note.anchor, kind: note.kind, text };
  if (note.leader === undefined) return { strokes: [], labels: [label] };
  const box = labelBox(label);
  const target = frame.place(note.leader);
  const start = { x: (box.left + box.right) / 2, y: box.top - 3 };
  return {
    strokes: [
      { pen: 'thin', d: open([start, target]) },
      { pen: 'arrow', d: circle(target, 2.6) },
    ],
    labels: [label],
  };
}

/** What stands beside the rows: steps, slanted dimensions and notes. */
function drawBeside(shapes: SectionShapes, frame: Frame, look: Look): Dimensions {
  const parts = [
    ...shapes.steps.map((step) => drawStep(step, frame, look)),
    ...shapes.slanted.map((measure) => drawSlanted(measure, frame, look)),
    ...shapes.notes.map((note) => drawNote(note, frame, look)),
  ];
  return {
    strokes: parts.flatMap((part) => part.strokes),
    labels: parts.flatMap((part) => part.labels),
  };
}

function drawLetters(shapes: SectionShapes, frame: Frame): Label[] {
  return shapes.bodies.map(({ letter, member }) => ({
    ...frame.place(letter.at),
    anchor: 'middle',
    kind: 'letter',
    text: words(letter.text),
    over: member === 'b' ? 'wood-b' : 'wood-a',
  }));
}

function hatchesOf(shapes: SectionShapes): Hatch[] {
  const byName = new Map(
    shapes.bodies.map((body) => [
      hatchName(body),
      { name: hatchName(body), grain: body.grain, angle: body.angle },
    ]),
  );
  return [...byName.values()];
}

/** Room kept for a drawing that is pulled apart, so that the page does not jump. */
interface Room {
  readonly row: number;
  readonly bodyHeight: number;
  readonly above: number;
  readonly below: number;
}

interface Arranged {
  readonly frame: Frame;
  readonly rows: Rows;
  readonly beside: Dimensions;
  readonly nameX: number;
  readonly room: Room;
}

/** Finds the largest scale at which the joint and all its words fit the width. */
function fit(
  shapes: SectionShapes,
  width: number,
  look: Look,
  kept: Room | null,
  row: number,
): Arranged {
  const narrow = width < NARROW;
  const bounds = boundsOf(shapes);
  const [mmWide, mmHigh] = [bounds.right - bounds.left, bounds.bottom - bounds.top];
  const above = kept?.above ?? tiersOf(shapes, 'above');
  const below = kept?.below ?? tiersOf(shapes, 'below');
  const tallest = kept?.bodyHeight ?? (narrow ? TALLEST.narrow : TALLEST.wide);
  const top = 28 + FIRST_ROW + (row - ROW) + Math.max(0, above - 1) * row;

  const attempt = (marginLeft: number, marginRight: number): Arranged => {
    const free = Math.max(30, width - marginLeft - marginRight);
    const scale = Math.min(free / mmWide, tallest / mmHigh, LARGEST_SCALE);
    const bodyHeight = kept?.bodyHeight ?? mmHigh * scale;
    const spare = Math.max(0, free - mmWide * scale) / 2;
    const left = marginLeft + spare;
    const up = top + (bodyHeight - mmHigh * scale) / 2;
    const frame: Frame = {
      scale,
      row,
      place: (p) => ({ x: left + (p.x - bounds.left) * scale, y: up + (p.y - bounds.top) * scale }),
      box: { left, top, right: left + mmWide * scale, bottom: top + bodyHeight },
    };
    const nameX = 2 + spare;
    return {
      frame,
      nameX,
      rows: drawRows(shapes, frame, narrow, look, nameX, kept !== null),
      beside: drawBeside(shapes, frame, look),
      room: { row, bodyHeight, above, below },
    };
  };

  const sides = 10 + (shapes.slanted.some((measure) => measure.offset !== 0) ? 16 : 0);
  let [marginLeft, marginRight] = [sides, sides];
  let best = attempt(marginLeft, marginRight);
  for (let turn = 0; turn < 24; turn++) {
    const boxes = [...best.rows.labels, ...best.beside.labels].map(labelBox);
    const overLeft = Math.max(best.rows.crowding, 2 - Math.min(...boxes.map((b) => b.left)));
    const overRight = Math.max(0, ...boxes.map((b) => b.right)) - (width - 5);
    if (overLeft <= 0.5 && overRight <= 0.5) break;
    marginLeft += Math.max(0, overLeft);
    marginRight += Math.max(0, overRight);
    best = attempt(marginLeft, marginRight);
  }
  return best;
}

function arrangeIn(
  all: SectionShapes,
  width: number,
  look: Look,
  kept: Room | null,
): { sheet: Sheet; room: Room } {
  // A phone has no room for lengths that run off past a break line and limit nothing.
  const shapes =
    width < NARROW ? { ...all, measures: all.measures.filter((m) => m.openAt === undefined) } : all;
  const inline = fit(shapes, width, look, kept, kept?.row ?? ROW);
  const over =
    width < NARROW && kept === null ? fit(shapes, width, look, kept, ROW + NAME_OVER) : inline;
  const best = over.frame.scale > inline.frame.scale * 1.15 ? over : inline;
  const { frame, rows, beside, nameX, room } = best;
  const height = Math.ceil(frame.box.bottom + FIRST_ROW - ROW + room.below * frame.row + 34);
  const unitNote: Label = {
    x: nameX,
    y: height - 12,
    anchor: 'start',
    kind: 'word',
    text: shownReading({ in: 'inches', mm: 'millimeters' }, look.unit),
  };
  return {
    room,
    sheet: {
      width,
      height,
      hatches: hatchesOf(shapes),
      strokes: [
        ...shapes.bodies.flatMap((body) => drawBody(body, frame)),
        ...drawBores(shapes, frame),
        ...drawDowels(shapes, frame),
        ...drawAxes(shapes, frame),
        ...drawMarks(shapes, frame),
        ...rows.strokes,
        ...beside.strokes,
      ],
      labels: [...drawLetters(shapes, frame), ...rows.labels, ...beside.labels, unitNote],
    },
  };
}

/**
 * Lays a section out on a sheet `width` px wide: to scale, with its dimensions in rows that do
 * not cross. `home` is the joint pushed together and `now` as it stands; both take the same
 * height.
 */
export function arrangeSection(
  home: SectionShapes,
  now: SectionShapes,
  width: number,
  look: Look,
): Sheet {
  const together = arrangeIn(home, width, look, null);
  return home === now ? together.sheet : arrangeIn(now, width, look, together.room).sheet;
}
