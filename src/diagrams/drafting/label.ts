import type { Box } from './point.ts';
import type { Reading } from './reading.ts';

/** Sizes of letters on a drawing, in px. Numbers are read at arm's length. */
export const NUMBER_SIZE = 17;
export const WORD_SIZE = 15;
export const LETTER_SIZE = 22;

export type LabelKind = 'number' | 'word' | 'letter';

/** A text on a drawing; `x` is its anchor and `y` the middle of its height, in px. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly kind: LabelKind;
  readonly text: Reading;
  /** What a letter stands on, so that section lines keep clear of it. */
  readonly over?: 'wood-a' | 'wood-b';
  /** The reader sets this value: drawn in the accent, and bold. */
  readonly set?: boolean;
  /** Something is wrong here: drawn in the color of cautions; its words say so too. */
  readonly caution?: boolean;
}

/** Widths in ems, a little on the wide side of the workbook's face and of what stands in for it. */
function glyphWidth(glyph: string): number {
  if (/[\s.,'’:]/.test(glyph)) return 0.3;
  if (/[/()1ijlt|]/.test(glyph)) return 0.42;
  if (/[0-9A-Z≈×−Øm]/.test(glyph)) return 0.66;
  return 0.54;
}

/** A drawing tries its labels in many places, and all are written in a few dozen glyphs. */
const widths = new Map<string, number>();

function ems(line: string): number {
  let sum = 0;
  for (const glyph of line) {
    let width = widths.get(glyph);
    if (width === undefined) widths.set(glyph, (width = glyphWidth(glyph)));
    sum += width;
  }
  return sum;
}

export function sizeOf(kind: LabelKind): number {
  return kind === 'number' ? NUMBER_SIZE : kind === 'word' ? WORD_SIZE : LETTER_SIZE;
}

/** Room that a text takes, in px: the wider of its two units. */
export function textWidth(text: Reading, kind: LabelKind): number {
  return Math.max(ems(text.in), ems(text.mm)) * sizeOf(kind);
}

/** The room that a label takes on the drawing, in px. */
export function labelBox(label: Label): Box {
  const width = textWidth(label.text, label.kind);
  const height = sizeOf(label.kind);
  const left =
    label.anchor === 'start'
      ? label.x
      : label.anchor === 'end'
        ? label.x - width
        : label.x - width / 2;
  return {
    left,
    right: left + width,
    top: label.y - height / 2,
    bottom: label.y + height / 2,
  };
}
