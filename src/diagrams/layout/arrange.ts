import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { type Unit, reading, shownReading, words } from '../drafting/reading.ts';
import { type SetLength, drawAcross, drawChain } from './drawChain.ts';
import { drawOuterRunning, drawRunning } from './drawRunning.ts';
import { drawSigns, drawStrip } from './drawStrip.ts';
import { type Frame, type Margins, frameOf } from './frame.ts';
import type { LayoutShapes } from './geometry.ts';

function drawAll(
  shapes: LayoutShapes,
  frame: Frame,
  unit: Unit | 'both',
  withChain: boolean,
  set: readonly SetLength[],
): { strokes: readonly Stroke[]; labels: readonly Label[] }[] {
  return [
    ...shapes.strips.map((strip, i) => ({
      strokes: drawStrip(strip, i, shapes, frame),
      labels: [],
    })),
    ...shapes.strips.map((strip, i) => drawSigns(strip, i, frame)),
    ...shapes.strips.slice(1).map((_, i) => drawRunning(shapes, i + 1, frame, unit)),
    drawOuterRunning(shapes, frame, unit),
    ...(withChain ? drawChain(shapes, frame, unit, set) : []),
    ...shapes.strips.map((strip, i) => drawAcross(strip, i, frame, unit)),
  ];
}

/** Widens the margins until every number is on the sheet, if it can be. */
function fit(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  withChain: boolean,
  set: readonly SetLength[],
) {
  let margins: Margins = { left: withChain ? 62 : 44, right: 30 };
  for (let turn = 0; ; turn++) {
    const frame = frameOf(shapes, width, unit, margins);
    const parts = drawAll(shapes, frame, unit, withChain, set);
    const boxes = parts.flatMap((part) => part.labels).map(labelBox);
    const overLeft = Math.max(0, 2 - Math.min(...boxes.map((box) => box.left)));
    const overRight = Math.max(0, Math.max(...boxes.map((box) => box.right)) - (width - 2));
    const fits = overLeft <= 0.5 && overRight <= 0.5;
    if (fits || turn === 12) return { frame, parts, fits };
    margins = { left: margins.left + overLeft, right: margins.right + overRight };
  }
}

/**
 * Lays out the row of pins on a sheet `width` px wide. On a phone the joint line runs down the
 * page; where the joint is long for its thickness, the strips are drawn thicker than to scale.
 */
export function arrangeLayout(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  set: readonly SetLength[] = [],
): Sheet {
  const full = fit(shapes, width, unit, true, set);
  // The running dimensions say it all; margin and pitch are there where they have room.
  const { frame, parts } = full.fits ? full : fit(shapes, width, unit, false, set);
  const height = Math.ceil(frame.height);
  const toScale = Math.abs(frame.along - frame.across) < 1e-9;
  const notes = [
    ...(frame.upright ? [reading((length) => `joint ${length(shapes.length)} long`)] : []),
    { in: `inches from ${shapes.datum}`, mm: `millimeters from ${shapes.datum}` },
    ...(toScale ? [] : [words('thickness drawn larger than to scale')]),
  ];
  return {
    width,
    height: height + (notes.length - 1) * 20,
    hatches: [],
    strokes: parts.flatMap((part) => part.strokes),
    labels: [
      ...parts.flatMap((part) => part.labels),
      ...notes.map((text, i): Label => ({
        x: 2,
        y: height - 12 + i * 20,
        anchor: 'start',
        kind: 'word',
        text: shownReading(text, unit),
      })),
    ],
  };
}
