import type { Mm } from '../../core/length/mm.ts';
import type { Clamps, SpreadClamps } from '../../core/strength/clamps.ts';
import { type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Hatch, Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { closed } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import {
  type Reading,
  type Unit,
  shownLength,
  shownReading,
  spoken,
  words,
} from '../drafting/reading.ts';

/** Two boards in the clamps, from above. */
export interface ClampedPanel {
  readonly length: Mm;
  /** Width of each board. */
  readonly boardWidth: Mm;
  /** Depth of the caul on either side; 0 without. */
  readonly caul: Mm;
  readonly found: Clamps;
  readonly count: number;
  readonly spread: SpreadClamps;
}

/** Pressed and bare glue line, in mm from the left end. */
export interface GlueLine {
  readonly clamps: readonly number[];
  /** What each clamp presses: it may reach beyond the ends. */
  readonly reaches: readonly (readonly [from: number, to: number])[];
  readonly bare: readonly (readonly [from: number, to: number])[];
}

/** Which parts of the glue line the clamps press, and which none of them does. */
export function glueLine({ length, found, count, spread }: ClampedPanel): GlueLine {
  const clamps = Array.from({ length: count }, (_, i) => spread.fromEnd + i * spread.spacing);
  const reaches = clamps.map((at) => [at - found.reach / 2, at + found.reach / 2] as const);
  const bare: (readonly [number, number])[] = [];
  let pressed = 0;
  for (const [from, to] of reaches) {
    if (from > pressed + 1e-6) bare.push([pressed, from]);
    pressed = Math.max(pressed, to);
  }
  if (pressed < length - 1e-6) bare.push([pressed, length]);
  return { clamps, reaches, bare };
}

/** The panel lies across the page from this width on; on a phone it stands. */
const NARROW = 560;
/** Px: the largest size across and along; a clamp's bar and its jaw. */
const WIDEST = 300;
const LONGEST = 520;
const BAR = 9;
const JAW = 13;

/** Where things lie: along the glue line from the boards' end, across it from the line, in px. */
interface Frame {
  readonly upright: boolean;
  readonly scale: number;
  readonly along: (length: number) => number;
  readonly across: (length: number) => number;
  /** A place on the page, from px along and px across. */
  readonly at: (along: number, across: number) => Point;
}

function frameOf(panel: ClampedPanel, width: number, unit: Unit | 'both') {
  const { length, boardWidth, caul, found, spread } = panel;
  const edge = boardWidth + caul;
  const room = (...values: number[]) =>
    Math.max(...values.map((value) => textWidth(shownLength(value, unit), 'number')));
  const upright = width < NARROW && length > 2 * edge;
  const [before, after] = upright
    ? [52 + room(spread.spacing, spread.fromEnd), 44 + room(found.reach, caul)]
    : [8, 28 + 1.5 * room(boardWidth, caul)];
  const free = width - before - after;
  const scale = upright
    ? Math.min(free / (2 * edge), LONGEST / length)
    : Math.min(free / length, WIDEST / (2 * edge));
  const alongAt = upright ? 40 : before;
  const line = (upright ? before : 100) + edge * scale;
  const frame: Frame = {
    upright,
    scale,
    along: (value) => alongAt + value * scale,
    across: (value) => line + value * scale,
    at: (along, across) => (upright ? { x: across, y: along } : { x: along, y: across }),
  };
  return frame;
}

/**
 * Boards, cauls and clamps from above, to scale, on a sheet `width` px wide: from each clamp's jaws
 * the pressure spreads at 45° to the glue line, in section lines that cross where two clamps press.
 * On a phone the panel stands on its end.
 */
export function arrangePanel(panel: ClampedPanel, width: number, unit: Unit | 'both'): Sheet {
  const { length, boardWidth, caul, found, spread } = panel;
  const { clamps, reaches, bare } = glueLine(panel);
  const frame = frameOf(panel, width, unit);
  const { upright, scale, along: x, across: y, at } = frame;
  const edge = boardWidth + caul;
  const [start, end, line, low, high] = [x(0), x(length), y(0), y(-edge), y(edge)];

  /** Corners of a rectangle, px along and px across. */
  const box = (a0: number, a1: number, c0: number, c1: number): Point[] => [
    at(a0, c0),
    at(a1, c0),
    at(a1, c1),
    at(a0, c1),
  ];
  const board = (pen: Stroke['pen'], from: number, to: number): Stroke => ({
    pen,
    d: closed(box(start, end, y(from), y(to))),
  });
  /** From the jaw at one side to the glue line; cut off at the boards' ends. */
  const cone = (i: number, side: -1 | 1): Stroke => {
    const middle = clamps[i]!;
    const corner = (to: number): Point[] => {
      const inside = Math.min(length, Math.max(0, to));
      const foot = at(x(inside), line);
      // The slope leaves the end of the boards where 45° meets it.
      const off = y(side * (edge - Math.abs(inside - middle)));
      return inside === to ? [foot] : [at(x(inside), off), foot];
    };
    const [from, to] = reaches[i]!;
    return {
      pen: 'thin',
      d: closed([at(x(middle), y(side * edge)), ...corner(to), ...corner(from).toReversed()]),
      hatch: i % 2 === 0 ? 'odd' : 'even',
    };
  };
  const clamp = (where: number, i: number): Stroke[] => {
    const middle = x(where);
    const bar = box(middle - BAR / 2, middle + BAR / 2, low - JAW - 6, high + JAW + 6);
    const jaws = [
      box(middle - 11, middle + 11, low - JAW, low),
      box(middle - 11, middle + 11, high, high + JAW),
    ].map((jaw): Stroke => ({ pen: 'steel', d: closed(jaw) }));
    // What passes below the boards is hidden by them.
    return [...jaws, { pen: i % 2 === 0 ? 'steel' : 'hidden', d: closed(bar) }];
  };
  const strokes: Stroke[] = [
    ...(caul > 0 ? [board('wood-b', -edge, -boardWidth), board('wood-b', boardWidth, edge)] : []),
    board('wood-a', -boardWidth, 0),
    board('wood-b', 0, boardWidth),
    ...clamps.flatMap((_, i) => [cone(i, -1), cone(i, 1)]),
    ...(caul > 0 ? [board('outline', -edge, -boardWidth), board('outline', boardWidth, edge)] : []),
    board('outline', -boardWidth, 0),
    board('outline', 0, boardWidth),
    ...bare.map(([from, to]): Stroke => ({
      pen: 'sign',
      d: closed(box(x(from), x(to), line - 4, line + 4)),
    })),
    ...clamps.flatMap(clamp),
  ];

  const [alongAxis, acrossAxis] = upright ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const beside = upright ? ('before' as const) : ('over' as const);
  const bar = low - JAW - 6;
  const [fromEnd, spacing] = [shownLength(spread.fromEnd, unit), shownLength(spread.spacing, unit)];
  // From the end to the first clamp is half of what follows: said where there is room for both.
  const apart = 0.75 * spread.spacing * scale;
  const wide = textWidth(fromEnd, 'number');
  const bothFit = upright
    ? apart > 24
    : apart > (wide + textWidth(spacing, 'number')) / 2 + 8 &&
      spread.fromEnd * scale > wide - 2 * start;
  const alone = clamps.length < 2;
  const left = bothFit ? 0 : Math.floor((clamps.length - 1) / 2);
  const spaces: Span[] = [
    ...(bothFit || alone
      ? [
          {
            from: { along: start, feature: low },
            to: { along: x(clamps[0]!), feature: bar },
            text: fromEnd,
            outside: beside,
          },
        ]
      : []),
    ...(alone
      ? []
      : [
          {
            from: { along: x(clamps[left]!), feature: bar },
            to: { along: x(clamps[left + 1]!), feature: bar },
            text: spacing,
            outside: beside,
          },
        ]),
  ];
  // Two short spans beside each other would write their numbers on top of one another.
  const [boardText, caulText] = [boardWidth, caul].map((value) =>
    textWidth(shownLength(value, unit), 'number'),
  ) as [number, number];
  const caulInside = caul * scale >= caulText + 10;
  const roomy = upright
    ? boardText <
      boardWidth * scale + (caulInside ? caul * scale - caulText : 2 * caul * scale + 40)
    : ((caul + boardWidth) / 2) * scale > 22;
  const sizes: Span[] = [
    {
      from: { along: line, feature: end },
      to: { along: y(boardWidth), feature: end },
      text: shownLength(boardWidth, unit),
      outside: upright ? 'over' : 'after',
      set: true,
    },
    ...(caul > 0 && roomy
      ? [
          {
            from: { along: y(boardWidth), feature: end },
            to: { along: high, feature: end },
            text: shownLength(caul, unit),
            outside: 'after' as const,
            set: true,
          },
        ]
      : []),
  ];
  const inside = reaches.filter(([from, to]) => from >= 0 && to <= length);
  const whole = inside[Math.floor(inside.length / 2)];
  const widest = Math.max(...sizes.map(({ text }) => textWidth(text, 'number')));
  const rows = [
    dimensionRow(alongAxis, bar - 24, spaces),
    dimensionRow(acrossAxis, end + (upright ? 34 : 16 + widest / 2), sizes),
    ...(whole
      ? [
          dimensionRow(
            alongAxis,
            high +
              JAW +
              (upright ? 12 + textWidth(shownLength(found.reach, unit), 'number') / 2 : 28),
            [
              {
                from: { along: x(whole[0]), feature: line },
                to: { along: x(whole[1]), feature: line },
                text: shownLength(found.reach, unit),
                outside: upright ? 'after' : 'over',
              },
            ],
          ),
        ]
      : []),
  ];
  const below = upright ? end + 78 : high + JAW + 70;
  const word = (top: number, text: Reading, caution = false): Label => ({
    x: 2,
    y: top,
    anchor: 'start',
    kind: 'word',
    text: shownReading(text, unit),
    ...(caution && { caution }),
  });
  const hatches: Hatch[] = [
    { name: 'odd', grain: 'end', angle: 20, metal: true },
    { name: 'even', grain: 'end', angle: -20, metal: true },
  ];
  const letter = (name: 'A' | 'B', side: -1 | 1): Label => ({
    ...at(
      start + 16,
      line + side * Math.max(13, boardWidth * scale - Math.min(18, (boardWidth * scale) / 2)),
    ),
    anchor: 'middle',
    kind: 'letter',
    text: words(name),
    over: name === 'A' ? 'wood-a' : 'wood-b',
  });
  return {
    width,
    height: below + (whole ? 34 : 56),
    hatches,
    strokes: [...strokes, ...rows.flatMap((row) => row.strokes)],
    labels: [
      word(13, words('clamps in turn above and below')),
      letter('A', -1),
      letter('B', 1),
      ...rows.flatMap((row) => row.labels),
      bare.length > 0
        ? word(below, words('bare glue line: no clamp presses here'), true)
        : word(below, words('the whole glue line is pressed')),
      word(below + 22, { in: 'inches, to scale', mm: 'millimeters, to scale' }),
      ...(whole ? [] : [word(below + 44, words('each clamp reaches beyond an end'))]),
    ],
  };
}

/** The drawing in sentences. */
export function describePanel(panel: ClampedPanel, unit: Unit): string {
  const { boardWidth, caul, found, count, spread } = panel;
  const say = spoken(unit);
  const over = caul > 0 ? `a caul of ${say(caul)} and ` : '';
  const bare =
    spread.gap > 0
      ? ` Between two of them ${say(spread.gap)} of the glue line is bare.`
      : ' Their reaches meet, so that none of the glue line is bare.';
  return `${count} clamp${count === 1 ? '' : 's'} on a panel ${say(panel.length)} long, ${say(spread.spacing)} apart and ${say(spread.fromEnd)} from the ends, in turn above and below. The pressure spreads at 45° through ${over}${say(boardWidth)} of board, so each presses ${say(found.reach)} of the glue line.${bare} Wider boards and deeper cauls reach farther.`;
}
