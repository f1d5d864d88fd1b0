import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type JointPlan, type Mm, inches, mm, planJoint } from '../../src/core/index.ts';
import type { Sheet } from '../../src/diagrams/drafting/ink.ts';
import type { Unit } from '../../src/diagrams/drafting/reading.ts';
import { arrangeLayout } from '../../src/diagrams/layout/arrange.ts';
import { layoutShapes } from '../../src/diagrams/layout/geometry.ts';
import { arrangeSection } from '../../src/diagrams/section/arrange.ts';
import { sectionShapes } from '../../src/diagrams/section/geometry.ts';
import { arrangeStop } from '../../src/diagrams/stop/arrange.ts';
import { stopShapes } from '../../src/diagrams/stop/geometry.ts';
import { KINDS, absurdSpec, ordinaryJoint } from '../support/joints.ts';
import { labelFaults } from '../support/labelFaults.ts';

type Shown = Unit | 'both';

const DRAWINGS: Record<string, (plan: JointPlan, width: number, unit: Shown) => Sheet> = {
  section: (plan, width, unit) => {
    const shapes = sectionShapes(plan);
    return arrangeSection(shapes, shapes, width, { unit, set: [] });
  },
  'section apart': (plan, width, unit) =>
    arrangeSection(sectionShapes(plan), sectionShapes(plan, 1), width, { unit, set: [] }),
  layout: (plan, width, unit) => arrangeLayout(layoutShapes(plan), width, unit),
  stop: (plan, width, unit) =>
    arrangeStop([stopShapes(plan, 'a'), stopShapes(plan, 'b')], width, { unit, set: [] }),
};

const THICKNESSES: readonly Mm[] = [
  ...[1 / 2, 5 / 8, 3 / 4, 13 / 16, 1, 5 / 4, 3 / 2].map(inches),
  ...[12, 15, 18, 19, 22, 27, 32, 40].map(mm),
];
const WIDTHS = [320, 640, 960];
const UNITS: readonly Shown[] = ['in', 'mm', 'both'];

describe.each(Object.entries(DRAWINGS))('%s', (_, draw) => {
  test.each(KINDS)('%s: numbers stay apart and on the sheet', (kind) => {
    for (const thickness of THICKNESSES) {
      for (const system of ['in', 'mm'] as const) {
        const plan = planJoint(ordinaryJoint(kind, system, thickness));
        for (const width of WIDTHS) {
          for (const unit of UNITS) {
            const found = labelFaults(draw(plan, width, unit));
            expect(found, `${thickness} mm, ${system}, ${width} px, ${unit}`).toEqual([]);
          }
        }
      }
    }
  });

  test('draws whatever a learner enters', () => {
    fc.assert(
      fc.property(absurdSpec, fc.constantFrom(...WIDTHS), (spec, width) => {
        const sheet = draw(planJoint(spec), width, 'both');
        const all = [sheet.height, ...sheet.labels.flatMap((label) => [label.x, label.y])];
        expect(all.every(Number.isFinite)).toBe(true);
        expect(sheet.strokes.filter((stroke) => /NaN|Infinity/.test(stroke.d))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
