import { ticks } from 'd3-array';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import { words } from '../drafting/reading.ts';

/** A mistake, and how many students made it. */
export interface MistakeCount {
  readonly name: string;
  readonly students: number;
}

const ROW = 48;
const BAR = 16;
const LEFT = 2;
const COUNT = 48;

/** A name cut to the room that it has. */
function fitted(name: string, room: number): string {
  if (textWidth(words(name), 'word') <= room) return name;
  let short = name;
  while (short !== '' && textWidth(words(`${short}…`), 'word') > room) short = short.slice(0, -1);
  return `${short.trimEnd()}…`;
}

/**
 * A bar for each mistake on a sheet `width` px wide, the commonest first.
 * @param students how many there are in all: where the scale ends
 */
export function arrangeMistakes(
  mistakes: readonly MistakeCount[],
  students: number,
  width: number,
): Sheet {
  const right = width - COUNT;
  const x = (count: number) => LEFT + ((right - LEFT) * count) / Math.max(1, students);
  const bottom = ROW * mistakes.length + 6;
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  mistakes.forEach((mistake, i) => {
    const top = ROW * i + 26;
    const d = closed([
      { x: x(0), y: top },
      { x: x(mistake.students), y: top },
      { x: x(mistake.students), y: top + BAR },
      { x: x(0), y: top + BAR },
    ]);
    strokes.push({ pen: 'wood-b', d, hatch: 'wrong' }, { pen: 'outline', d });
    labels.push(
      {
        ...{ x: LEFT, y: top - 12, anchor: 'start', kind: 'word' },
        text: words(fitted(mistake.name, width - LEFT)),
      },
      {
        ...{ x: x(mistake.students) + 8, y: top + BAR / 2, anchor: 'start', kind: 'number' },
        text: words(String(mistake.students)),
      },
    );
  });
  const marks = ticks(0, students, 4).filter(Number.isInteger);
  strokes.push(
    {
      pen: 'thin',
      d: open([
        { x: x(0), y: bottom },
        { x: right, y: bottom },
      ]),
    },
    ...marks.map((mark): Stroke => ({
      pen: 'thin',
      d: open([
        { x: x(mark), y: bottom },
        { x: x(mark), y: bottom + 5 },
      ]),
    })),
  );
  labels.push(
    ...marks.map((mark): Label => ({
      ...{ x: Math.max(x(mark), 8), y: bottom + 18, anchor: 'middle', kind: 'word' },
      text: words(String(mark)),
    })),
    {
      ...{ x: LEFT, y: bottom + 38, anchor: 'start', kind: 'word' },
      text: words(`of ${students} students`),
    },
  );
  return {
    ...{ width, height: bottom + 50, strokes, labels },
    hatches: [{ name: 'wrong', grain: 'end', angle: 45 }],
  };
}

/** The bars in a sentence. */
export function describeMistakes(mistakes: readonly MistakeCount[], students: number): string {
  const [first, second] = mistakes;
  if (!first) return 'No wrong answer shows a known mistake.';
  const of = (mistake: MistakeCount) =>
    `“${mistake.name}”, made by ${mistake.students} of ${students} students`;
  return second
    ? `The commonest mistake is ${of(first)}; then ${of(second)}.`
    : `The only mistake is ${of(first)}.`;
}
