import type { JointPlan } from '../../core/joint/types.ts';
import { cutStick } from './cutStick.ts';
import { type Paper, drawnPart } from './papers.ts';

/** A mark of a pin on a strip. */
export interface StickMark {
  /** Number of the pin, from 1. */
  readonly pin: number;
  /** From the reference end, exactly, mm. */
  readonly along: number;
  /** Down the page, mm. */
  readonly y: number;
}

/** One strip of a story stick on its page; places in mm from the upper left of the drawn part. */
export interface Strip {
  /** Its number along the stick, from 1. */
  readonly number: number;
  readonly x: number;
  /** Where it starts down the page: the reference end, or the line that it is joined on. */
  readonly start: number;
  readonly end: number;
  /** The same from the reference end, mm. */
  readonly from: number;
  readonly to: number;
  /** Goes on from a strip before it: it has a tab above its start. */
  readonly joined: boolean;
  /** Another strip goes on from it. */
  readonly goesOn: boolean;
  readonly marks: readonly StickMark[];
  /** Middle of the widest room between marks, for words; null where it is too little. */
  readonly words: number | null;
}

/** One row of pins and the strips that carry it. */
export interface Stick {
  /** 'joint', or for a leg whose aprons have rows of their own 'first apron' and 'second apron'. */
  readonly row: 'joint' | 'first apron' | 'second apron';
  readonly strips: number;
  readonly pages: readonly (readonly Strip[])[];
}

/** Sizes on the page, mm. */
export const STRIP = 42;
export const TICK = 9;
export const TAB = 11;
/** Room above the strips for the page's head and the check bars that lie. */
export const HEAD = 16;
/** Room beside the strips for the check bars that stand. */
const BARS = 15;
/** Below a strip, for the mark where the next one joins. */
const FOOT = 3;
/** Between strips, for the scissors. */
const GAP = 1;
/** Three lines of words. */
const WORDS = 15;

function wordsBetween(from: number, to: number, marks: readonly StickMark[]): number | null {
  const stops = [from, ...marks.map(({ y }) => y), to];
  const rooms = stops
    .slice(1)
    .map((y, i) => ({ room: y - stops[i]!, middle: (y + stops[i]!) / 2 }));
  const widest = rooms.reduce((best, each) => (each.room > best.room + 1e-6 ? each : best));
  return widest.room >= WORDS ? widest.middle : null;
}

function stickOf(
  row: Stick['row'],
  length: number,
  positions: readonly number[],
  paper: Paper,
): Stick {
  const { width, height } = drawnPart(paper);
  const room = height - HEAD - FOOT;
  const stretches = cutStick(length, positions, room, room - TAB);
  const abreast = Math.floor((width - BARS + GAP) / (STRIP + GAP));
  const strips = stretches.map(({ from, to }, i): Strip => {
    const start = HEAD + (i === 0 ? 0 : TAB);
    const marks = positions.flatMap((along, pin) =>
      along > from && along <= to ? [{ pin: pin + 1, along, y: start + along - from }] : [],
    );
    const end = start + to - from;
    return {
      number: i + 1,
      x: (i % abreast) * (STRIP + GAP),
      start,
      end,
      from,
      to,
      joined: i > 0,
      goesOn: i < stretches.length - 1,
      marks,
      words: wordsBetween(start, end, marks),
    };
  });
  const pages = Array.from({ length: Math.ceil(strips.length / abreast) }, (_, page) =>
    strips.slice(page * abreast, (page + 1) * abreast),
  );
  return { row, strips: strips.length, pages };
}

/**
 * The story sticks of a joint, full size: the pins at their exact places, on strips that fit on
 * the paper. Both boards are marked from the same strip. A leg whose two rows differ has a stick
 * for each; any other joint has one.
 *
 * @param plan a plan that can be made
 */
export function arrangeSticks(plan: JointPlan, paper: Paper): readonly Stick[] {
  const { positions, secondRow } = plan;
  const length = plan.spec.jointLength;
  const alike = positions.every((along, i) => Math.abs(along - (secondRow[i] ?? along)) < 1e-6);
  return alike
    ? [stickOf('joint', length, positions, paper)]
    : [
        stickOf('first apron', length, positions, paper),
        stickOf('second apron', length, secondRow, paper),
      ];
}

/** A bar to hold a rule against, before anything is cut; places as for strips. */
export interface CheckBar {
  readonly name: '100 mm' | '4 in';
  readonly upright: boolean;
  readonly x: number;
  readonly y: number;
  /** mm */
  readonly length: number;
}

/** The check bars of a page: 100 mm and 4 in, lying and standing. */
export function checkBars(paper: Paper): readonly CheckBar[] {
  const { width } = drawnPart(paper);
  const left = width - 103;
  return [
    { name: '100 mm', upright: false, x: left, y: 5, length: 100 },
    { name: '4 in', upright: false, x: left, y: 12, length: 4 * 25.4 },
    { name: '100 mm', upright: true, x: width - 2, y: HEAD + 6, length: 100 },
    { name: '4 in', upright: true, x: width - 9, y: HEAD + 6, length: 4 * 25.4 },
  ];
}
