import { textWidth } from '../drafting/label.ts';
import type { Point } from '../drafting/point.ts';
import type { Unit } from '../drafting/reading.ts';
import type { LayoutShapes, Strip } from './geometry.ts';
import { markText, outerMarks } from './texts.ts';

/** Below this width the joint line runs down the page, as a story stick is read. */
const NARROW = 560;

/** A strip is never thinner than this on the page, in px. */
const THINNEST = 24;

/** How strips lie on the page. */
export interface Frame {
  readonly upright: boolean;
  /** px for a mm along the joint line, and across it. */
  readonly along: number;
  readonly across: number;
  /** Where the joint line begins on the page, in px. */
  readonly origin: number;
  /** Where each strip's reference side lies across, in px, and which way the strip goes from it. */
  readonly strips: readonly { readonly at: number; readonly way: 1 | -1; readonly size: number }[];
  readonly place: (along: number, across: number) => Point;
}

function sizeOf(strip: Strip): number {
  return strip.far.at - strip.near.at;
}

/** The room between two strips: numbers and the running dimension. */
function gapOf(shapes: LayoutShapes, unit: Unit | 'both', upright: boolean): number {
  if (!upright) return 58;
  const widest = Math.max(
    30,
    ...shapes.strips.flatMap((strip) =>
      strip.holes.map((hole) => textWidth(markText(hole.mark, unit), 'number')),
    ),
  );
  return widest + 38;
}

/** Room kept free on either side for numbers, in px. */
export interface Margins {
  readonly left: number;
  readonly right: number;
}

/** Lays the strips on a page `width` px wide, with so much kept free beside them. */
export function frameOf(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  { left, right }: Margins,
): Frame & { height: number } {
  const { strips } = shapes;
  // Three strips side by side leave a phone no room for numbers; a leg's joint is short.
  const upright = width < NARROW && strips.length < 3;
  const gap = gapOf(shapes, unit, upright);
  const start = Math.min(...strips.map((strip) => strip.start.at));
  const end = Math.max(...strips.map((strip) => strip.end.at), start + 1e-3);
  const wide = Math.max(...strips.map(sizeOf), 1e-3);
  const lengthRoom = upright ? 470 : Math.max(60, width - left - right);
  const acrossRoom = upright
    ? (width - left - right - gap * (strips.length - 1)) / strips.length
    : 78;
  const across0 = Math.max(THINNEST, Math.min(acrossRoom, 78)) / wide;
  const along = Math.min(lengthRoom / (end - start), across0);
  const across = Math.min(across0, Math.max(along, THINNEST / wide));
  const used = (end - start) * along;
  const lead = upright ? 58 : left + Math.max(0, lengthRoom - used) / 2;
  const origin = lead - start * along;
  const wideAll =
    strips.reduce((sum, s) => sum + sizeOf(s) * across, 0) + gap * (strips.length - 1);
  let at = upright ? left + Math.max(0, width - left - right - wideAll) / 2 : 66;
  const placed = strips.map((strip, i) => {
    const size = sizeOf(strip) * across;
    const way = i === 0 ? (1 as const) : (-1 as const);
    const place = { at: way === 1 ? at : at + size, way, size };
    at += size + gap;
    return place;
  });
  const place = (a: number, c: number): Point => (upright ? { x: c, y: a } : { x: a, y: c });
  return {
    upright,
    along,
    across,
    origin,
    strips: placed,
    place,
    height: upright ? lead + used + 78 : at - gap + (outerMarks(shapes) ? 96 : 80),
  };
}
