import { mm } from '../../core/length/mm.ts';
import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import { type Point, overlap } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import { type LaidRule, PAST, RULE_HEIGHT, layRule, legendOf } from './arrange.ts';
import { onTheRule } from './describe.ts';
import { finestStep, markRanks } from './division.ts';
import { LEAST_PITCH, type Stretch, numbersAround, stretchOf } from './geometry.ts';
import { type MeasuredPlaces, type Measuring, placesOf, readingOf } from './measuring.ts';

/** Px: height of the board over the rule, its lines of words, one step of the reading. */
const BOARD = 44;
const ABOVE = 54;
const STEP_ROW = 24;
/** Room for a step's text with its arrow, px. */
const STEP_TEXT = 84;
const LEGEND = 30;
const LEFT = 30;
const RIGHT = PAST + 6;
/** From this width on the two ends of a long board stand beside each other, px. */
const BESIDE = 640;
/** Wider apart than this the marks only grow coarse, px. */
const MOST_PITCH = 24;
const HOOK = 10;

/** One part of the rule with the board on it. */
interface View {
  readonly stretch: Stretch;
  /** Which ends of the board are in it. */
  readonly shows: { readonly start: boolean; readonly end: boolean };
  readonly left: number;
  readonly top: number;
}

function textAt(
  x: number,
  y: number,
  kind: Label['kind'],
  text: string,
  more: Partial<Label> = {},
) {
  return { x, y, anchor: 'middle', kind, text: words(text), ...more } satisfies Label;
}

/** The board over the rule: real ends where the view has them, else break lines. */
function drawBoard(
  view: View,
  laid: LaidRule,
  places: MeasuredPlaces,
  rightEdge: number,
): Stroke[] {
  const { top, shows } = view;
  const left = shows.start ? laid.x(places.start) : laid.left;
  const right = shows.end ? laid.x(places.line) : rightEdge;
  const [upper, lower] = [top - BOARD, top - 1];
  const corners = [
    { x: left, y: upper },
    { x: right, y: upper },
    { x: right, y: lower },
    { x: left, y: lower },
  ] as const;
  const rightSide = shows.end ? [corners[1]] : breakLine(corners[1], corners[2]);
  const leftSide = shows.start ? [corners[3]] : breakLine(corners[3], corners[0]);
  return [
    {
      pen: 'wood-a',
      d: closed([corners[0], ...rightSide, corners[2], ...leftSide]),
      hatch: 'along',
    },
    { pen: 'outline', d: `${open([corners[0], corners[1]])}${open([corners[3], corners[2]])}` },
    { pen: shows.end ? 'outline' : 'thin', d: open([...rightSide, corners[2]]) },
    { pen: shows.start ? 'outline' : 'thin', d: open([...leftSide, corners[0]]) },
  ];
}

/** The hook, its inner face where the board starts. */
function drawHook(view: View, laid: LaidRule, places: MeasuredPlaces): Stroke[] {
  const face = laid.x(places.start);
  const zero = laid.x(0);
  const box = (left: number, right: number, top: number, bottom: number): Point[] => [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const { top } = view;
  return [
    { pen: 'steel', d: closed(box(face - HOOK, zero + 16, top + 50, top + 62)) },
    { pen: 'steel', d: closed(box(face - HOOK, face, top - BOARD + 8, top + 62)) },
  ];
}

/** The reading as steps from the last number to the line, one under the other. */
function drawSteps(measuring: Measuring, laid: LaidRule, ruleBottom: number): Dimensions {
  const { parts } = readingOf(measuring);
  const rows = parts.map((part, i) =>
    dimensionRow('x', ruleBottom + (i + 0.8) * STEP_ROW, [
      {
        from: { along: laid.x(part.from), feature: i === 0 ? ruleBottom : null },
        to: { along: laid.x(part.to), feature: ruleBottom },
        text: words(
          part.count === 1
            ? onTheRule(part.rank.apart, measuring.division)
            : `${part.count} × ${onTheRule(part.rank.apart, measuring.division)}`,
        ),
        // Later steps' lines come down on the right; near the sheet's edge that is the only room.
        outside: laid.x(part.from) < STEP_TEXT ? 'after' : 'before',
      },
    ]),
  );
  return {
    strokes: rows.flatMap((row) => row.strokes),
    labels: rows.flatMap((row) => row.labels),
  };
}

const STARTS: Record<Measuring['start'], (off: string) => string> = {
  end: () => 'starts at the end',
  worn: (off) => `end worn by ${off}`,
  hook: (off) => `hook off by ${off}`,
  number: (off) => `starts at the ${off}`,
};

/** What is written over the board; what finds no room is left out, the least needed first. */
function drawWords(measuring: Measuring, view: View, laid: LaidRule, width: number): Label[] {
  const { division, start } = measuring;
  const places = placesOf(measuring);
  const { top, shows } = view;
  const row = top - BOARD - 14;
  const wanted: Label[] = [];
  if (shows.end) {
    const reading = `${onTheRule(readingOf(measuring).length, division)} ${division.unit}`;
    wanted.push(textAt(laid.x(places.line), row, 'number', reading, { set: true }));
  }
  if (shows.start) {
    const off = onTheRule(mm(Math.abs(places.start)), division);
    const text = STARTS[start](off);
    wanted.push({
      ...textAt(Math.max(2, laid.x(places.start) - 2), row - 22, 'word', text),
      anchor: 'start',
    });
  }
  const inside = wanted.map((label) => {
    const { left, right } = labelBox(label);
    return { ...label, x: label.x - Math.max(0, right - width + 2) + Math.max(0, 2 - left) };
  });
  const middle = textAt(laid.x(places.middle), row, 'word', 'middle');
  const clear = inside.every((label) => !overlap(labelBox(label), labelBox(middle)));
  const seen = laid.x(places.middle) > laid.left + 40 || shows.start;
  return clear && seen && shows.end ? [...inside, middle] : inside;
}

/** The steel that wear has taken off the end. */
function drawWorn(view: View, laid: LaidRule, { steel }: MeasuredPlaces): Stroke[] {
  const [zero, end] = [laid.x(0), laid.x(steel)];
  const bottom = view.top + RULE_HEIGHT;
  return [
    {
      pen: 'phantom',
      d: open([
        { x: end, y: view.top },
        { x: zero, y: view.top },
        { x: zero, y: bottom },
        { x: end, y: bottom },
      ]),
    },
  ];
}

function drawMiddle(view: View, laid: LaidRule, places: MeasuredPlaces): Stroke[] {
  const x = laid.x(places.middle);
  if (!view.shows.end || x < laid.left) return [];
  return [
    {
      pen: 'center',
      d: open([
        { x, y: view.top - BOARD - 5 },
        { x, y: view.top + RULE_HEIGHT - 24 },
      ]),
    },
  ];
}

/** The board's end in the accent: it is what the reader moves. */
function drawEnd(view: View, laid: LaidRule, places: MeasuredPlaces): Stroke[] {
  const x = laid.x(places.line);
  return [
    {
      pen: 'thin',
      set: true,
      d: open([
        { x, y: view.top - BOARD - 4 },
        { x, y: view.top },
      ]),
    },
  ];
}

/** The whole board where its marks can be told apart; else its start and its end. */
function viewsOf(measuring: Measuring, width: number): View[] {
  const { division, start } = measuring;
  const step = finestStep(division);
  const { line, start: begin } = placesOf(measuring);
  const [before, after] = numbersAround(line, division);
  const room = width - LEFT - RIGHT;
  const top = ABOVE + BOARD;
  const whole = Math.floor(room / after);
  if (whole >= LEAST_PITCH || before === 0) {
    const stretch = { first: 0, last: after, pitch: Math.min(MOST_PITCH, whole) };
    return [{ stretch, shows: { start: true, end: true }, left: LEFT, top }];
  }
  const beside = width >= BESIDE;
  const column = beside ? width / 2 - 10 : width;
  const free = column - PAST - RIGHT;
  const far = before + 2 * (after - before);
  const around = { division, from: mm(step), to: mm(far * step), line };
  const end = stretchOf(around, free);
  const marks = Math.floor((column - LEFT - RIGHT) / end.pitch);
  const first = start === 'number' ? Math.max(0, Math.round(begin / step - marks * 0.3)) : 0;
  return [
    {
      stretch: { first, last: first + marks, pitch: end.pitch },
      shows: { start: true, end: false },
      left: LEFT,
      top,
    },
    {
      stretch: end,
      shows: { start: false, end: true },
      left: (beside ? width - column : 0) + PAST + 2,
      top: beside ? top : top + RULE_HEIGHT + 20 + ABOVE + BOARD,
    },
  ];
}

/** A board laid on a rule, and how its reading builds up, on a sheet `width` px wide. */
export function arrangeBoard(measuring: Measuring, width: number): Sheet {
  const { division, start } = measuring;
  const places = placesOf(measuring);
  const step = finestStep(division);
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  let bottom = 0;
  for (const view of viewsOf(measuring, width)) {
    const { stretch, shows, left, top } = view;
    const end = stretch.first === 0 ? places.steel : null;
    const laid = layRule(division, stretch, left, top, end);
    const right = laid.x(stretch.last * step) + PAST;
    strokes.push(
      ...laid.strokes,
      ...drawBoard(view, laid, places, right),
      ...(start === 'hook' && shows.start ? drawHook(view, laid, places) : []),
      ...(start === 'worn' && shows.start ? drawWorn(view, laid, places) : []),
      ...drawMiddle(view, laid, places),
      ...(shows.end ? drawEnd(view, laid, places) : []),
    );
    labels.push(...laid.labels, ...drawWords(measuring, view, laid, width));
    if (!shows.end) continue;
    const steps = drawSteps(measuring, laid, top + RULE_HEIGHT);
    strokes.push(...steps.strokes);
    const rows = (markRanks(division).length - 1) * STEP_ROW;
    labels.push(...steps.labels, legendOf(division, 2, top + rows));
    bottom = top + RULE_HEIGHT + rows + LEGEND;
  }
  return {
    width,
    height: bottom,
    hatches: [{ name: 'along', grain: 'long', angle: 0 }],
    strokes,
    labels,
  };
}
