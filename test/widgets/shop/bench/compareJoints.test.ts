import { describe, expect, it } from 'vitest';
import { inches, planJoint } from '../../../../src/core/index.ts';
import { compareJoints } from '../../../../src/widgets/shop/bench/compareJoints.ts';
import { KINDS, ordinaryJoint } from '../../../support/joints.ts';

const corner = ordinaryJoint('corner', 'in', inches(3 / 4));
const thicker = { ...corner, b: { ...corner.b, thickness: inches(1) } };

describe('two joints compared', () => {
  it.each(KINDS)('finds no difference between a %s joint and itself', (kind) => {
    const plan = planJoint(ordinaryJoint(kind, 'mm', inches(3 / 4)));
    const { set, follows, onlyHere, onlyAside, alike } = compareJoints(plan, plan);
    expect([...set, ...follows, ...onlyHere, ...onlyAside]).toEqual([]);
    expect(alike).toContain('Thickness of A');
  });

  it('names what was set otherwise, what follows, and by how much', () => {
    const [here, aside] = [planJoint(thicker), planJoint(corner)];
    const { set, follows, alike } = compareJoints(here, aside);
    expect(set.map(({ label }) => label)).toEqual(['Thickness of B']);
    expect(set[0]!.longer).toBeCloseTo(6.35, 9);
    const held = follows.find(({ label }) => label === 'Pin held in B')!;
    expect(held.here).toEqual({ mm: here.b.engagement });
    expect(held.longer).toBeCloseTo(here.b.engagement - aside.b.engagement, 9);
    expect(alike).toContain('Bit');
    expect(alike).not.toContain('Overhang');
  });

  it('turns every difference around when they are swapped', () => {
    const [here, aside] = [planJoint(thicker), planJoint(corner)];
    const back = compareJoints(aside, here).follows;
    expect(compareJoints(here, aside).follows).toEqual(
      back.map(({ label, here: one, aside: other, longer }) => ({
        ...{ label, here: other, aside: one },
        longer: longer === null ? null : -longer,
      })),
    );
  });

  it('compares joints of two kinds, and one that can’t be planned', () => {
    const leg = planJoint(ordinaryJoint('leg', 'in', inches(3 / 4)));
    const nothing = planJoint({ ...corner, a: { ...corner.a, thickness: inches(0) } });
    expect(nothing.holes).toEqual([]);
    const kinds = compareJoints(leg, planJoint(corner)).set[0]!;
    expect([kinds.label, kinds.here, kinds.aside]).toEqual(['Joint', 'Leg', 'Corner']);
    const { follows, onlyAside } = compareJoints(planJoint(corner), nothing);
    expect(follows.find(({ label }) => label === 'Wood left in B')!.aside).toBeNull();
    expect(onlyAside.map(({ severity }) => severity)).toContain('error');
  });
});
