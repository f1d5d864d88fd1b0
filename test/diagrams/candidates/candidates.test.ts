import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import { type JointSpec, inches, mm, planJoint } from '../../../src/core/index.ts';
import { arrangeCandidates } from '../../../src/diagrams/candidates/arrange.ts';
import Candidates from '../../../src/diagrams/candidates/Candidates.svelte';
import { describeCandidates } from '../../../src/diagrams/candidates/describe.ts';
import { candidatesOf, verdictText } from '../../../src/diagrams/candidates/geometry.ts';
import { KINDS, ordinaryJoint } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const planAt = (thickness: number, more: Partial<JointSpec> = {}) =>
  planJoint({ ...ordinaryJoint('corner', 'in', mm(thickness)), pin: 'choose', ...more });

const verdicts = (thickness: number, more: Partial<JointSpec> = {}) =>
  candidatesOf(planAt(thickness, more)).candidates.map(verdictText);

describe('pins in stock, drawn in the end of the board', () => {
  it('are each diameter once, the thinnest first, with what became of its best length', () => {
    expect(verdicts(inches(3 / 4))).toEqual(['too thin', 'fits too', 'taken', 'too thick']);
    expect(verdicts(inches(1 / 2))).toEqual(['taken', 'too thick', 'too thick', 'too thick']);
  });

  it('have half of what the pin leaves of the board on either side', () => {
    for (const { diameter, beside } of candidatesOf(planAt(19)).candidates) {
      expect(2 * beside + diameter).toBeCloseTo(19, 9);
    }
  });

  it('follow the rule that is asked for, and the ratio outside the table', () => {
    expect(candidatesOf(planAt(19)).rule).toBe('shop-table');
    expect(candidatesOf(planAt(19, { diameterRule: 'ratio' })).rule).toBe('ratio');
    expect(candidatesOf(planAt(inches(3))).rule).toBe('ratio');
    const { least, most } = candidatesOf(planAt(24, { diameterRule: 'ratio' }));
    expect([least, most]).toEqual([8, 12]);
  });

  it('go by the thinner board where both are drilled in their edges', () => {
    const edge = ordinaryJoint('edge', 'in', inches(3 / 4));
    const thin = { ...edge, pin: 'choose' as const, b: { ...edge.b, thickness: inches(1 / 2) } };
    expect(candidatesOf(planJoint(thin))).toMatchObject({ thickness: 12.7, grain: 'long' });
  });
});

test.each(KINDS)('%s: words stay apart and on the sheet', (kind) => {
  for (const system of ['in', 'mm'] as const) {
    for (const thickness of [4, 9.5, 12.7, 15, 19, 22.2, 30, 44, 120]) {
      for (const diameterRule of ['shop-table', 'ratio'] as const) {
        const plan = planJoint({
          ...ordinaryJoint(kind, system, mm(thickness)),
          pin: 'choose',
          diameterRule,
        });
        for (const width of [280, 320, 480, 640, 820]) {
          for (const unit of ['in', 'mm', 'both'] as const) {
            const found = labelFaults(arrangeCandidates(candidatesOf(plan), width, { unit }));
            expect(found, `${thickness} mm, ${system}, ${width} px, ${unit}`).toEqual([]);
          }
        }
      }
    }
  }
});

test('says in words what became of each pin, so that nothing hangs on the drawing', () => {
  const says = describeCandidates(candidatesOf(planAt(inches(3 / 4))), 'in');
  expect(says).toContain('A pin 3/8 inch across, 3/16 inch of wood on either side: taken');
  expect(says).toContain('A pin 1/2 inch across, 1/8 inch of wood on either side: too thick');
  const { body } = render(Candidates, { props: { plan: planAt(19), unit: 'both', width: 320 } });
  expect(body).toContain('role="img"');
  expect(body).not.toMatch(/\sstyle=/);
});
