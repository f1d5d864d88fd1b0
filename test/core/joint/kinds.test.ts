import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type JointSpec,
  SpecError,
  drill,
  dryFit,
  inches,
  mm,
  planJoint,
  soundSetup,
  toMark,
} from '../../../src/core/index.ts';
import { board, ordinaryJoint } from '../../support/joints.ts';

const codes = (spec: JointSpec) => planJoint(spec).cautions.map(({ code }) => code);
const steps = (spec: JointSpec) => new Map(planJoint(spec).working.map((each) => [each.id, each]));

describe('limits along the hole', () => {
  const a = board(mm(18), mm(90), mm(400));
  const b = board(mm(22), mm(120), mm(700));
  const limits = (kind: JointSpec['kind'], drilled?: 'end' | 'edge') => {
    const plan = planJoint({ kind, system: 'mm', a, b, ...(drilled ? { drilled } : {}) });
    return [plan.a.limit, plan.b.limit];
  };

  it('are the widths in an edge joint', () => expect(limits('edge')).toEqual([90, 120]));
  it('are A’s length and B’s thickness in a corner and a tee', () => {
    expect(limits('corner')).toEqual([400, 22]);
    expect(limits('tee')).toEqual([400, 22]);
  });
  it('are A’s width where its edge is drilled', () => {
    expect(limits('corner', 'edge')).toEqual([90, 22]);
  });
  it('are the rail’s length and the stile’s width in a frame', () => {
    expect(limits('frame')).toEqual([400, 120]);
  });
});

describe('across the boards', () => {
  const a = board(mm(20));
  const b = board(mm(26));
  const place = (spec: Partial<JointSpec> & { kind: JointSpec['kind'] }) => {
    const [hole] = planJoint({ system: 'mm', a, b, ...spec }).holes;
    return [hole?.acrossA, hole?.acrossB];
  };

  it('the pin stands in the middle of A and as far from B’s reference face', () => {
    expect(place({ kind: 'edge' })).toEqual([10, 10]);
  });
  it('a reveal moves it on B', () => {
    expect(place({ kind: 'frame', reveal: mm(3) })).toEqual([10, 13]);
    expect(place({ kind: 'edge', reveal: mm(-2) })).toEqual([10, 8]);
  });
  it('an overhang moves it in from B’s end', () => {
    expect(place({ kind: 'corner', overhang: mm(5) })).toEqual([10, 15]);
  });
  it('a tee lies where its shelf lies', () => {
    expect(place({ kind: 'tee', at: mm(200) })).toEqual([10, 210]);
  });
  it('a setback moves it into the leg', () => {
    const leg = { thickness: mm(45), width: mm(45), length: mm(450) };
    expect(place({ kind: 'leg', b: leg, setback: mm(4) })).toEqual([10, 14]);
  });
  it('a guide off the middle moves both holes alike', () => {
    expect(place({ kind: 'edge', guide: { offset: mm(0.5) } })).toEqual([10.5, 10.5]);
  });
  it('the wall is the least wood beside the hole, and a tee’s face has none', () => {
    const plan = planJoint({ kind: 'tee', system: 'mm', a, b, at: mm(200) });
    expect(plan.a.wall).toBe(10 - plan.spec.bit.diameter / 2);
    expect(plan.b.wall).toBeNull();
  });
  it('a guide that centers itself makes a step where B is thicker: half the difference', () => {
    const spec: JointSpec = { kind: 'edge', system: 'mm', a, b, guide: { centering: true } };
    const step = planJoint(spec).cautions.find(({ code }) => code === 'centering-step');
    expect(step?.message).toContain('3 mm');
    expect(codes({ ...spec, b: a })).not.toContain('centering-step');
  });
});

describe('along the joint', () => {
  it('puts two pins a quarter in from the ends of a narrow board', () => {
    // 5 1/2 in: J/4 is 1 3/8 in, under 1 1/2 in and over 1.5 D.
    const plan = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
    expect(plan.positions.map((x) => x / 25.4)).toEqual([
      expect.closeTo(35 / 25.4, 9),
      expect.closeTo(105 / 25.4, 9),
    ]);
  });

  it('keeps 1 1/2 in from the ends of a long one and no more than 6 in between', () => {
    const long = board(inches(3 / 4), inches(6), inches(36));
    const { positions } = planJoint({ kind: 'edge', system: 'in', a: long, b: long });
    // 33 in between the end pins: six spaces of 5 1/2 in.
    expect(positions).toHaveLength(7);
    expect(positions[0]).toBeCloseTo(38.1, 9);
    expect(positions[1]! - positions[0]!).toBeCloseTo(5.5 * 25.4, 9);
  });

  it('takes the span exactly at the widest spacing without another pin', () => {
    const line = board(mm(18), mm(100), mm(150 + 2 * 38));
    const { positions } = planJoint({ kind: 'edge', system: 'mm', a: line, b: line });
    expect(positions).toEqual([38, 188]);
  });

  it('makes the margin smaller before it gives up the second pin', () => {
    const narrow = board(inches(3 / 4), mm(45), mm(400));
    const spec: JointSpec = { kind: 'corner', system: 'in', a: narrow, b: narrow };
    expect(steps(spec).get('layout.margin')?.rule).toMatch(/made smaller/);
    const { positions } = planJoint(spec);
    expect(positions[1]! - positions[0]!).toBeCloseTo(25.4, 9);
  });

  it('puts one pin in the middle of a joint too short for two, with a caution', () => {
    const narrow = board(inches(3 / 4), mm(30), mm(400));
    const plan = planJoint({ kind: 'corner', system: 'in', a: narrow, b: narrow });
    expect(plan.positions).toEqual([15]);
    expect(plan.cautions.map(({ code }) => code)).toContain('single-pin');
  });

  it('counts a stile’s holes from its own end', () => {
    const rail = board(mm(18), mm(60), mm(400));
    const spec: JointSpec = { kind: 'frame', system: 'mm', a: rail, b: rail, at: mm(100) };
    for (const hole of planJoint(spec).holes) {
      expect(hole.alongB - hole.along).toBeCloseTo(100, 9);
    }
  });

  it('refuses a hole that would lie beyond the end of B', () => {
    const a = board(mm(18), mm(200), mm(400));
    const b = board(mm(18), mm(100), mm(400));
    expect(codes({ kind: 'corner', system: 'mm', a, b })).toContain('off-board');
  });

  it('refuses a spacing that would need hundreds of pins, and says so', () => {
    const plan = planJoint({
      ...ordinaryJoint('edge', 'mm', mm(18)),
      layout: { maxPitch: mm(0.001), minPitch: mm(0.0001) },
    });
    expect(plan.cautions.map(({ code }) => code)).toContain('too-many-pins');
    expect(plan.positions.length).toBeLessThanOrEqual(200);
  });

  it('marks to the nearest division, a tie to the even one', () => {
    expect(toMark(mm(10.2), mm(0.5))).toBe(10);
    expect(toMark(mm(10.25), mm(0.5))).toBe(10);
    expect(toMark(mm(10.75), mm(0.5))).toBe(11);
    expect(toMark(inches(1 / 3), inches(1 / 32))).toBeCloseTo((11 / 32) * 25.4, 9);
  });
});

describe('a miter', () => {
  const spec = (width = 60): JointSpec => {
    const member = board(mm(18), mm(width), mm(400));
    return {
      kind: 'miter',
      system: 'mm',
      a: member,
      b: member,
      pin: { diameter: mm(8), length: mm(30) },
      bit: { point: { kind: 'square' } },
    };
  };

  it('has its line at 45°, its first pin 1.5 D from the heel, half the pin on each side', () => {
    const plan = planJoint(spec());
    expect(plan.spec.jointLength).toBeCloseTo(60 * Math.SQRT2, 9);
    expect(plan.positions[0]).toBe(12);
    expect([plan.a.engagement, plan.b.engagement]).toEqual([15, 15]);
  });

  it('keeps the wood that it must leave beyond the last pin, square to the outer edge', () => {
    const plan = planJoint(spec());
    expect(plan.a.woodLeft).toBeCloseTo(plan.spec.leave, 9);
    // The geometry over again: the corner of the bit at depth h, D/2 to the side of the axis.
    const q = plan.spec.jointLength - plan.positions.at(-1)!;
    expect(plan.a.woodLeft).toBeCloseTo((q - plan.a.holeDepth - 4) / Math.SQRT2, 9);
  });

  it('rounds a mark toward the heel where the nearest would leave no wood', () => {
    const bare = planJoint({ ...spec(), leave: mm(0) });
    const last = bare.positions.at(-1)!;
    // W√2 − h − D/2, and nothing to spare: 62.85 is marked at 62.5 and not at 63.
    expect(last).toBeCloseTo(60 * Math.SQRT2 - 18 - 4, 9);
    expect(toMark(last, mm(0.5))).toBe(63);
    expect(bare.marks.at(-1)).toBe(62.5);
    expect(bare.marks.slice(0, -1)).toEqual(
      bare.positions.slice(0, -1).map((each) => toMark(each, mm(0.5))),
    );
    const usual = planJoint(spec());
    expect(usual.marks).toEqual(usual.positions.map((each) => toMark(each, mm(0.5))));
  });

  it('keeps wood beyond every hole as it is marked, whatever the rule’s division', () => {
    let moved = 0;
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.constantFrom(0.5, 1, 5, 25.4 / 32, 25.4 / 8),
        (width, leave, graduation) => {
          const plan = planJoint({
            ...spec(width),
            leave: mm(leave),
            layout: { graduation: mm(graduation) },
          });
          fc.pre(plan.ok);
          const wood = plan.spec.jointLength - plan.a.holeDepth - 4;
          for (const [i, mark] of plan.marks.entries()) {
            expect(mark).toBeLessThanOrEqual(wood + 1e-6);
            if (mark === toMark(plan.positions[i]!, mm(graduation))) continue;
            moved++;
            // No farther than it must: the next division would be too far.
            expect(mark + graduation).toBeGreaterThan(wood);
          }
          const trial = dryFit(drill(soundSetup(plan)));
          expect(trial.faults.map(({ code }) => code)).not.toContain('breakthrough');
        },
      ),
    );
    expect(moved).toBeGreaterThan(5);
  });

  it('is refused where two pins don’t fit, by as much as they miss', () => {
    const plan = planJoint(spec(36));
    expect(plan.ok).toBe(false);
    const fault = plan.cautions.find(({ code }) => code === 'pin-too-long');
    // W√2 − 1.5 D − 2 D − D/2 − √2 leave − c, against half the pin.
    const most = 36 * Math.SQRT2 - 12 - 16 - 4 - Math.SQRT2 * 3 - 3;
    expect(fault?.message).toContain(`${(Math.round(2 * (15 - most) * 10) / 10).toString()} mm`);
  });

  it('needs both members of one width', () => {
    const uneven = { ...spec(), b: board(mm(18), mm(70), mm(400)) };
    expect(codes(uneven)).toContain('members-differ');
  });
});

describe('a leg', () => {
  const leg = (stagger: number): JointSpec => ({
    kind: 'leg',
    system: 'mm',
    a: board(mm(18), mm(90), mm(300)),
    b: { thickness: mm(45), width: mm(45), length: mm(450) },
    pin: { diameter: mm(8), length: mm(40) },
    bit: { point: { kind: 'square' } },
    setback: mm(3),
    stagger: mm(stagger),
  });

  it('stops the holes short of the other apron’s where they would meet', () => {
    // 45 less the 12 to the other row's middle and half of its hole.
    expect(planJoint(leg(0)).b.limit).toBe(45 - 12 - 4);
    expect(steps(leg(0)).get('b.limit')?.rule).toMatch(/meet/);
  });

  it('lets them run on where a stagger carries the rows past each other', () => {
    const plan = planJoint(leg(15));
    expect(plan.b.limit).toBe(45);
    expect(plan.secondRow.map((x, i) => x - plan.positions[i]!)).toEqual([15, 15]);
    expect(plan.secondRow.at(-1)! + plan.spec.layout.endMargin).toBeCloseTo(90, 9);
  });

  it('is square, or the program that asks is wrong', () => {
    const uneven = { ...leg(0), b: { thickness: mm(45), width: mm(40), length: mm(450) } };
    expect(() => planJoint(uneven)).toThrow(SpecError);
    expect(() => planJoint(uneven)).toThrow(/b\.width/);
  });
});

describe('across the grain', () => {
  const rail = (width: number, species?: string): JointSpec => {
    const wood = species === undefined ? {} : { species };
    const a = { ...board(mm(18), mm(width), mm(500)), ...wood };
    return { kind: 'frame', system: 'mm', a, b: { ...board(mm(18), mm(60), mm(900)), ...wood } };
  };

  it('warns with the season’s numbers where a wide rail moves more than its pins can', () => {
    const { cautions, positions } = planJoint(rail(200, 'red oak, commercial'));
    const span = positions.at(-1)! - positions[0]!;
    const moves = Math.round(span * 0.00369 * 6 * 10) / 10;
    const found = cautions.find(({ code }) => code === 'cross-grain');
    expect(found?.severity).toBe('caution');
    expect(found?.message).toContain(`${moves} mm`);
    expect(found?.message).toContain('6 to 12 %');
  });

  it('has nothing to say where both boards move together', () => {
    const oak = { ...board(mm(18), mm(200), mm(500)), species: 'red oak, commercial' };
    expect(codes({ kind: 'corner', system: 'mm', a: oak, b: oak })).not.toContain('cross-grain');
    const pine = { ...oak, species: 'pine, eastern white' };
    expect(codes({ kind: 'corner', system: 'mm', a: oak, b: pine })).toContain('cross-grain');
  });

  it('asks for the wood where even the steadiest would move too much', () => {
    expect(codes(rail(200))).toContain('cross-grain-unknown');
    expect(codes(rail(60))).not.toContain('cross-grain-unknown');
  });
});

describe('what a pin and a bit make of each other', () => {
  const base = ordinaryJoint('edge', 'mm', mm(20));
  const withPin = (diameter: number, bit: number) =>
    codes({
      ...base,
      pin: { diameter: mm(diameter), length: mm(40) },
      bit: { diameter: mm(bit) },
    });

  it('10 mm does not go into 3/8 in, and 3/8 in rattles in 10 mm', () => {
    expect(withPin(10, 9.525)).toContain('pin-tight');
    expect(withPin(9.525, 10)).toContain('pin-loose');
  });

  it('8 mm and 5/16 in pass for each other', () => {
    for (const pair of [withPin(8, 7.9375), withPin(7.9375, 8)]) {
      expect(pair).not.toContain('pin-tight');
      expect(pair).not.toContain('pin-loose');
    }
  });
});

describe('what can’t be made', () => {
  const thin = (thickness: number): JointSpec => ({
    ...ordinaryJoint('corner', 'in', inches(3 / 4)),
    b: board(mm(thickness)),
    pin: { diameter: inches(3 / 8), length: inches(3 / 2) },
  });

  it('says which board is too thin, by how much and what would mend it', () => {
    const plan = planJoint(thin(12.7));
    const fault = plan.cautions[0];
    expect(plan.ok).toBe(false);
    expect(fault?.code).toBe('too-little-hold');
    expect(fault?.message).toMatch(/Board B would hold only/);
    expect(fault?.remedy).toMatch(/thicker board B/);
  });

  it('says by how much a pin is too long for both boards together', () => {
    const spec: JointSpec = {
      kind: 'edge',
      system: 'mm',
      a: board(mm(18), mm(30)),
      b: board(mm(18), mm(30)),
      pin: { diameter: mm(8), length: mm(60) },
      bit: { point: { kind: 'square' } },
    };
    // Each holds 30 − 3 − 3 = 24: 12 too long.
    expect(planJoint(spec).cautions[0]?.message).toContain('12 mm too long');
  });

  it('tells a learner of a length that no board has', () => {
    for (const thickness of [0, -5, 200_000]) {
      const plan = planJoint(thin(thickness));
      expect(plan.cautions.map(({ code }) => code)).toEqual(['bad-length']);
      expect(plan.holes).toEqual([]);
    }
  });

  it('throws for what only a program can pass, and names the field', () => {
    const spec = ordinaryJoint('edge', 'mm', mm(18));
    const wrong: readonly (readonly [string, unknown])[] = [
      ['a.thickness', { ...spec, a: { ...spec.a, thickness: NaN } }],
      ['b.length', { ...spec, b: { ...spec.b, length: '600' } }],
      ['kind', { ...spec, kind: 'butt' }],
      ['system', { ...spec, system: 'cm' }],
      ['allowance', { ...spec, allowance: Infinity }],
      ['pin.length', { ...spec, pin: { diameter: 8 } }],
      ['bit.point.kind', { ...spec, bit: { point: { kind: 'round' } } }],
      ['bit.point.angle', { ...spec, bit: { point: { kind: 'twist' } } }],
      ['a.species', { ...spec, a: { ...spec.a, species: 'unobtainium' } }],
      ['stock', { ...spec, stock: 'all' }],
    ];
    for (const [field, bad] of wrong) {
      expect(() => planJoint(bad as JointSpec)).toThrow(SpecError);
      expect(() => planJoint(bad as JointSpec)).toThrow(field);
    }
  });
});
