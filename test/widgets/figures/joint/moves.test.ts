import { describe, expect, test } from 'vitest';
import { inches, mm, plainText, planJoint } from '../../../../src/core/index.ts';
import { jointSentence } from '../../../../src/widgets/figures/joint/jointSentence.ts';
import { LENGTH_MOVES, MOVES, applies } from '../../../../src/widgets/figures/joint/moves.ts';
import { KINDS, ordinaryJoint } from '../../../support/joints.ts';

const cases = KINDS.flatMap((kind) =>
  MOVES.filter((move) => move !== 'margin' && applies(move, kind) && LENGTH_MOVES[move]).map(
    (move) => [kind, move] as const,
  ),
);

describe('what a reader may change about a joint', () => {
  test.each(cases)('%s: %s is read back as it was set', (kind, move) => {
    const { set, value, least, most } = LENGTH_MOVES[move]!;
    const spec = ordinaryJoint(kind, 'in', inches(3 / 4));
    const before = JSON.stringify(spec);
    const middle = mm((least + most) / 2);
    expect(value(planJoint(set(spec, middle)))).toBeCloseTo(middle, 6);
    expect(JSON.stringify(spec)).toBe(before);
  });

  test('the first pin stands where it is set, unless the row has no room for that', () => {
    const { set, value } = LENGTH_MOVES.margin!;
    const joint = (margin: number) =>
      planJoint(set(ordinaryJoint('corner', 'in', inches(3 / 4)), mm(margin)));
    expect(value(joint(30))).toBeCloseTo(30, 9);
    expect(value(joint(200))).toBeLessThan(140);
  });

  test('a leg stays square', () => {
    const spec = ordinaryJoint('leg', 'mm', mm(18));
    const { b } = LENGTH_MOVES['b.thickness']!.set(spec, mm(50));
    expect([b.thickness, b.width]).toEqual([50, 50]);
  });

  test.each([
    ['setback', ['leg']],
    ['overhang', ['corner']],
    ['at', ['tee', 'frame']],
    ['pin', KINDS],
  ] as const)('%s is there for %j alone', (move, kinds) => {
    expect(KINDS.filter((kind) => applies(move, kind))).toEqual(
      KINDS.filter((kind) => (kinds as readonly string[]).includes(kind)),
    );
  });
});

describe('a joint in a sentence', () => {
  const says = (spec: Parameters<typeof planJoint>[0]) =>
    plainText(jointSentence(planJoint(spec)), 'mm');
  const pin = { diameter: mm(8), length: mm(40) };

  test('says once what both boards have alike', () => {
    expect(says({ ...ordinaryJoint('edge', 'mm', mm(18)), pin })).toMatch(
      /A and B each hold 20 mm\. Drill A’s edge and B’s edge 23 mm deep\.$/,
    );
  });

  test('says for each board what they have not', () => {
    const plan = planJoint({ ...ordinaryJoint('corner', 'mm', mm(18)), pin });
    expect(plan.a.engagement).toBeGreaterThan(plan.b.engagement);
    expect(plainText(jointSentence(plan), 'mm')).toMatch(
      /A holds .* of each and B .*Drill A’s end .* deep and B’s face /,
    );
  });

  test('names no number of a joint that can’t be made', () => {
    const plan = planJoint({
      ...ordinaryJoint('corner', 'mm', mm(12)),
      pin: { diameter: mm(12), length: mm(60) },
    });
    expect(plan.ok).toBe(false);
    expect(plainText(jointSentence(plan), 'mm')).not.toMatch(/\d/);
  });
});
