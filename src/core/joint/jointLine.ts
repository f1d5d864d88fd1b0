import { lessThan, mm } from '../length/mm.ts';
import { fixedLength, product, quantity, root } from '../working/expression.ts';
import { reckon } from '../working/reckon.ts';
import { say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import { type Finding, finding } from './finding.ts';
import type { Hole, JointSpec } from './types.ts';

/** The side of A that is drilled: its end or its long edge. */
export function drilledSide(spec: JointSpec): 'end' | 'edge' {
  if (spec.kind === 'edge') return 'edge';
  if (spec.kind === 'corner' || spec.kind === 'tee') return spec.drilled ?? 'end';
  return 'end';
}

/** Length of the joint line, along which the pins stand. */
export function reckonJointLine(spec: JointSpec): WorkingStep {
  const step = { id: 'jointLength', label: 'Length of the joint', symbol: 'J' } as const;
  if (spec.jointLength !== undefined) {
    return reckon({ ...step, formula: fixedLength(spec.jointLength), source: 'setting' });
  }
  switch (spec.kind) {
    case 'edge':
      return reckon({
        ...step,
        formula: quantity('length', Math.min(spec.a.length, spec.b.length)),
        source: 'geometry',
        rule: 'the shorter board',
      });
    case 'miter':
      return reckon({
        ...step,
        formula: product(quantity('W', spec.a.width), root(2)),
        source: 'geometry',
        rule: 'the cut at 45° across the face width',
      });
    default:
      return drilledSide(spec) === 'end'
        ? reckon({
            ...step,
            formula: quantity('width', spec.a.width),
            source: 'geometry',
            rule: 'the width of A, whose end is drilled',
          })
        : reckon({
            ...step,
            formula: quantity('length', spec.a.length),
            source: 'geometry',
            rule: 'the length of A, whose edge is drilled',
          });
  }
}

/** How far B reaches along the joint line, mm. */
function reachOfB(spec: JointSpec, line: number): number {
  switch (spec.kind) {
    case 'edge':
    case 'frame':
    case 'leg':
      return spec.b.length;
    case 'corner':
    case 'tee':
      return drilledSide(spec) === 'end' ? spec.b.width : spec.b.length;
    case 'miter':
      return line;
  }
}

/**
 * Cautions for holes that would lie off the end of a board. Where the user gave the length of
 * the joint, only the joint line itself is checked and board B is left to them.
 */
export function offBoard(
  spec: JointSpec,
  line: WorkingStep,
  holes: readonly Hole[],
  bit: number,
): readonly Finding[] {
  const outside = (along: number, reach: number) =>
    lessThan(along, bit / 2) || lessThan(reach, along + bit / 2);
  if (holes.some((hole) => outside(hole.along, line.result))) {
    return [
      finding(
        'off-board',
        'error',
        say`A hole would break out of the end of the joint, which is ${line.result} long.`,
        say`Set a larger end margin, or take a thinner pin.`,
      ),
    ];
  }
  const reach = reachOfB(spec, line.result);
  if (holes.some((hole) => outside(hole.alongB, reach))) {
    const given = spec.jointLength !== undefined;
    return [
      finding(
        'off-board',
        given ? 'caution' : 'error',
        say`Board B reaches ${mm(reach)} along the joint; a hole would lie beyond it.`,
        say`Set the length of the joint to where both boards really meet.`,
      ),
    ];
  }
  return [];
}
