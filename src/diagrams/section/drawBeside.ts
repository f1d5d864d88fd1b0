import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { circle, open } from '../drafting/path.ts';
import { shift } from '../drafting/point.ts';
import { shownReading } from '../drafting/reading.ts';
import { slantedDimension } from '../drafting/slanted.ts';
import type { Frame, Look } from './frame.ts';
import type { Note, SectionShapes, SlantedMeasure, Step } from './shapes.ts';

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
export function drawBeside(shapes: SectionShapes, frame: Frame, look: Look): Dimensions {
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
