import type { Mm } from '../../core/length/mm.ts';
import { arrowAt, dimensionRow } from '../drafting/dimension.ts';
import type { Hatch, Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { breakLine } from '../drafting/breakLine.ts';
import { closed, open } from '../drafting/path.ts';
import { rectangle } from '../drafting/point.ts';
import { type Unit, shownLength, shownReading, spoken, words } from '../drafting/reading.ts';

/** A pin in the wood that holds it. */
export interface PinSpecimen {
  readonly kind: 'pull' | 'corner';
  readonly diameter: Mm;
  /** Length of the pin in the wood. */
  readonly depth: Mm;
  readonly grooved: boolean;
  /** The grain that the hole goes into; particleboard has none. */
  readonly grain: 'end' | 'side' | 'none';
}

/** A rail's end with its two pins. */
export interface FrameSpecimen {
  readonly kind: 'frame';
  readonly diameter: Mm;
  readonly depth: Mm;
  readonly grooved: boolean;
  readonly spacing: Mm;
  readonly edgeDistance: Mm;
}

export type Specimen = PinSpecimen | FrameSpecimen;

/** What is compared: its name, and how many times the first the second is. */
export interface Compared {
  readonly name: string;
  readonly ratio: number;
}

/** Height of a specimen, px. */
const DRAWN = 190;
/** From this width the bars stand beside the specimens. */
const WIDE = 560;
/** A bar and its line, and what one comparison takes in all, px. */
const BAR = 26;
const COMPARISON = 88;
const STUB = 26;

interface Part {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

function grooves(left: number, right: number, top: number, bottom: number, level: boolean): string {
  return [0.25, 0.5, 0.75]
    .map((part) =>
      level
        ? open([
            { x: left, y: top + (bottom - top) * part },
            { x: right, y: top + (bottom - top) * part },
          ])
        : open([
            { x: left + (right - left) * part, y: top },
            { x: left + (right - left) * part, y: bottom },
          ]),
    )
    .join('');
}

/** A pin pulled out of its wood, or bent in a case's face, cut along its axis. */
function drawPin(
  one: PinSpecimen,
  scale: number,
  left: number,
  top: number,
  gap: number,
  unit: Unit | 'both',
): Part {
  const face = top + 46;
  const half = (one.diameter / 2) * scale;
  const middle = left + 40;
  const wide = Math.max(34, half * 1.7);
  const end = face + one.depth * scale;
  const bottom = top + DRAWN + 6;
  const [l, r] = [middle - wide, middle + wide];
  const low = breakLine({ x: r, y: bottom }, { x: l, y: bottom });
  const rightSide = breakLine({ x: r, y: face }, { x: r, y: bottom });
  const leftSide = breakLine({ x: l, y: bottom }, { x: l, y: face });
  const pin = rectangle(middle - half, middle + half, face - STUB, end);
  const depth = dimensionRow('y', r + gap, [
    {
      from: { along: face, feature: r },
      to: { along: end, feature: middle + half },
      text: shownLength(one.depth, unit),
      outside: 'after',
    },
  ]);
  const pulled = one.kind === 'pull';
  const arrowTip = { x: middle, y: top + 2 };
  return {
    strokes: [
      {
        pen: 'wood-b',
        d: closed([{ x: l, y: face }, ...rightSide, ...low, ...leftSide]),
        ...(one.grain !== 'none' && { hatch: one.grain === 'end' ? 'upright' : 'along' }),
      },
      { pen: 'thin', d: open([...rightSide, ...low, ...leftSide, { x: l, y: face }]) },
      {
        pen: 'outline',
        d: open([
          { x: l, y: face },
          { x: r, y: face },
        ]),
      },
      { pen: 'pin', d: closed(pin) },
      ...(one.grooved
        ? [
            {
              pen: 'thin',
              d: grooves(middle - half, middle + half, face - STUB, end, false),
            } as const,
          ]
        : []),
      ...(pulled
        ? ([
            { pen: 'thin', d: open([{ x: middle, y: face - STUB }, arrowTip]) },
            { pen: 'arrow', d: arrowAt(arrowTip, 0, -1) },
          ] as const)
        : []),
      ...depth.strokes,
    ],
    labels: depth.labels,
  };
}

/** A rail's end with two pins, from the front. */
function drawFrame(
  one: FrameSpecimen,
  scale: number,
  left: number,
  top: number,
  gap: number,
  unit: Unit | 'both',
): Part {
  const half = (one.diameter / 2) * scale;
  const edge = one.edgeDistance * scale;
  const first = top + 10 + edge;
  const second = first + one.spacing * scale;
  const bottom = second + edge;
  const end = left + 26;
  const far = left + 56;
  const break_ = breakLine({ x: far, y: first - edge }, { x: far, y: bottom });
  const row = dimensionRow('y', far + gap, [
    {
      from: { along: first, feature: end },
      to: { along: second, feature: end },
      text: shownLength(one.spacing, unit),
      outside: 'after',
    },
    {
      from: { along: second, feature: end },
      to: { along: bottom, feature: far },
      text: shownLength(one.edgeDistance, unit),
      outside: 'after',
    },
  ]);
  const length = Math.min(24, one.depth * scale);
  return {
    strokes: [
      {
        pen: 'wood-a',
        d: closed([
          { x: end, y: first - edge },
          ...break_,
          { x: far, y: bottom },
          { x: end, y: bottom },
        ]),
        hatch: 'along',
      },
      {
        pen: 'outline',
        d: open([
          { x: far, y: first - edge },
          { x: end, y: first - edge },
          { x: end, y: bottom },
          { x: far, y: bottom },
        ]),
      },
      { pen: 'thin', d: open([...break_, { x: far, y: bottom }]) },
      ...[first, second].flatMap((y): Stroke[] => [
        { pen: 'pin', d: closed(rectangle(end - length, end, y - half, y + half)) },
        ...(one.grooved
          ? [{ pen: 'thin', d: grooves(end - length, end, y - half, y + half, true) } as const]
          : []),
      ]),
      ...row.strokes,
    ],
    labels: row.labels,
  };
}

/** One scale for both, so that they can be compared by eye. */
export function scaleFor(all: readonly Specimen[]): number {
  return Math.min(
    4,
    ...all.map((one) =>
      one.kind === 'frame'
        ? (DRAWN - 20) / (one.spacing + 2 * one.edgeDistance)
        : Math.min((DRAWN - 66) / one.depth, 40 / one.diameter),
    ),
  );
}

/** A ratio as it is written: '1.24 times', and '1' for the first. */
function times(ratio: number): string {
  return ratio === 1 ? '1' : ratio.toFixed(2);
}

/** How many times the first the second is, as bars from `left` to `right`, each comparison under the last. */
function drawBars(compared: readonly Compared[], left: number, right: number, top: number): Part {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const most = Math.max(1, ...compared.map(({ ratio }) => ratio));
  const from = left + 62;
  const room = right - from - 14 - textWidth(words('10.00'), 'number');
  compared.forEach(({ name, ratio }, k) => {
    const y = top + k * COMPARISON;
    labels.push({ x: left, y, anchor: 'start', kind: 'word', text: words(name) });
    [1, ratio].forEach((value, i) => {
      const high = y + 14 + i * BAR;
      const end = from + (room * value) / most;
      const box = rectangle(from, end, high, high + 18);
      strokes.push({ pen: i === 0 ? 'wood-b' : 'pin', d: closed(box) });
      strokes.push({ pen: 'outline', d: closed(box) });
      labels.push(
        {
          x: left,
          y: high + 9,
          anchor: 'start',
          kind: 'word',
          text: words(i === 0 ? 'first' : 'second'),
        },
        { x: end + 7, y: high + 9, anchor: 'start', kind: 'number', text: words(times(value)) },
      );
    });
  });
  return { strokes, labels };
}

/**
 * Two joints side by side at one scale, and beside or, on a phone, under them how many times the first the second is,
 * as bars. No force is ever shown.
 */
export function arrangeSpecimens(
  [first, second]: readonly [Specimen, Specimen],
  compared: readonly Compared[],
  width: number,
  unit: Unit | 'both',
): Sheet {
  const scale = scaleFor([first, second]);
  const wide = width >= WIDE;
  const column = Math.min(wide ? 0.27 * width : width / 2, 240);
  // From the wood to the numbers beside it.
  const gap = width < 340 ? 20 : 36;
  const parts = ([first, second] as const).map((one, i) =>
    one.kind === 'frame'
      ? drawFrame(one, scale, column * i, 30, gap + 4, unit)
      : drawPin(one, scale, column * i, 30, gap, unit),
  );
  const strokes: Stroke[] = parts.flatMap((part) => part.strokes);
  const labels: Label[] = parts.flatMap((part) => part.labels);
  ['first', 'second'].forEach((name, i) =>
    labels.push({ x: column * i + 2, y: 13, anchor: 'start', kind: 'word', text: words(name) }),
  );
  const foot = 30 + DRAWN + 34;
  const tall = compared.length * COMPARISON;
  // Beside the specimens, halfway down them.
  const top = wide ? Math.max(22, 30 + (DRAWN - tall) / 2) : foot;
  const below = Math.max(foot, top + tall);
  const bars = drawBars(compared, wide ? 2 * column + 24 : 2, width, top);
  strokes.push(...bars.strokes);
  labels.push(...bars.labels);
  const hatches: Hatch[] = [
    { name: 'along', grain: 'long', angle: 0 },
    { name: 'upright', grain: 'long', angle: 90 },
  ];
  labels.push({
    x: 2,
    y: below,
    anchor: 'start',
    kind: 'word',
    text: shownReading({ in: 'inches; ratios only', mm: 'millimeters; ratios only' }, unit),
  });
  return { width, height: below + 16, strokes, labels, hatches };
}

/** The comparison in sentences. */
export function describeSpecimens(
  pair: readonly [Specimen, Specimen],
  compared: readonly Compared[],
  unit: Unit,
): string {
  const say = spoken(unit);
  const one = (name: string, specimen: Specimen) => {
    const pin = `${specimen.grooved ? 'a grooved' : 'a plain'} pin ${say(specimen.diameter)} thick, ${say(specimen.depth)} in the wood`;
    return specimen.kind === 'frame'
      ? `${name}: two of ${pin}, ${say(specimen.spacing)} apart, the lower ${say(specimen.edgeDistance)} from the rail's edge.`
      : `${name}: ${pin}${specimen.grain === 'none' ? '' : `, in ${specimen.grain} grain`}.`;
  };
  const outcome = compared
    .map(({ name, ratio }) => `${name}: the second is ${ratio.toFixed(2)} times the first.`)
    .join(' ');
  return `${one('First', pair[0])} ${one('Second', pair[1])} ${outcome} A comparison for learning, not a rating.`;
}
