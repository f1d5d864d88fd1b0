import { breakLine } from '../drafting/breakLine.ts';
import { arrowAt } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import { words } from '../drafting/reading.ts';
import { type RuleDivision, finestStep } from './division.ts';
import { type MarkedRule, type Stretch, stretchOf, ticksOf } from './geometry.ts';

/** Px: height of the rule, of its longest mark, and how far down its numbers stand. */
export const RULE_HEIGHT = 70;
const TALLEST = 44;
const NUMBER_DOWN = 57;
/** Steel that is drawn past the last mark, where the rule goes on: room for half of its number, px. */
export const PAST = 26;
/** The pointer over the rule; from the rule down to the words under it, px. */
const POINTER = 34;
const LEGEND_DOWN = 17;

/** What is written under a rule: its unit and its finest marks. */
function ruleWords(division: RuleDivision): string {
  if (division.unit === 'in') return `inches, ${division.denominator} marks to the inch`;
  return `marks ${division.step} mm apart`;
}

/** A stretch of rule laid on the sheet. */
export interface LaidRule {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** x of a place on the rule, from its zero in mm; on the middle of a pixel where a mark is. */
  readonly x: (place: number) => number;
  /** Where the steel begins on the sheet, px. */
  readonly left: number;
}

/** Clear of marks at a break line, px. */
const CLEAR_OF_BREAK = 8;

/**
 * Lays a stretch of rule with its reading edge at `top` and its first mark at `left`, in px.
 * @param end where the steel really ends, from zero in mm, if that is in the stretch
 */
export function layRule(
  division: RuleDivision,
  stretch: Stretch,
  left: number,
  top: number,
  end: number | null,
): LaidRule {
  const { first, last, pitch } = stretch;
  const step = finestStep(division);
  const origin = Math.round(left) + 0.5;
  const x = (place: number) => origin + (place / step - first) * pitch;
  const bottom = top + RULE_HEIGHT;
  const steelLeft = end === null ? x(first * step) - PAST : x(end);
  const right = x(last * step) + PAST;
  // The marks go on where the rule does, up to its break line.
  const more = Math.floor((PAST - CLEAR_OF_BREAK) / pitch);
  const ticks = ticksOf(division, end === null ? first - more : first, last + more).filter(
    ({ count }) => x(count * step) >= steelLeft - 0.01,
  );
  const [leftTop, leftBottom, rightTop, rightBottom] = [
    { x: steelLeft, y: top },
    { x: steelLeft, y: bottom },
    { x: right, y: top },
    { x: right, y: bottom },
  ];
  const rightLine = breakLine(rightTop, rightBottom);
  const leftLine = end === null ? breakLine(leftBottom, leftTop) : [leftBottom];
  const marks = (pen: 'thin' | 'mark', longest: boolean): Stroke => ({
    pen,
    d: ticks
      .filter(({ tall }) => (tall === 1) === longest)
      .map(({ count, tall }) => {
        const at = x(count * step);
        return open([
          { x: at, y: top },
          { x: at, y: top + TALLEST * tall },
        ]);
      })
      .join(''),
  });
  return {
    x,
    left: steelLeft,
    strokes: [
      { pen: 'hole', d: closed([leftTop, ...rightLine, rightBottom, ...leftLine]) },
      marks('thin', false),
      marks('mark', true),
      { pen: 'thin', d: open([...rightLine, rightBottom]) },
      ...(end === null ? [{ pen: 'thin', d: open([...leftLine, leftTop]) } as const] : []),
      {
        pen: 'outline',
        d:
          end === null
            ? `${open([leftTop, rightTop])}${open([leftBottom, rightBottom])}`
            : open([rightTop, leftTop, leftBottom, rightBottom]),
      },
    ],
    labels: ticks.flatMap(({ count, number }): Label[] =>
      number === null || count < first || count > last
        ? []
        : [
            {
              x: x(count * step),
              y: top + NUMBER_DOWN,
              anchor: 'middle',
              kind: 'number',
              text: words(number),
            },
          ],
    ),
  };
}

/** The line that meets the rule's edge from above, with an arrowhead. */
function pointerAt(x: number, top: number, height: number): readonly Stroke[] {
  return [
    {
      pen: 'mark',
      d: open([
        { x, y: top - height },
        { x, y: top - 6 },
      ]),
    },
    { pen: 'arrow', d: arrowAt({ x, y: top }, 0, 1) },
  ];
}

/** What is written under a rule that begins at `left`. */
export function legendOf(division: RuleDivision, left: number, ruleTop: number): Label {
  const y = ruleTop + RULE_HEIGHT + LEGEND_DOWN;
  return { x: left, y, anchor: 'start', kind: 'word', text: words(ruleWords(division)) };
}

/** A rule with a line that meets it, on a sheet `width` px wide. */
export function arrangeRule(rule: MarkedRule, width: number): Sheet {
  const { division } = rule;
  const stretch = stretchOf(rule, width - 2 * (PAST + 4));
  const drawn = (stretch.last - stretch.first) * stretch.pitch;
  const end = stretch.first === 0 ? 0 : null;
  const laid = layRule(division, stretch, Math.max(PAST + 4, (width - drawn) / 2), POINTER, end);
  return {
    width,
    height: POINTER + RULE_HEIGHT + LEGEND_DOWN + 13,
    hatches: [],
    strokes: [...laid.strokes, ...pointerAt(laid.x(rule.line), POINTER, POINTER - 4)],
    labels: [...laid.labels, legendOf(division, laid.left, POINTER)],
  };
}
