import type { JointKind, System } from '../../core/joint/types.ts';
import { type Mm, inches, mm } from '../../core/length/mm.ts';
import type { Template } from '../../practice/made/index.ts';
import { templates } from '../../practice/made/index.ts';
import type { Limits } from '../../practice/questions/types.ts';

/** When a student is told what was right: after each question, or once the answers are handed in. */
export type Feedback = 'each' | 'end';

/** What an instructor gives a class to answer: all that is in the link. */
export interface Assignment {
  /** Eight random characters: two assignments with the same settings ask other numbers. */
  readonly id: string;
  readonly title: string;
  /** What makes the questions, by the templates' ids, in the order of the course. */
  readonly templates: readonly string[];
  /** How many questions each student gets. */
  readonly count: number;
  /** Percent of the questions that must be right. */
  readonly passMark: number;
  /** Which stock and steps the questions use, and the unit that the page starts in. */
  readonly system: System;
  readonly feedback: Feedback;
  /** The class's joints and boards, and how far off a typed length may be. */
  readonly limits: Limits;
  /** Until when, as `2026-12-04`: advice for the student, a remark for the instructor. */
  readonly due?: string;
  /** The calculator and the questions that it was made with; see `versions.ts`. */
  readonly calc: number;
  readonly bank: number;
}

export const JOINTS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

/** The most of everything, so that a link stays short and a page quick. */
export const MOST = { questions: 40, title: 60, thicknesses: 12 } as const;

/** How thin and how thick a board of a class may be. */
export const BOARDS = { thinnest: mm(10), thickest: mm(60) } as const;

/** How far off a typed length may be, the usual one first. */
export const TOLERANCES: Readonly<Record<System, readonly Mm[]>> = {
  in: [inches(1 / 64), inches(1 / 32)],
  mm: [mm(0.5), mm(1)],
};

/** True where a template can ask about the joints of a class, or asks about no joint. */
export function suits(template: Template, { joints }: Limits): boolean {
  return (
    joints === undefined ||
    template.joints.length === 0 ||
    template.joints.some((kind) => joints.includes(kind))
  );
}

const byId = new Map(templates.map((template) => [template.id, template]));

/** The template of an id; undefined where this edition has none. */
export function templateOf(id: string): Template | undefined {
  return byId.get(id);
}

/** Why an assignment can't be given; null where it can. */
export function faultOf(assignment: Assignment): string | null {
  const { templates: chosen, count, passMark, title, limits, due } = assignment;
  if (title.trim() === '') return 'It has no title.';
  if (title.length > MOST.title) return `Its title is longer than ${MOST.title} characters.`;
  if (/\p{C}/u.test(title)) return 'Its title has a character that can’t be seen.';
  if (chosen.length === 0) return 'Nothing is chosen to be asked.';
  if (new Set(chosen).size < chosen.length) return 'It asks for the same questions twice.';
  for (const id of chosen) {
    const template = templateOf(id);
    if (!template) return `This edition has no questions called “${id}”.`;
    if (!suits(template, limits)) return 'It asks about a joint that it leaves out.';
  }
  const whole = (value: number, least: number, most: number) =>
    Number.isInteger(value) && value >= least && value <= most;
  if (!whole(count, 1, MOST.questions)) {
    return `It has to ask 1 to ${MOST.questions} questions.`;
  }
  if (!whole(passMark, 0, 100)) return 'Its pass mark is not a whole number from 0 to 100.';
  if (limits.joints?.length === 0) return 'It leaves out every joint.';
  const boards = limits.thicknesses ?? [BOARDS.thinnest];
  if (boards.length === 0 || boards.length > MOST.thicknesses) {
    return `It has to have 1 to ${MOST.thicknesses} thicknesses of boards.`;
  }
  if (boards.some((each) => !(each >= BOARDS.thinnest && each <= BOARDS.thickest))) {
    return 'It has a board that is thinner or thicker than a pin can join.';
  }
  if (due !== undefined && !isDay(due)) return 'Its due date is not a day.';
  return null;
}

/** True for a day as `2026-12-04` that the calendar has. */
function isDay(text: string): boolean {
  if (!/^20\d\d-\d\d-\d\d$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** How far off a typed length may be in this assignment. */
export function toleranceOf({ limits, system }: Pick<Assignment, 'limits' | 'system'>): Mm {
  return limits.tolerance ?? TOLERANCES[system][0]!;
}

/** How many of the questions must be right. */
export function rightToPass({ count, passMark }: Pick<Assignment, 'count' | 'passMark'>): number {
  return Math.ceil((count * passMark) / 100);
}
