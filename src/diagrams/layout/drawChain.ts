import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import { NUMBER_SIZE } from '../drafting/label.ts';
import { type Unit, reading, shownReading } from '../drafting/reading.ts';
import type { Frame } from './frame.ts';
import type { LayoutShapes, Strip } from './geometry.ts';
import { chainLine, chainText, markText, outerMarks } from './texts.ts';

/** Which of its lengths the reader sets. */
export type SetLength = 'margin' | 'pitch' | 'length';

/** End margin and pitch beside A, the joint's length beside the last strip. */
export function drawChain(
  shapes: LayoutShapes,
  frame: Frame,
  unit: Unit | 'both',
  set: readonly SetLength[],
): Dimensions[] {
  const axis = frame.upright ? 'y' : 'x';
  const outside = frame.upright ? ('before' as const) : ('over' as const);
  const a = frame.strips[0]!;
  const last = frame.strips.at(-1)!;
  const at = (along: number) => frame.origin + along * frame.along;
  const end = (along: number, feature: number) => ({ along: at(along), feature });
  const show = (write: (length: (mm: number) => string) => string) =>
    shownReading(reading(write), unit);
  const positions = shapes.strips[0]!.holes.map((hole) => hole.along);
  const [first, final] = [positions[0], positions.at(-1)];
  // Down the page one pitch is enough; across it the whole row with its count.
  const chainEnd = frame.upright ? (positions[1] ?? 0) : (final ?? 0);
  // Two numbers beside short lengths down the page would stand on each other.
  const roomy = !frame.upright || ((first ?? 0) + shapes.pitch) * frame.along > 2.3 * NUMBER_SIZE;
  const texts = chainText(shapes, unit, frame.upright);
  const chain =
    first === undefined || final === undefined
      ? []
      : [
          {
            from: end(0, a.at),
            to: end(first, a.at),
            text: show((length) => length(first)),
            outside: 'before' as const,
            set: set.includes('margin'),
          },
          ...(final > first && roomy
            ? [
                {
                  from: end(first, a.at),
                  to: end(chainEnd, a.at),
                  text: texts,
                  outside,
                  set: set.includes('pitch'),
                },
              ]
            : []),
        ];
  const beside = dimensionRow(axis, a.at - (frame.upright ? chainLine(shapes, unit) : 34), chain);
  if (frame.upright || outerMarks(shapes) !== null) return [beside];
  return [
    beside,
    dimensionRow('x', last.at + 30, [
      {
        from: end(0, last.at),
        to: end(shapes.length, last.at),
        text: markText(shapes.length, unit),
        outside: 'over',
        set: set.includes('length'),
      },
    ]),
  ];
}

/** How far the row lies from the reference face or end, past the end of each strip. */
export function drawAcross(strip: Strip, i: number, frame: Frame, unit: Unit | 'both'): Dimensions {
  const { at, way } = frame.strips[i]!;
  const row = at + way * (strip.across - strip.near.at) * frame.across;
  const feature = frame.origin + strip.end.at * frame.along;
  const [low, high] = way === 1 ? [at, row] : [row, at];
  const open = strip.near.whole ? undefined : way === 1 ? 'from' : 'to';
  const text = shownReading(
    reading((length) => length(strip.across)),
    unit,
  );
  return dimensionRow(frame.upright ? 'x' : 'y', feature + 22, [
    {
      from: { along: low, feature: open === 'from' ? null : feature },
      to: { along: high, feature: open === 'to' ? null : feature },
      text,
      outside: 'after',
      ...(open && { openAt: open }),
    },
  ]);
}
