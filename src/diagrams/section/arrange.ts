import type { Dimensions } from '../drafting/dimension.ts';
import type { Sheet } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { shownReading } from '../drafting/reading.ts';
import { drawBeside } from './drawBeside.ts';
import {
  drawAxes,
  drawBody,
  drawBores,
  drawDowels,
  drawLetters,
  drawMarks,
  hatchesOf,
} from './drawJoint.ts';
import { type Rows, drawRows, NAME_OVER } from './drawRows.ts';
import { type Frame, type Look, boundsOf, FIRST_ROW, ROW, tiersOf } from './frame.ts';
import type { SectionShapes } from './shapes.ts';

/** Below this width a drawing uses its short words. */
const NARROW = 520;

const TALLEST = { narrow: 300, wide: 420 } as const;

const LARGEST_SCALE = 11;

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
  largest: number,
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
    const scale = Math.min(free / mmWide, tallest / mmHigh, largest);
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
  largest: number,
): { sheet: Sheet; room: Room; scale: number } {
  // A phone has no room for lengths that run off past a break line and limit nothing.
  const shapes =
    width < NARROW ? { ...all, measures: all.measures.filter((m) => m.openAt === undefined) } : all;
  const inline = fit(shapes, width, look, kept, kept?.row ?? ROW, largest);
  const over =
    width < NARROW && kept === null
      ? fit(shapes, width, look, kept, ROW + NAME_OVER, largest)
      : inline;
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
    scale: frame.scale,
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
 * height. `largest` is the most px for a mm.
 */
export function arrangeSection(
  home: SectionShapes,
  now: SectionShapes,
  width: number,
  look: Look,
  largest = LARGEST_SCALE,
): Sheet {
  const together = arrangeIn(home, width, look, null, largest);
  return home === now ? together.sheet : arrangeIn(now, width, look, together.room, largest).sheet;
}

/** The px for a mm that a section has on a sheet `width` px wide where nothing holds it smaller. */
export function scaleOfSection(shapes: SectionShapes, width: number, look: Look): number {
  return arrangeIn(shapes, width, look, null, LARGEST_SCALE).scale;
}
