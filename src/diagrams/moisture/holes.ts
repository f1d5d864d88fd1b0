import type { Mm } from '../../core/length/mm.ts';
import type { HoleAndPin } from '../../core/moisture/holeAndPin.ts';
import { dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Reading, type Unit, shownReading, words } from '../drafting/reading.ts';
import { fine, spokenFine } from './fine.ts';

/** A season that the calculator could work out. */
export type Season = Extract<HoleAndPin, { ok: true }>;

/** A hole and its pin to be drawn. */
export interface Magnified {
  readonly letter: 'A' | 'B';
  /** What the hole is drilled into. */
  readonly surface: 'face' | 'end';
  readonly sawn: 'flat' | 'quarter';
  readonly season: Season;
}

/** How much larger than to scale every difference from the hole as drilled is drawn. */
export const MAGNIFIED = 10;

/** Half the side of the wood that is shown, px. */
const HALF = 98;
/** The hole as drilled, px; less where something has grown beyond the wood that is shown. */
const LARGEST_RADIUS = 58;

/** A level and an upright width, mm. */
interface Ellipse {
  readonly level: Mm;
  readonly upright: Mm;
}

/** Hole and pin as they lie on the page. */
export interface MagnifiedShapes {
  readonly hole: Ellipse;
  /** The pin turned so that it has least room, and a quarter turn on. */
  readonly tight: Ellipse;
  readonly turned: Ellipse;
}

/**
 * How hole and pin lie: the grain of a face runs level; the rings of a flat-sawn end lie level,
 * those of a quarter-sawn one stand.
 */
export function magnifiedShapes({ surface, sawn, season }: Magnified): MagnifiedShapes {
  const [first, second] = season.hole;
  const hole =
    surface === 'face' || sawn === 'quarter'
      ? { level: first.width, upright: second.width }
      : { level: second.width, upright: first.width };
  const [least, greatest] = season.pin.map(({ width }) => width).toSorted((x, y) => x - y) as [
    Mm,
    Mm,
  ];
  const standing = { level: least, upright: greatest };
  const lying = { level: greatest, upright: least };
  return hole.level < hole.upright
    ? { hole, tight: lying, turned: standing }
    : { hole, tight: standing, turned: lying };
}

/** A width as drawn against the hole as drilled: differences are magnified. */
function drawn(width: number, drilled: number): number {
  return Math.max(0.15, 1 + MAGNIFIED * (width / drilled - 1));
}

function ellipse(center: Point, across: number, up: number): string {
  const corners = Array.from({ length: 72 }, (_, i) => {
    const angle = (i / 36) * Math.PI;
    return { x: center.x + across * Math.cos(angle), y: center.y + up * Math.sin(angle) };
  });
  return closed(corners);
}

interface Panel {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

const PANEL = { width: 280, height: 342 } as const;

function drawPanel(
  one: Magnified,
  drilled: Mm,
  radius: number,
  corner: Point,
  unit: Unit | 'both',
): Panel {
  const { hole, tight, turned } = magnifiedShapes(one);
  const { least, greatest } = one.season.clearance;
  const center = { x: corner.x + 4 + HALF, y: corner.y + 30 + HALF };
  const show = (text: Reading) => shownReading(text, unit);
  const around = ({ level, upright }: Ellipse) =>
    ellipse(center, radius * drawn(level, drilled), radius * drawn(upright, drilled));
  const [level, upright] = [
    radius * drawn(hole.level, drilled),
    radius * drawn(hole.upright, drilled),
  ];
  const tightNow = least < 0;
  const line = corner.y + 30 + 2 * HALF;
  const sizes = [
    dimensionRow('x', line + 20, [
      {
        from: { along: center.x - level, feature: center.y },
        to: { along: center.x + level, feature: center.y },
        text: show(fine(hole.level)),
        outside: 'after',
      },
    ]),
    dimensionRow('y', center.x + HALF + 32, [
      {
        from: { along: center.y - upright, feature: center.x },
        to: { along: center.y + upright, feature: center.x },
        text: show(fine(hole.upright)),
        outside: 'after',
      },
    ]),
  ];
  const [low, high] = [fine(least), fine(greatest)];
  const says = (a: string, b: string) => (a === b ? `clearance ${a}` : `clearance ${a} to ${b}`);
  return {
    strokes: [
      {
        pen: one.letter === 'A' ? 'wood-a' : 'wood-b',
        d: closed([
          { x: center.x - HALF, y: center.y - HALF },
          { x: center.x + HALF, y: center.y - HALF },
          { x: center.x + HALF, y: center.y + HALF },
          { x: center.x - HALF, y: center.y + HALF },
        ]),
        hatch: one.surface,
      },
      { pen: 'hole', d: around(hole) },
      { pen: 'pin', d: around(tight) },
      { pen: 'outline', d: around(hole) },
      { pen: tightNow ? 'phantom' : 'hidden', d: around(tightNow ? tight : turned) },
      {
        pen: 'center',
        d:
          open([
            { x: center.x - 12, y: center.y },
            { x: center.x + 12, y: center.y },
          ]) +
          open([
            { x: center.x, y: center.y - 12 },
            { x: center.x, y: center.y + 12 },
          ]),
      },
      ...sizes.flatMap((row) => row.strokes),
    ],
    labels: [
      {
        x: corner.x + 4,
        y: corner.y + 13,
        anchor: 'start',
        kind: 'letter',
        text: words(one.letter),
      },
      {
        x: corner.x + 30,
        y: corner.y + 14,
        anchor: 'start',
        kind: 'word',
        text: words(`hole in ${one.surface === 'end' ? 'an end' : 'a face'}`),
      },
      ...sizes.flatMap((row) => row.labels),
      {
        x: corner.x + 4,
        y: line + 52,
        anchor: 'start',
        kind: 'number',
        text: show({ in: says(low.in, high.in), mm: says(low.mm, high.mm) }),
        ...(tightNow && { caution: true }),
      },
      ...(tightNow
        ? [
            {
              x: corner.x + 4,
              y: line + 74,
              anchor: 'start',
              kind: 'word',
              text: words(greatest < 0 ? 'the pin is tight' : 'tight, if turned that way'),
              caution: true,
            } as const,
          ]
        : []),
    ],
  };
}

/**
 * Holes and their pins in the new season, magnified, on a sheet `width` px wide: side by side
 * where there is room.
 * @param drilled the holes' diameter when they were drilled
 */
export function arrangeHoles(
  all: readonly Magnified[],
  drilled: Mm,
  width: number,
  unit: Unit | 'both',
): Sheet {
  const beside = width >= PANEL.width * all.length;
  const largest = Math.max(
    ...all.flatMap((one) =>
      Object.values(magnifiedShapes(one)).flatMap(({ level, upright }: Ellipse) => [
        drawn(level, drilled),
        drawn(upright, drilled),
      ]),
    ),
  );
  const radius = Math.min(LARGEST_RADIUS, (HALF - 6) / largest);
  const panels = all.map((one, i) =>
    drawPanel(
      one,
      drilled,
      radius,
      beside ? { x: (width / all.length) * i, y: 0 } : { x: 0, y: PANEL.height * i },
      unit,
    ),
  );
  const height = PANEL.height * (beside ? 1 : all.length);
  const notes = [
    { in: 'inches', mm: 'millimeters' },
    words(`differences drawn ${MAGNIFIED} times as large`),
  ];
  return {
    width,
    height: height + 14 + 20 * notes.length,
    hatches: [
      { name: 'face', grain: 'long', angle: 0 },
      { name: 'end', grain: 'end', angle: 45 },
    ],
    strokes: panels.flatMap((panel) => panel.strokes),
    labels: [
      ...panels.flatMap((panel) => panel.labels),
      ...notes.map((text, i): Label => ({
        x: 4,
        y: height + 10 + 20 * i,
        anchor: 'start',
        kind: 'word',
        text: shownReading(text, unit),
      })),
    ],
  };
}

/** Holes and pins in sentences. */
export function describeHoles(all: readonly Magnified[], unit: Unit): string {
  const say = (length: number) => spokenFine(length, unit);
  const one = ({ letter, surface, season }: Magnified) => {
    const { hole, pin, clearance } = season;
    const widths = (list: Season['hole']) =>
      list.map(({ width, direction }) => `${say(width)} ${direction}`).join(' and ');
    return `The hole in ${letter}'s ${surface} is ${widths(hole)}, its pin ${widths(pin)}: clearance from ${say(clearance.least)} to ${say(clearance.greatest)}, as the pin is turned.`;
  };
  return `${all.map(one).join(' ')} In a damper season a hole in an end swells with its pin, but a hole in a face keeps its width along the grain while the pin swells in it.`;
}
