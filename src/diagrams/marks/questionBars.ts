import { ticks } from 'd3-array';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import { words } from '../drafting/reading.ts';

/** How a class did on one question. */
export interface QuestionResult {
  readonly number: number;
  readonly right: number;
  readonly wrong: number;
  /** Without an answer. */
  readonly blank: number;
  /** -1 to 1; null where that can't be said. */
  readonly discrimination: number | null;
}

const TOP = 84;
const ROW = 30;
const BAR = 18;
const LEFT = 34;
/** Room for '100 %' at the end of a bar. */
const PERCENT = 60;
/** The second scale stands beside the first where the sheet is at least so wide. */
const WIDE = 560;
const SCALE = 170;

function box(left: number, right: number, top: number, bottom: number): string {
  return closed([
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]);
}

/** What stands for each outcome: plain wood, section lines, and an empty dashed outline. */
const OUTCOMES = [
  { of: 'right', says: 'right', area: { pen: 'wood-a' }, edge: 'outline' },
  { of: 'wrong', says: 'wrong', area: { pen: 'wood-b', hatch: 'wrong' }, edge: 'outline' },
  { of: 'blank', says: 'no answer', area: { pen: 'hole' }, edge: 'hidden' },
] as const;

function bar(outcome: (typeof OUTCOMES)[number], d: string): readonly Stroke[] {
  return [
    { ...outcome.area, d },
    { pen: outcome.edge, d },
  ];
}

/** A scale under the rows: a line, its marks and their numbers. */
function scale(
  at: (value: number) => number,
  marks: readonly number[],
  y: number,
  write: (mark: number) => string,
): { strokes: readonly Stroke[]; labels: readonly Label[] } {
  return {
    strokes: [
      {
        pen: 'thin',
        d: open([
          { x: at(marks[0]!), y },
          { x: at(marks.at(-1)!), y },
        ]),
      },
      ...marks.map((mark): Stroke => ({
        pen: 'thin',
        d: open([
          { x: at(mark), y },
          { x: at(mark), y: y + 5 },
        ]),
      })),
    ],
    labels: marks.map((mark) => ({
      x: at(mark),
      y: y + 18,
      anchor: 'middle',
      kind: 'word',
      text: words(write(mark)),
    })),
  };
}

/**
 * A bar for each question on a sheet `width` px wide: who has it right, who wrong, who gave no
 * answer; and beside it, where there is room, how far it tells those who know from those who don't.
 */
export function arrangeQuestions(questions: readonly QuestionResult[], width: number): Sheet {
  const told = questions.some(({ discrimination }) => discrimination !== null);
  const beside = told && width >= WIDE;
  const right = width - PERCENT - (beside ? SCALE + 24 : 0);
  const bottom = TOP + ROW * questions.length;
  const x = (percent: number) => LEFT + ((right - LEFT) * percent) / 100;
  const strokes: Stroke[] = [];
  const labels: Label[] = [];

  let key = 2;
  for (const outcome of OUTCOMES) {
    strokes.push(...bar(outcome, box(key, key + 22, 6, 22)));
    labels.push({ x: key + 28, y: 14, anchor: 'start', kind: 'word', text: words(outcome.says) });
    key += 42 + textWidth(words(outcome.says), 'word');
  }
  labels.push({ x: LEFT, y: TOP - 20, anchor: 'start', kind: 'word', text: words('of the class') });

  questions.forEach((question, i) => {
    const middle = TOP + ROW * (i + 0.5);
    const all = question.right + question.wrong + question.blank;
    let from = 0;
    for (const outcome of OUTCOMES) {
      const share = all === 0 ? 0 : (100 * question[outcome.of]) / all;
      if (share === 0) continue;
      const d = box(x(from), x(from + share), middle - BAR / 2, middle + BAR / 2);
      strokes.push(...bar(outcome, d));
      from += share;
    }
    labels.push(
      {
        ...{ x: LEFT - 10, y: middle, anchor: 'end', kind: 'number' },
        text: words(String(question.number)),
      },
      {
        ...{ x: right + 8, y: middle, anchor: 'start', kind: 'word' },
        text: words(all === 0 ? '–' : `${Math.round((100 * question.right) / all)} %`),
      },
    );
  });
  const percents = scale(x, ticks(0, 100, width < 420 ? 2 : 4), bottom + 4, (mark) =>
    mark === 100 ? '100 %' : String(mark),
  );
  strokes.push(...percents.strokes);
  labels.push(...percents.labels);

  if (beside) {
    const [from, to] = [width - SCALE, width - 16];
    const at = (value: number) => from + ((to - from) * (value + 1)) / 2;
    strokes.push({
      pen: 'center',
      d: open([
        { x: at(0), y: TOP - 4 },
        { x: at(0), y: bottom },
      ]),
    });
    questions.forEach(({ discrimination }, i) => {
      if (discrimination === null) return;
      const middle = TOP + ROW * (i + 0.5);
      strokes.push(
        {
          pen: 'thin',
          d: open([
            { x: at(0), y: middle },
            { x: at(discrimination), y: middle },
          ]),
          ...(discrimination < 0 && { caution: true }),
        },
        {
          pen: 'arrow',
          d: circle({ x: at(discrimination), y: middle }, 5),
          ...(discrimination < 0 && { caution: true }),
        },
      );
    });
    const marks = scale(at, [-1, 0, 1], bottom + 4, (mark) => String(mark).replace('-', '−'));
    strokes.push(...marks.strokes);
    labels.push(...marks.labels, {
      ...{ x: (from + to) / 2, y: TOP - 20, anchor: 'middle', kind: 'word' },
      text: words('tells apart'),
    });
  }
  return {
    ...{ width, height: bottom + 32, strokes, labels },
    hatches: [{ name: 'wrong', grain: 'end', angle: 45 }],
  };
}

/** The bars in a sentence or two: the hardest, the easiest, and what wants looking at. */
export function describeQuestions(questions: readonly QuestionResult[]): string {
  const share = ({ right, wrong, blank }: QuestionResult) => right / (right + wrong + blank);
  const ordered = questions.toSorted((one, other) => share(one) - share(other));
  const [hardest, easiest] = [ordered[0], ordered.at(-1)];
  if (!hardest || !easiest || Number.isNaN(share(hardest))) return 'Nobody has handed in yet.';
  const percent = (question: QuestionResult) => `${Math.round(100 * share(question))} %`;
  const odd = questions.filter(({ discrimination }) => (discrimination ?? 0) < 0);
  const spread =
    hardest === easiest || share(hardest) === share(easiest)
      ? `Every question is right for ${percent(hardest)} of the class.`
      : `Question ${hardest.number} is the hardest: ${percent(hardest)} of the class have it right. Question ${easiest.number} is the easiest: ${percent(easiest)}.`;
  return odd.length === 0
    ? spread
    : `${spread} Those who do well otherwise have ${odd.map(({ number }) => `question ${number}`).join(' and ')} wrong more often than the others.`;
}
