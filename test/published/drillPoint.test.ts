import { describe, expect, it } from 'vitest';
import { type Mm, inches, mm, planJoint } from '../../src/core/index.ts';
import { ordinaryJoint } from '../support/joints.ts';

/** The point of a twist bit as the planner reckons it, mm. */
function twistPoint(diameter: Mm, angle: number): number {
  const spec = ordinaryJoint('edge', 'mm', mm(30));
  return planJoint({ ...spec, bit: { diameter, point: { kind: 'twist', angle } } }).spec.bit.tip;
}

describe('drill point length, machining trade page on drill point geometry (read)', () => {
  it.each([
    [118, 0.3],
    [135, 0.207],
    [90, 0.5],
  ])('a %d° point is %d of the diameter', (angle, share) => {
    expect(twistPoint(mm(10), angle) / 10).toBeCloseTo(share, 3);
  });
});

describe('drill point length, worked examples beside a home machinists’ drill chart (read)', () => {
  it('a no. 37 drill, 0.104 in, 118°: 0.031 in', () => {
    expect(twistPoint(inches(0.104), 118) / 25.4).toBeCloseTo(0.031, 3);
  });
  it('a 13/32 in drill, 135°: 0.203 in × tan 22.5°', () => {
    // The example rounds half the diameter to 0.203 in; the drill is 0.40625 in.
    expect(twistPoint(inches(13 / 32), 135) / 25.4).toBeCloseTo(0.203 * 0.41421, 3);
  });
});
