import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointPlan, type JointSpec, mm, planJoint } from '../../../src/core/index.ts';
import { absurdSpec, sensibleSpec } from '../../support/joints.ts';

/** Every number in a plan, with the path to it. */
function numbers(value: unknown, path = ''): readonly (readonly [path: string, value: number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => numbers(each, `${path}.${key}`));
}

function hasError(plan: JointPlan): boolean {
  return plan.cautions.some(({ severity }) => severity === 'error');
}

describe('any plan', () => {
  it('has only finite numbers and no negative depth, whatever was typed', () => {
    fc.assert(
      fc.property(absurdSpec, (spec) => {
        const plan = planJoint(spec);
        const { spec: _asGiven, ...reckoned } = plan;
        for (const [path, value] of numbers(reckoned)) {
          expect(Number.isFinite(value), path).toBe(true);
        }
        for (const member of [plan.a, plan.b]) {
          expect(member.engagement).toBeGreaterThanOrEqual(0);
          expect(member.holeDepth).toBeGreaterThanOrEqual(0);
          expect(member.stop).toBeGreaterThanOrEqual(0);
        }
        expect(plan.ok).toBe(!hasError(plan));
      }),
      { numRuns: 4000 },
    );
  });

  it('never lets a hole out of the far face without an error', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleSpec, absurdSpec), (spec) => {
        const plan = planJoint(spec);
        if (hasError(plan)) return;
        for (const member of [plan.a, plan.b]) {
          expect(member.woodLeft).toBeGreaterThanOrEqual(plan.spec.leave - 1e-6);
          expect(member.engagement).toBeGreaterThanOrEqual(plan.pin!.diameter - 1e-6);
          if (member.wall !== null) expect(member.wall).toBeGreaterThan(0);
        }
      }),
      { numRuns: 4000 },
    );
  });

  it('splits exactly the pin that it plans', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleSpec, absurdSpec), (spec) => {
        const { a, b, pin } = planJoint(spec);
        if (pin === null) return;
        expect(a.engagement + b.engagement).toBeCloseTo(pin.length, 6);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps its pins on the joint, in order, and marks both boards alike', () => {
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const plan = planJoint(spec);
        if (!plan.ok) return;
        const { positions, marks, holes } = plan;
        const { jointLength, layout, bit } = plan.spec;
        expect(marks).toHaveLength(positions.length);
        expect(holes.map(({ along }) => along)).toEqual(positions);
        for (const [i, position] of positions.entries()) {
          expect(position).toBeGreaterThanOrEqual(bit.diameter / 2 - 1e-6);
          expect(position).toBeLessThanOrEqual(jointLength - bit.diameter / 2 + 1e-6);
          expect(Math.abs(marks[i]! - position)).toBeLessThanOrEqual(layout.graduation / 2 + 1e-6);
          const before = positions[i - 1];
          if (before !== undefined) {
            expect(position - before).toBeGreaterThanOrEqual(bit.diameter - 1e-6);
            expect(position - before).toBeLessThanOrEqual(
              Math.max(layout.maxPitch, layout.minPitch) + 1e-6,
            );
          }
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('never changes its spec, and answers the same twice', () => {
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const before = JSON.stringify(spec);
        const first = JSON.stringify(planJoint(spec));
        expect(JSON.stringify(planJoint(spec))).toBe(first);
        expect(JSON.stringify(spec)).toBe(before);
      }),
      { numRuns: 300 },
    );
  });

  it('makes each number and its working together', () => {
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const plan = planJoint(spec);
        if (plan.pin === null) return;
        for (const side of ['a', 'b'] as const) {
          for (const [name, value] of Object.entries(plan[side])) {
            if (value === null) continue;
            const steps = plan.working.filter(({ id }) => id === `${side}.${name}`);
            expect(steps.map(({ result }) => result)).toEqual([value]);
          }
        }
      }),
      { numRuns: 500 },
    );
  });
});

/** The branches that a plan went through: the rules that can say why a number jumped. */
function rules(plan: JointPlan): string {
  return JSON.stringify([
    plan.pin,
    plan.positions.length,
    plan.cautions.map(({ code }) => code),
    plan.working.map(({ id, rule, source }) => [id, rule, source]),
  ]);
}

/** What a learner reads off a plan. */
function readings(plan: JointPlan): readonly number[] {
  const member = ({ limit: _, wall, ...rest }: JointPlan['a']) => [
    ...Object.values(rest),
    wall ?? 0,
  ];
  return [
    ...member(plan.a),
    ...member(plan.b),
    ...plan.positions,
    ...plan.secondRow,
    ...plan.holes.flatMap(({ acrossA, acrossB }) => [acrossA, acrossB]),
  ];
}

/** The farthest that any number moved. */
function leap(before: readonly number[], after: readonly number[]): number {
  return Math.max(...before.map((value, i) => Math.abs(after[i]! - value)));
}

/** Every length of a spec, each nudged by a hair in turn. */
function nudged(spec: JointSpec, hair: number): readonly JointSpec[] {
  const text = JSON.stringify(spec);
  const count = numbers(spec).length;
  return Array.from({ length: count }, (_, target) => {
    let at = -1;
    const copy = JSON.parse(text, (_key, value: unknown) => {
      if (typeof value !== 'number') return value;
      at += 1;
      return at === target ? value + hair : value;
    }) as JointSpec;
    // A leg stays square.
    return copy.kind === 'leg' ? { ...copy, b: { ...copy.b, width: copy.b.thickness } } : copy;
  });
}

describe('moving any input by a hair', () => {
  it('moves every number by about a hair, or a rule says why not', () => {
    const hair = 1e-4;
    // The steepest slopes of the model are those of a 60° point: under 2 mm a degree, and √2.
    const most = 4 * hair;
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const plan = planJoint(spec);
        for (const next of nudged(spec, hair)) {
          const moved = planJoint(next);
          if (rules(moved) !== rules(plan)) continue;
          expect(leap(readings(plan), readings(moved))).toBeLessThan(most);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('meets no step where one branch gives way to the next', () => {
    // Across the boundaries of the split and the layout, on a fine sweep, nothing leaps.
    const sweep = (make: (x: number) => JointSpec, from: number, to: number) => {
      const step = 0.02;
      let before = readings(planJoint(make(from)));
      for (let x = from + step; x < to; x += step) {
        const now = readings(planJoint(make(x)));
        // Another number of pins is a rule of its own.
        if (now.length === before.length) {
          expect(leap(before, now), `at ${x}`).toBeLessThan(4 * step);
        }
        before = now;
      }
    };
    const pin = { diameter: mm(8), length: mm(40) };
    const b = { thickness: mm(18), width: mm(140), length: mm(600) };
    sweep(
      (x) => ({ kind: 'corner', system: 'mm', pin, a: b, b: { ...b, thickness: mm(x) } }),
      13,
      60,
    );
    sweep((x) => ({ kind: 'edge', system: 'mm', pin, a: { ...b, width: mm(x) }, b }), 20, 80);
    sweep((x) => ({ kind: 'corner', system: 'mm', pin, a: { ...b, width: mm(x) }, b }), 60, 139);
    sweep((x) => ({ kind: 'frame', system: 'mm', pin, a: { ...b, width: mm(x) }, b }), 33, 200);
  });
});
