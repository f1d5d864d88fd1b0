import type { JointKind, JointPlan, JointSpec } from '../../../core/joint/types.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { type BenchSetup, drill, soundSetup } from '../../../core/trial/drill.ts';
import { type DryFit, dryFit } from '../../../core/trial/dryFit.ts';
import type { Trial } from '../../../core/trial/trial.ts';

/** What goes wrong on board B, and how much the pins forgive. Lengths in mm. */
export interface Slips {
  /** The pin whose mark on B is off, counted from 0; the last one where the row is shorter. */
  readonly pin: number;
  /** By how much, away from the reference end. */
  readonly by: Mm;
  /** Hole less pin, across both sides. */
  readonly clearance: Mm;
  /** Whether B is drilled from its other face. */
  readonly turned: boolean;
}

/** A row as it was marked on both boards, and what became of it. */
export interface MarkedRow {
  readonly trial: Trial;
  readonly outcome: DryFit;
  /** B's marks from its reference end. */
  readonly marksOnB: readonly Mm[];
  /** The pin whose mark is off, counted from 0. */
  readonly pin: number;
}

/** Marks both boards, one mark on B astray, drills them and pushes them together; null where no pin fits. */
export function markRow(plan: JointPlan, { pin, by, clearance, turned }: Slips): MarkedRow | null {
  if (plan.pin === null || plan.holes.length === 0) return null;
  const sound = soundSetup(plan);
  const astray = Math.min(pin, plan.holes.length - 1);
  const marksOnB = sound.b.marks.map((mark, i) => (i === astray ? mm(mark + by) : mark));
  const setup: BenchSetup = {
    ...sound,
    pin: { ...plan.pin, measured: mm(plan.spec.bit.diameter - clearance) },
    b: { ...sound.b, marks: marksOnB, ...(turned && { face: 'other' }) },
  };
  const trial = drill(setup);
  return { trial, outcome: dryFit(trial), marksOnB, pin: astray };
}

/** What the length of the joint is a size of, and what it is called. */
export function lineOf(kind: JointKind): {
  readonly size: 'width' | 'length';
  readonly label: string;
} {
  return kind === 'edge'
    ? { size: 'length', label: 'Length of the boards' }
    : { size: 'width', label: 'Width of the boards' };
}

/** The same joint with both boards as long along it. */
export function withLine(spec: JointSpec, length: Mm): JointSpec {
  const { size } = lineOf(spec.kind);
  return { ...spec, a: { ...spec.a, [size]: length }, b: { ...spec.b, [size]: length } };
}
