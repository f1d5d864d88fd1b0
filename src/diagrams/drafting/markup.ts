import type { Pen, Stroke } from './ink.ts';
import { type Label, sizeOf } from './label.ts';
import type { Unit } from './reading.ts';

const SIGNS: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

const escaped = (text: string) => text.replace(/[&<>"]/g, (sign) => SIGNS[sign]!);
const tenths = (value: number) => Math.round(value * 10) / 10;
const classes = (...names: readonly (string | false | undefined)[]) =>
  escaped(names.filter(Boolean).join(' '));

const LINES: ReadonlySet<Pen> = new Set(['outline', 'hidden', 'thin', 'center', 'grain', 'mark']);

/** Lines of one kind that follow each other, as one path: the same picture from fewer elements. */
function joined(strokes: readonly Stroke[]): readonly Stroke[] {
  const paths: Stroke[] = [];
  for (const stroke of strokes) {
    const before = paths.at(-1);
    const alike =
      before?.pen === stroke.pen &&
      LINES.has(stroke.pen) &&
      !before.set === !stroke.set &&
      !before.caution === !stroke.caution;
    if (alike && !before.hatch && !stroke.hatch)
      paths[paths.length - 1] = { ...before, d: before.d + stroke.d };
    else paths.push(stroke);
  }
  return paths;
}

/**
 * The SVG of strokes, each filled with its hatching where it has one. Written as one text: a
 * drawing has hundreds of elements, and a browser reads them sooner than a script sets them.
 * @param patterns what the ids of the drawing's hatchings begin with
 */
export function strokeMarkup(strokes: readonly Stroke[], patterns: string): string {
  return joined(strokes)
    .map(({ pen, d, set, caution, hatch }) => {
      const path = escaped(d);
      const line = `<path class="${classes(pen, set && 'set', caution && 'warn')}" d="${path}"/>`;
      if (hatch === undefined) return line;
      return `${line}<path d="${path}" fill="url(#${escaped(`${patterns}-${hatch}`)})"/>`;
    })
    .join('');
}

/** The SVG of labels: a text for each unit shown, or one where both units say the same. */
export function labelMarkup(labels: readonly Label[], shown: readonly Unit[]): string {
  return labels
    .flatMap((label) => {
      const { kind, x, y, anchor, over, set, caution, text } = label;
      const size = sizeOf(kind);
      const write = (words: string, unit: Unit | undefined) =>
        `<text class="${classes(kind, unit, over && `over-${over}`, set && 'set', caution && 'warn')}"` +
        ` x="${tenths(x)}" y="${tenths(y + size * 0.35)}" font-size="${size}"` +
        ` text-anchor="${anchor}">${escaped(words)}</text>`;
      return text.in === text.mm
        ? write(text.in, undefined)
        : shown.map((unit) => write(text[unit], unit));
    })
    .join('');
}
