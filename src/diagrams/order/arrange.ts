import type { Run, Setting } from '../../core/piece/drillingOrder.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import { type Unit, reading, shownReading, spoken, words } from '../drafting/reading.ts';

/** An order of drilling as it is drawn: what is set before each run, and what lies half done. */
export interface ShownOrder {
  readonly runs: readonly Run[];
  readonly settings: readonly Setting[];
  readonly halfDone: readonly (readonly string[])[];
  /** How many of the runs are shown as done; the rest of the page stays free for them. */
  readonly done: number;
}

const MOST_WIDE = 760;
/** Height of a step: with room for a row of holes, and where there are many. */
const STEP = 44;
const CLOSE_STEP = 30;
const MANY = 8;
/** Over the first step: the names of the columns, in as many heights as they need. */
const HEAD = 36;
const NAME = 20;
const MOST_HEIGHTS = 4;
/** Half the width of a board's bar, and of the piece of board at a step. */
const BAR = 5;
const MOST_PIECE = 38;
const HOLE = 4;

/** How the bar of a board is drawn that is not at the drill. */
const FILLS = { 'not begun': 'hole', 'half done': 'hole', done: 'wood-b' } as const;
const EDGES = { 'not begun': 'thin', 'half done': 'phantom', done: 'outline' } as const;

/** Left edges of the columns, px. */
interface Columns {
  readonly bit: number;
  readonly collar: number;
  readonly boards: (i: number) => number;
  /** Half the width of a piece of board. */
  readonly piece: number;
}

const boardsOf = ({ runs }: ShownOrder) => [...new Set(runs.map(({ board }) => board))];

function lengthText(value: number, unit: Unit | 'both') {
  return shownReading(
    reading((length) => length(value)),
    unit,
  );
}

function columnsOf(order: ShownOrder, width: number, unit: Unit | 'both'): Columns {
  const widest = (of: (run: Run) => number) =>
    Math.max(...order.runs.map((run) => textWidth(lengthText(of(run), unit), 'number')));
  const bit = 30;
  const collar =
    bit +
    Math.max(
      30,
      widest((run) => run.bit),
    ) +
    22;
  const left =
    collar +
    Math.max(
      46,
      widest((run) => run.stop),
    ) +
    22;
  const count = boardsOf(order).length;
  const each = (Math.min(width, MOST_WIDE) - left - 4) / count;
  return {
    bit,
    collar,
    boards: (i) => left + each * (i + 0.5),
    piece: Math.min(MOST_PIECE, each / 2 - 3),
  };
}

/** A setting that stays: its value where it is set, and a line down as long as it serves. */
function drawSetting(
  order: ShownOrder,
  which: 'bit' | 'collar',
  x: number,
  top: (i: number) => number,
  step: number,
  unit: Unit | 'both',
): { strokes: Stroke[]; labels: Label[] } {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const shown = order.settings.slice(0, order.done);
  const starts = shown.flatMap((setting, i) => (setting[which] ? [i] : []));
  starts.forEach((start, n) => {
    const end = starts[n + 1] ?? shown.length;
    const run = order.runs[start]!;
    const [from, to] = [top(start) + 6, top(end) - 6];
    strokes.push(
      {
        pen: 'thin',
        d: open([
          { x, y: from },
          { x, y: to },
        ]),
      },
      { pen: 'arrow', d: circle({ x, y: from }, 3.5) },
    );
    labels.push({
      x: x + 9,
      y: top(start) + step / 2,
      anchor: 'start',
      kind: 'number',
      text: lengthText(which === 'bit' ? run.bit : run.stop, unit),
    });
  });
  return { strokes, labels };
}

/** A board down the page: not begun, half done, done, and at its steps a piece of it with holes. */
function drawBoard(
  order: ShownOrder,
  board: string,
  x: number,
  piece: number,
  top: (i: number) => number,
  step: number,
): Stroke[] {
  const own = order.runs.flatMap((run, i) => (run.board === board ? [i] : []));
  const [first, last] = [own[0]!, own.at(-1)!];
  const bar = (from: number, to: number) =>
    closed([
      { x: x - BAR, y: from },
      { x: x + BAR, y: from },
      { x: x + BAR, y: to },
      { x: x - BAR, y: to },
    ]);
  const state = (i: number) =>
    own.includes(i) ? 'drilled' : i < first ? 'not begun' : i < last ? 'half done' : 'done';
  const strokes: Stroke[] = [];
  for (let from = 0; from < order.done;) {
    const now = state(from);
    let to = from + 1;
    while (to < order.done && state(to) === now) to++;
    if (now !== 'drilled') {
      const d = bar(top(from), top(to));
      strokes.push({ pen: FILLS[now], d }, { pen: EDGES[now], d });
    }
    from = to;
  }
  for (const i of own.filter((each) => each < order.done)) {
    const { holes } = order.runs[i]!;
    const [up, down] = [top(i) + 5, top(i + 1) - 5];
    const outline = closed([
      { x: x - piece, y: up },
      { x: x + piece, y: up },
      { x: x + piece, y: down },
      { x: x - piece, y: down },
    ]);
    strokes.push({ pen: 'wood-a', d: outline }, { pen: 'outline', d: outline });
    // Beside each other, or in a narrow piece above each other.
    const flat = (2 * piece - 6) / holes >= 2 * HOLE;
    const apart = Math.min(14, (flat ? 2 * piece - 6 : down - up - 2) / holes);
    for (let j = 0; j < holes; j++) {
      const off = (j - (holes - 1) / 2) * apart;
      const center = { x: x + (flat ? off : 0), y: top(i) + step / 2 + (flat ? 0 : off) };
      const radius = Math.min(HOLE, apart / 2 - 0.5);
      strokes.push(
        { pen: 'hole', d: circle(center, radius) },
        { pen: 'thin', d: circle(center, radius) },
      );
    }
  }
  return strokes;
}

/** Middles of the boards' names: over their bars, but on the sheet. */
function nameMiddles(boards: readonly string[], columns: Columns, width: number): number[] {
  return boards.map((board, i) =>
    Math.min(columns.boards(i), width - 2 - textWidth(words(board), 'word') / 2),
  );
}

/**
 * In how many heights names stand so that those of one height keep clear of each other; undefined
 * where the columns are too narrow for that.
 */
function heightsOf(boards: readonly string[], middles: readonly number[]): number | undefined {
  const half = (i: number) => textWidth(words(boards[i]!), 'word') / 2;
  for (let heights = 1; heights <= MOST_HEIGHTS; heights++) {
    const clear = boards.every(
      (_, i) =>
        i < heights || middles[i - heights]! + half(i - heights) + 4 < middles[i]! - half(i),
    );
    if (clear) return heights;
  }
  return undefined;
}

/** Names and what leads from them to their columns. */
interface Head {
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

/** Names over their columns; where these are narrow, a stair of names to the left of them. */
function drawHead(boards: readonly string[], columns: Columns, width: number): Head {
  const middles = nameMiddles(boards, columns, width);
  const heights = heightsOf(boards, middles);
  const height = HEAD + (heights === undefined ? boards.length : heights - 1) * NAME;
  const name = (i: number, x: number, y: number, anchor: Label['anchor']): Label => ({
    x,
    y,
    anchor,
    kind: 'word',
    text: words(boards[i]!),
  });
  if (heights !== undefined) {
    const labels = boards.map((_, i) =>
      name(i, middles[i]!, height - 14 - (i % heights) * NAME, 'middle'),
    );
    return { height, strokes: [], labels };
  }
  // The last name stands highest, so that no line crosses a name.
  const level = (i: number) => height - 14 - (i + 1) * NAME;
  return {
    height,
    strokes: boards.map((_, i) => ({
      pen: 'thin',
      d: open([
        { x: columns.boards(i), y: level(i) - 6 },
        { x: columns.boards(i), y: height },
      ]),
    })),
    labels: boards.map((_, i) => name(i, columns.boards(i) - 5, level(i), 'end')),
  };
}

/**
 * An order of drilling down the page: a line for each run; to the left what is set and how long
 * it serves, to the right every board from not begun to done. On a sheet `width` px wide.
 */
export function arrangeOrder(order: ShownOrder, width: number, unit: Unit | 'both'): Sheet {
  const boards = boardsOf(order);
  const columns = columnsOf(order, width, unit);
  const count = order.runs.length;
  const step = count > MANY ? CLOSE_STEP : STEP;
  const head = drawHead(boards, columns, width);
  const top = (i: number) => head.height + i * step;
  const name = (text: string, x: number, y: number, anchor: Label['anchor']): Label => ({
    x,
    y,
    anchor,
    kind: 'word',
    text: words(text),
  });
  const parts = [
    drawSetting(order, 'bit', columns.bit, top, step, unit),
    drawSetting(order, 'collar', columns.collar, top, step, unit),
  ];
  const rules = Array.from({ length: count + 1 }, (_, i): Stroke => ({
    pen: 'thin',
    d: open([
      { x: 2, y: top(i) },
      { x: columns.boards(boards.length - 1) + columns.piece + 4, y: top(i) },
    ]),
  }));
  const foot = top(count) + 22;
  let x = 2;
  const signs: Stroke[] = [];
  const meanings: Label[] = [];
  for (const says of ['not begun', 'half done', 'done'] as const) {
    const box = closed([
      { x: x + 1, y: foot - 8 },
      { x: x + 11, y: foot - 8 },
      { x: x + 11, y: foot + 8 },
      { x: x + 1, y: foot + 8 },
    ]);
    signs.push({ pen: FILLS[says], d: box }, { pen: EDGES[says], d: box });
    meanings.push(name(says, x + 18, foot, 'start'));
    x += 18 + textWidth(words(says), 'word') + 16;
  }
  return {
    width,
    height: Math.ceil(foot + 40),
    hatches: [],
    strokes: [
      ...rules,
      ...head.strokes,
      ...boards.flatMap((board, i) =>
        drawBoard(order, board, columns.boards(i), columns.piece, top, step),
      ),
      ...parts.flatMap((part) => part.strokes),
      ...signs,
    ],
    labels: [
      name('bit', columns.bit - 4, head.height - 14, 'start'),
      name('stop', columns.collar - 4, head.height - 14, 'start'),
      ...head.labels,
      ...order.runs.map((_, i): Label => ({
        x: 2,
        y: top(i) + step / 2,
        anchor: 'start',
        kind: 'number',
        text: words(String(i + 1)),
      })),
      ...parts.flatMap((part) => part.labels),
      ...meanings,
      {
        x: 2,
        y: foot + 26,
        anchor: 'start',
        kind: 'word',
        text: shownReading({ in: 'inches', mm: 'millimeters' }, unit),
      },
    ],
  };
}

/** The order in sentences. */
export function describeOrder({ runs, settings, halfDone, done }: ShownOrder, unit: Unit): string {
  const say = spoken(unit);
  const steps = runs.slice(0, done).map(({ board, holes, bit, stop }, i) => {
    const setting = settings[i]!;
    const set = [
      ...(setting.bit ? [`bit ${say(bit)}`] : []),
      ...(setting.collar ? [`stop ${say(stop)}`] : []),
    ].join(', ');
    const half = halfDone[i]!.length > 0 ? `; half done: ${halfDone[i]!.join(', ')}` : '';
    return `${i + 1}, ${board}: ${holes} ${holes === 1 ? 'hole' : 'holes'}${set === '' ? '' : `, set anew: ${set}`}${half}.`;
  });
  return `Steps of drilling, and what is set before each. ${steps.join(' ')} Another order sets more or less.`;
}
