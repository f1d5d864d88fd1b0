import { breakLine } from '../drafting/breakLine.ts';
import { arrowAt } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import { type RuleDivision, finestStep } from './division.ts';
import { type MarkedRule, type Stretch, stretchOf } from './geometry.ts';

/** Px: height of the rule, of its longest mark, and how far down its numbers stand. */
export const RULE_HEIGHT = 70;
const TALLEST = 44;
const NUMBER_DOWN = 57;
/** Steel that is drawn past the last mark, where the rule goes on: room for half of its number, px. */
export const PAST = 26;
/** The pointer over the rule, and the line of words under it, px. */
const POINTER = 34;
const WORDS = 30;

/** What is written under a rule: its unit and its finest marks. */
export function ruleWords(division: RuleDivision): string {
  if (division.unit === 'in') return `inches, ${division.denominator} marks to the inch`;
  return division.step === 1 ? 'millimeters, a mark at each' : 'millimeters, a mark at each half';
}

/** A stretch of rule laid on the sheet. */
export interface LaidRule {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** x of a place on the rule, from its zero in mm; on the middle of a pixel where a mark is. */
  readonly x: (place: number) => number;
  readonly right: number;
}

/**
 * Lays a stretch of rule with its reading edge at `top` and its first mark at `left`, in px.
 * @param end where the steel really ends, from zero in mm, if that is in the stretch
 */
export function layRule(
  stretch: Stretch,
  step: number,
  left: number,
  top: number,
  end: number | null,
): LaidRule {
  const origin = Math.round(left) + 0.5;
  const x = (place: number) => origin + (place / step - stretch.first) * stretch.pitch;
  const bottom = top + RULE_HEIGHT;
  const steelLeft = end === null ? x(stretch.first * step) - PAST : x(end);
  const right = x(stretch.last * step) + PAST;
  const upright = (at: number): readonly [Point, Point] => [
    { x: at, y: top },
    { x: at, y: bottom },
  ];
  const [rightTop, rightBottom] = upright(right);
  const [leftTop, leftBottom] = upright(steelLeft);
  const rightLine = breakLine(rightTop, rightBottom);
  const leftLine = end === null ? breakLine(leftBottom, leftTop) : [leftBottom];
  const marks = (pen: 'thin' | 'mark', long: boolean): Stroke => ({
    pen,
    d: stretch.ticks
      .filter(({ count, tall }) => (tall === 1) === long && x(count * step) >= steelLeft - 0.01)
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
    right,
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
    labels: stretch.ticks.flatMap(({ count, number }): Label[] =>
      number === null
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
export function pointerAt(x: number, top: number, height: number, set = false): readonly Stroke[] {
  return [
    {
      pen: set ? 'thin' : 'mark',
      d: open([
        { x, y: top - height },
        { x, y: top - 6 },
      ]),
      set,
    },
    { pen: 'arrow', d: arrowAt({ x, y: top }, 0, 1), set },
  ];
}

/** A rule with a line that meets it, on a sheet `width` px wide. */
export function arrangeRule(rule: MarkedRule, width: number): Sheet {
  const step = finestStep(rule.division);
  const stretch = stretchOf(rule, width - 2 * (PAST + 4));
  const atEnd = stretch.first === 0;
  const drawn = (stretch.last - stretch.first) * stretch.pitch;
  const left = Math.max(PAST + 4, (width - drawn) / 2);
  const laid = layRule(stretch, step, left, POINTER, atEnd ? 0 : null);
  const legend: Label = {
    x: laid.x(stretch.first * step) - (atEnd ? 0 : PAST),
    y: POINTER + RULE_HEIGHT + 17,
    anchor: 'start',
    kind: 'word',
    text: words(ruleWords(rule.division)),
  };
  return {
    width,
    height: POINTER + RULE_HEIGHT + WORDS,
    hatches: [],
    strokes: [...laid.strokes, ...pointerAt(laid.x(rule.line), POINTER, POINTER - 4)],
    labels: [...laid.labels, legend],
  };
}
