import { describe, expect, it } from 'vitest';
import { inches, mm } from '../../../src/core/length/mm.ts';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { draftOf } from '../../../src/practice/made/makeQuestion.ts';
import { isJoint } from '../../../src/practice/questions/setupKinds.ts';
import { misconceptions } from '../contentFiles.ts';

const seeds = Array.from({ length: 12 }, (_, seed) => seed);

/** A joint that a draft is about, at its top or inside a calculation. */
function jointIn(template: (typeof templates)[number], seed: number, limits: object) {
  const { setup } = draftOf(template, seed, 'in', limits);
  if (!setup || isJoint(setup)) return setup;
  return (setup.values as { joint?: { kind: string } }).joint;
}

describe('what a class has', () => {
  it('keeps every question to the joints that the class makes', () => {
    for (const template of templates) {
      for (const kind of template.joints) {
        for (const seed of seeds.slice(0, 3)) {
          const joint = jointIn(template, seed, { joints: [kind] });
          if (joint) expect([template.id, joint.kind]).toEqual([template.id, kind]);
        }
      }
    }
  });

  it('keeps the boards to the thicknesses that the class has', () => {
    const limits = { thicknesses: [inches(7 / 8), inches(11 / 16)] };
    for (const id of ['stop-for-a-board', 'rest-in-the-end']) {
      const template = templates.find((each) => each.id === id)!;
      for (const seed of seeds) {
        const { setup } = draftOf(template, seed, 'in', limits);
        expect(limits.thicknesses).toContain(setup && isJoint(setup) && setup.a.thickness);
      }
    }
  });

  it('takes a wider tolerance for a typed length, and tells no mistake from it', () => {
    const tolerance = mm(25.4 / 32);
    const options = { system: 'in', level: 'own', misconceptions, limits: { tolerance } } as const;
    for (const seed of seeds) {
      const question = makeQuestion('stop-for-a-board', seed, options);
      if (question.kind !== 'length') throw new Error('a length is asked for');
      expect(question.tolerance).toBe(tolerance);
      for (const { length } of question.mistakes) {
        expect(Math.abs(length - question.right)).toBeGreaterThanOrEqual(2 * tolerance - 1e-6);
      }
      expect(question.made?.limits).toEqual({ tolerance });
    }
  });

  it('leaves a rule its own tolerance', () => {
    const options = { system: 'in', level: 'own', misconceptions } as const;
    const limits = { tolerance: mm(2) };
    const { made: _made, ...usual } = makeQuestion('read-the-rule', 5, options);
    expect(makeQuestion('read-the-rule', 5, { ...options, limits })).toMatchObject(usual);
  });
});
