import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointPlan, type JointSpec, planJoint } from '../../../src/core/index.ts';
import { inches, mm } from '../../../src/core/length/mm.ts';
import { classicMistakes } from '../../../src/core/trial/classicMistakes.ts';
import { closingOdds } from '../../../src/core/trial/closingOdds.ts';
import { type BenchSetup, drill, soundSetup } from '../../../src/core/trial/drill.ts';
import { dryFit } from '../../../src/core/trial/dryFit.ts';
import type { DrilledHole, Trial } from '../../../src/core/trial/trial.ts';
import { KINDS, ordinaryJoint, sensibleSpec } from '../../support/joints.ts';

/** The plan for a spec with a pin that goes in its holes; skips what can't be made. */
function makeable(spec: JointSpec): JointPlan {
  const b = spec.kind === 'miter' ? { ...spec.b, width: spec.a.width } : spec.b;
  const plan = planJoint({ ...spec, b, pin: 'choose', bit: {} });
  fc.pre(plan.ok);
  return plan;
}

const hole: DrilledHole = {
  along: mm(30),
  across: mm(9),
  diameter: mm(8),
  depth: mm(23),
  lean: { along: 0, across: 0 },
  limit: mm(100),
  tip: mm(2),
};

function trialOf(
  pins: readonly { a?: Partial<DrilledHole>; b?: Partial<DrilledHole> }[],
  change: Partial<Trial> = {},
): Trial {
  return {
    kind: 'edge',
    length: mm(300),
    mayTurn: true,
    pins: pins.map(({ a, b }, j) => ({
      pin: { diameter: mm(8), length: mm(40) },
      a: { ...hole, along: mm(30 + 60 * j), ...a },
      b: { ...hole, along: mm(30 + 60 * j), ...b },
    })),
    ...change,
  };
}

describe('dryFit', () => {
  it('closes what the planner planned, with zero gap, in every kind of joint', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const plan = makeable(spec);
        // Toward a miter's toe a mark rounded outward takes half a division off the wood left.
        fc.pre(
          plan.kind !== 'miter' || plan.a.woodLeft * Math.SQRT2 > plan.spec.layout.graduation / 2,
        );
        const outcome = dryFit(drill(soundSetup(plan)));
        seen.add(plan.kind);
        expect(outcome.gap).toBe(0);
        expect(outcome.closes).toBe(true);
        expect(outcome.endRoom).toBeCloseTo(2 * plan.spec.allowance, 6);
        for (const [j, pin] of outcome.pins.entries()) {
          expect(pin.engagement.a).toBeCloseTo(plan.a.engagement, 6);
          expect(pin.engagement.b).toBeCloseTo(plan.b.engagement, 6);
          if (plan.kind !== 'miter') {
            expect(pin.woodLeft.a).toBeCloseTo(plan.a.woodLeft, 6);
            expect(pin.woodLeft.b).toBeCloseTo(plan.b.woodLeft, 6);
          } else if (j === outcome.pins.length - 1) {
            const rounded = plan.spec.layout.graduation / 2 / Math.SQRT2;
            expect(Math.abs(pin.woodLeft.a / Math.SQRT2 - plan.a.woodLeft)).toBeLessThanOrEqual(
              rounded + 1e-6,
            );
          }
        }
        if (!plan.spec.guide.centering) {
          expect(outcome.step.start).toBeCloseTo(0, 9);
          expect(outcome.step.end).toBeCloseTo(0, 9);
          expect(outcome.faults).toEqual([]);
          expect(outcome.causes).toEqual([]);
        }
      }),
      { numRuns: 250 },
    );
    expect([...seen].sort()).toEqual([...KINDS].sort());
  });

  it('warns with the planner of the step that a centering guide makes', () => {
    const spec = ordinaryJoint('edge', 'mm', mm(18));
    const plan = planJoint({
      ...spec,
      b: { ...spec.b, thickness: mm(22) },
      guide: { centering: true },
    });
    const outcome = dryFit(drill(soundSetup(plan)));
    expect(Math.abs(outcome.step.start)).toBeCloseTo(2, 9);
    expect(outcome.causes.map(({ code }) => code)).toEqual(['centering-guide']);
  });

  it('stays open by the pin that is longest for its holes', () => {
    const outcome = dryFit(trialOf([{}, { b: { depth: mm(15) } }, {}]));
    expect(outcome.gap).toBeCloseTo(2, 9);
    expect(outcome.endRoom).toBeCloseTo(-2, 9);
    expect(outcome.closes).toBe(false);
    expect(outcome.fits).toBe(true);
    expect(outcome.causes[0]).toMatchObject({ code: 'holes', faults: ['gap'] });
  });

  it('shares the end room, as far as each hole is deep', () => {
    const [even, shallow] = dryFit(
      trialOf([{}, { a: { depth: mm(50) }, b: { depth: mm(1) } }]),
    ).pins;
    expect(even?.engagement).toEqual({ a: 20, b: 20 });
    expect(shallow?.engagement.a).toBe(40);
    expect(shallow?.engagement.b).toBe(0);
  });

  it('shifts at no cost where both boards share the shift', () => {
    const shifted = { across: mm(10.5), along: mm(31) };
    const outcome = dryFit(trialOf([{ a: shifted, b: shifted }]));
    expect(outcome.step).toEqual({ start: 0, end: 0 });
    expect(outcome.closes).toBe(true);
  });

  it('gives a tight pin no play in its tight hole, and does not close', () => {
    const outcome = dryFit(trialOf([{ a: { diameter: mm(7.8) } }, {}]));
    expect(outcome.pins[0]).toMatchObject({ tight: true, play: expect.closeTo(0.05, 9) as number });
    expect(outcome.closes).toBe(false);
    expect(outcome.faults[0]).toMatchObject({ code: 'tight', member: 'a', pins: [0] });
  });

  it('binds a pin whose holes lean apart by more than its clearance lets it', () => {
    // 0.1 mm of clearance over 20 mm in each hole: 0.01 in all.
    const lean = (across: number) => ({ lean: { along: 0, across } });
    expect(dryFit(trialOf([{ a: lean(0.0099) }])).pins[0]?.binds).toBe(false);
    expect(dryFit(trialOf([{ a: lean(0.0101) }])).pins[0]?.binds).toBe(true);
    const straight = dryFit(trialOf([{ a: lean(0.05), b: lean(-0.05) }]));
    expect(straight.pins[0]?.binds).toBe(false);
    expect(straight.pins[0]?.offset.across).toBeCloseTo(-1, 9);
  });

  it('takes a pin as measured, else 0.1 mm under its name', () => {
    const trial = trialOf([{}]);
    const measured = {
      ...trial,
      pins: trial.pins.map((each) => ({ ...each, pin: { ...each.pin, measured: mm(8.05) } })),
    };
    expect(dryFit(trial).pins[0]?.play).toBeCloseTo(0.1, 9);
    expect(dryFit(measured).pins[0]).toMatchObject({ tight: true, play: 0 });
  });

  it('turns a board whose row runs off, and shows a step that grows', () => {
    const off = [0, 1, 2].map((j) => ({ b: { across: mm(9 + 0.3 * j) } }));
    const free = dryFit(trialOf(off));
    expect(free.fits).toBe(true);
    expect(free.turn).toBeCloseTo(0.005, 9);
    expect(free.step.end - free.step.start).toBeCloseTo(0.005 * 300, 9);
    const held = dryFit(trialOf(off, { mayTurn: false }));
    expect(held.fits).toBe(false);
    expect(held.turn).toBe(0);
    expect(held.miss).toBeCloseTo(0.3 - 0.1, 9);
  });

  it('leaves its input as it was', () => {
    const trial = trialOf([{}, { a: { across: mm(9.4) } }]);
    const before = structuredClone(trial);
    dryFit(trial);
    expect(trial).toEqual(before);
  });

  it('never gives NaN or infinity for finite holes', () => {
    const length = fc.double({ min: -500, max: 500, noNaN: true });
    const size = fc.double({ min: 0.2, max: 60, noNaN: true });
    const depth = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 100, noNaN: true }));
    const slope = fc.double({ min: -0.2, max: 0.2, noNaN: true });
    const any = fc.record({
      along: length,
      across: length,
      diameter: size,
      depth,
      lean: fc.record({ along: slope, across: slope }),
      limit: length,
      tip: depth,
    }) as unknown as fc.Arbitrary<DrilledHole>;
    fc.assert(
      fc.property(
        fc.array(fc.record({ a: any, b: any }), { minLength: 1, maxLength: 8 }),
        fc.boolean(),
        (pins, mayTurn) => {
          const outcome = dryFit(trialOf(pins, { mayTurn }));
          JSON.stringify(outcome, (_, value: unknown) => {
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
            return value;
          });
        },
      ),
      { numRuns: 500 },
    );
  });

  it('names the field of a programmer’s mistake', () => {
    expect(() => dryFit(trialOf([]))).toThrow('pins.length');
    expect(() => dryFit(trialOf([{ a: { across: mm(NaN) } }]))).toThrow('pins[0].a.across');
    expect(() => dryFit(trialOf([{ b: { depth: mm(-1) } }]))).toThrow(RangeError);
    expect(() => dryFit(trialOf([{}], { length: mm(Infinity) }))).toThrow(TypeError);
  });
});

/** Boards of unequal thickness and length, and a guide off the middle: where mistakes show. */
const unequal: JointSpec = {
  kind: 'edge',
  system: 'mm',
  a: { thickness: mm(18), width: mm(90), length: mm(600) },
  b: { thickness: mm(20), width: mm(110), length: mm(640) },
  guide: { offset: mm(0.4) },
};
const corner: JointSpec = {
  kind: 'corner',
  system: 'in',
  a: { thickness: inches(3 / 4), width: inches(11.25), length: inches(24) },
  b: { thickness: inches(3 / 4), width: inches(11.25), length: inches(30) },
};

function mistake(plan: JointPlan, code: string): BenchSetup {
  const found = classicMistakes.find((each) => each.code === code);
  if (found === undefined) throw new Error(`no ${code}`);
  return found.make(soundSetup(plan));
}

describe('a guide off the middle by o, with one board turned over', () => {
  const spec: JointSpec = { ...unequal, b: { ...unequal.a } };
  const offset = 0.4;

  it('shows as 2 o in the step, and as nothing where both boards are turned', () => {
    const setup = mistake(planJoint(spec), 'turned-over');
    const outcome = dryFit(drill(setup));
    expect(Math.abs(outcome.step.start)).toBeCloseTo(2 * offset, 9);
    expect(Math.abs(outcome.step.end)).toBeCloseTo(2 * offset, 9);
    expect(outcome.fits).toBe(true);
    expect(outcome.causes).toMatchObject([
      { code: 'turned-over', members: ['b'], size: expect.closeTo(2 * offset, 9) as number },
    ]);
    const both = dryFit(drill({ ...setup, a: { ...setup.a, face: 'other' } }));
    expect(both.step.start).toBeCloseTo(0, 9);
    expect(both.causes).toEqual([]);
  });

  it('has the odds of a bias of 2 o', () => {
    const plan = planJoint(spec);
    const outcome = dryFit(drill(mistake(plan, 'turned-over')));
    const odds = {
      positions: plan.positions,
      radialPlay: outcome.pins.map(({ play }) => play),
      sigmaAlong: mm(0),
      sigmaAcross: mm(0),
      length: plan.spec.jointLength,
      mayTurn: true,
      trials: 10,
      seed: 1,
    };
    const offsetAcross = outcome.pins[0]?.offset.across ?? mm(NaN);
    const biased = (flushTolerance: number) =>
      closingOdds({
        ...odds,
        flushTolerance: mm(flushTolerance),
        bias: { along: mm(0), across: offsetAcross },
      });
    expect(Math.abs(offsetAcross)).toBeCloseTo(2 * offset, 9);
    expect(biased(0.79).flush.probability).toBe(0);
    expect(biased(0.81).flush.probability).toBe(1);
  });
});

describe('each classic mistake', () => {
  const shown: Readonly<Record<string, JointSpec>> = {
    'mixed-systems': {
      ...unequal,
      pin: { diameter: mm(10), length: mm(40) },
      bit: { diameter: mm(10) },
    },
    'forgot-bushing': corner,
    'forgot-allowance': corner,
    'same-stop': corner,
    'no-stop': corner,
    'stop-slipped': corner,
    'turned-over': unequal,
    'opposite-ends': unequal,
    'guide-rocked': corner,
  };

  it.each(classicMistakes)(
    '$title: gives its own cause, and mending it mends the joint',
    (each) => {
      const plan = planJoint(shown[each.code] as JointSpec);
      expect(plan.ok).toBe(true);
      const outcome = dryFit(drill(each.make(soundSetup(plan))));
      expect(outcome.faults.length).toBeGreaterThan(0);
      expect(outcome.causes.map(({ code }) => code)).toEqual([each.code]);
      const explained = new Set(outcome.causes.flatMap(({ faults }) => faults));
      expect(outcome.faults.every(({ code }) => explained.has(code))).toBe(true);
    },
  );

  const faultsOf = (code: string): Partial<Record<string, number>> => {
    const plan = planJoint(shown[code] as JointSpec);
    const { faults } = dryFit(drill(mistake(plan, code)));
    return Object.fromEntries(faults.map((fault) => [fault.code, fault.size]));
  };

  it('shows what it should: the bushing as a gap', () => {
    const plan = planJoint(corner);
    const { gap } = dryFit(drill(mistake(plan, 'forgot-bushing')));
    const shallow = Math.max(0, plan.a.holeDepth - 25.4) + Math.max(0, plan.b.holeDepth - 25.4);
    expect(gap).toBeCloseTo((plan.pin?.length ?? 0) - shallow, 9);
  });
  it('the allowance as no room at the end of the pin, without a gap', () => {
    const outcome = dryFit(drill(mistake(planJoint(corner), 'forgot-allowance')));
    expect(outcome.gap).toBe(0);
    expect(outcome.endRoom).toBeCloseTo(0, 9);
    expect(faultsOf('forgot-allowance')).toEqual({
      'short-end-room': expect.closeTo(6.35, 9) as number,
    });
  });
  it('one stop for both boards as a point through the face', () => {
    const plan = planJoint(corner);
    expect(faultsOf('same-stop')['breakthrough']).toBeCloseTo(
      plan.a.holeDepth - plan.b.holeDepth - plan.b.woodLeft,
      9,
    );
  });
  it('a slipped stop as a point through the face at every hole but the first', () => {
    const plan = planJoint(corner);
    const { faults } = dryFit(drill(mistake(plan, 'stop-slipped')));
    const through = faults.find(({ code }) => code === 'breakthrough');
    expect(through?.size).toBeCloseTo(2, 9);
    expect(through?.pins).toEqual(plan.holes.map((_, j) => j).slice(1));
  });
  it('10 mm in 3/8 in as tight, 3/8 in in 10 mm as loose, 8 mm against 5/16 in as nothing', () => {
    expect(faultsOf('mixed-systems')).toHaveProperty('tight');
    const codes = (diameter: number): readonly string[] => {
      const pin = { diameter: mm(diameter), length: mm(40) };
      const plan = planJoint({ ...unequal, pin, bit: { diameter: mm(diameter) } });
      return dryFit(drill(mistake(plan, 'mixed-systems'))).faults.map(({ code }) => code);
    };
    expect(codes(9.525)).toContain('loose');
    expect(codes(9.525)).not.toContain('tight');
    expect(codes(8)).toEqual([]);
    expect(codes(7.9375)).toEqual([]);
  });
  it('a rule on opposite ends as holes that miss or boards that stand off along the joint', () => {
    const outcome = dryFit(drill(mistake(planJoint(unequal), 'opposite-ends')));
    expect(Math.abs(outcome.shift.along)).toBeGreaterThan(30);
  });
  it('a rocked guide as pins that bind', () => {
    expect(faultsOf('guide-rocked')).toHaveProperty('binds');
  });
});
