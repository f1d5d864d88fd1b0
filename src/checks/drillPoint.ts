import { type Board, type Mm, inches, mm, planJoint } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

const board: Board = { thickness: mm(30), width: mm(140), length: mm(600) };

/** The point of a twist bit as the planner reckons it, mm; `angle` in degrees. */
function twistPoint(diameter: Mm, angle: number): number {
  const bit = { diameter, point: { kind: 'twist', angle } } as const;
  return planJoint({ kind: 'edge', system: 'mm', a: board, b: board, bit }).spec.bit.tip;
}

const shares: readonly (readonly [angle: number, share: number])[] = [
  [118, 0.3],
  [135, 0.207],
  [90, 0.5],
];

/** How far the point of a twist bit goes beyond its full diameter. */
export const drillPointRows: readonly CheckRow[] = [
  ...shares.map(([angle, published]): CheckRow => ({
    what: `Point of a ${angle}° bit, as a share of its diameter`,
    unit: { name: 'of the diameter', decimals: 3 },
    published,
    computed: twistPoint(mm(10), angle) / 10,
    tolerance: 0.0005,
    source: 'Machining trade page on drill point geometry',
    standing: 'read',
  })),
  {
    what: 'Point of a no. 37 drill, 0.104 in, 118°',
    unit: { name: 'in', decimals: 3 },
    published: 0.031,
    computed: twistPoint(inches(0.104), 118) / 25.4,
    tolerance: 0.0005,
    source: 'Worked examples beside a home machinists’ drill chart',
    standing: 'read',
  },
  {
    // The example rounds half the diameter to 0.203 in; the drill is 0.40625 in.
    what: 'Point of a 13/32 in drill, 135°: 0.203 in × tan 22.5°',
    unit: { name: 'in', decimals: 3 },
    published: 0.203 * 0.41421,
    computed: twistPoint(inches(13 / 32), 135) / 25.4,
    tolerance: 0.0005,
    source: 'Worked examples beside a home machinists’ drill chart',
    standing: 'read',
  },
];
