import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classOrder } from '../../../src/class/order/classOrder.ts';
import { cutting } from '../../../src/class/order/cutting.ts';
import { type JointSpec, inches, mm, planJoint } from '../../../src/core/index.ts';

const stand: JointSpec = {
  kind: 'corner',
  system: 'in',
  a: { thickness: inches(3 / 4), width: inches(9.25), length: inches(27) },
  b: { thickness: inches(3 / 4), width: inches(9.25), length: inches(24) },
  pin: { diameter: inches(3 / 8), length: inches(1.5) },
};

const stool: JointSpec = {
  kind: 'leg',
  system: 'in',
  a: { thickness: inches(3 / 4), width: inches(2.5), length: inches(10) },
  b: { thickness: inches(1.5), width: inches(1.5), length: inches(16) },
  pin: { diameter: inches(3 / 8), length: inches(1.5) },
};

const input = {
  benches: 12,
  joints: [{ name: 'Side to top', spec: stand, perBench: 2 }],
  testJoints: true,
  spares: 0.1,
  guides: 3,
  cutAllowance: inches(1 / 4),
  boardAsBought: inches(96),
  glueFilm: mm(0.2),
  glueSpare: 0.5,
};

describe('classOrder', () => {
  it('counts pins: those of the joints, one for each test, a tenth more', () => {
    const row = planJoint(stand).holes.length;
    const [pins, ...others] = classOrder(input).pins;
    expect(others).toEqual([]);
    expect(pins!.inJoints).toBe(12 * 2 * row);
    expect(pins!.inTests).toBe(12);
    expect(pins!.spare).toBe(Math.ceil((pins!.inJoints + 12) / 10));
    expect(pins!.total).toBe(pins!.inJoints + pins!.inTests + pins!.spare);
  });

  it('counts both rows of a leg, and its second apron', () => {
    const plan = planJoint(stool);
    const joints = [{ name: 'Apron', spec: stool, perBench: 1 }];
    const order = classOrder({ ...input, joints, testJoints: false, spares: 0 });
    expect(order.pins[0]!.total).toBe(12 * (plan.holes.length + plan.secondRow.length));
    const aprons = order.boards.find(({ width }) => width === inches(2.5))!;
    expect(aprons.pieces.reduce((sum, { count }) => sum + count, 0)).toBe(24);
  });

  it('asks for a bit for each guide, and lists the stops that are set on it once each', () => {
    const [bit] = classOrder(input).bits;
    const { a, b } = planJoint(stand);
    expect(bit!.pieces).toBe(3);
    expect(bit!.stops).toEqual([a.stop, b.stop].sort((x, y) => x - y));
  });

  it('glues what the holes hold, worked out again by volumes', () => {
    // A hole is as wide as its pin here: nothing around it, and a disk of free depth past its end.
    const { glue } = classOrder({ ...input, glueSpare: 0 });
    const holes = planJoint(stand).holes.length * 2 * 24;
    const disk = (Math.PI / 4) * inches(3 / 8) ** 2 * inches(1 / 8);
    expect(glue.inHoles).toBeCloseTo(holes * disk, 6);
    expect(glue.betweenFaces).toBeCloseTo(24 * inches(9.25) * inches(3 / 4) * 0.2, 6);
    expect(glue.total).toBeCloseTo(glue.inHoles + glue.betweenFaces, 9);
  });

  it('orders nothing for a joint that can’t be made, and says which', () => {
    const thin = { ...stand, b: { ...stand.b, thickness: mm(4) } };
    const order = classOrder({ ...input, joints: [{ name: 'Thin', spec: thin, perBench: 1 }] });
    expect(order.notMade).toEqual(['Thin']);
    expect([order.pins, order.bits, order.boards]).toEqual([[], [], []]);
  });

  it('says what is out of range', () => {
    expect(() => classOrder({ ...input, benches: 0 })).toThrow('benches is 0');
    expect(() => classOrder({ ...input, spares: -1 })).toThrow('spares is -1');
  });
});

describe('cutting', () => {
  const lengths = fc.array(fc.integer({ min: 50, max: 900 }).map(mm), { maxLength: 60 });

  it('cuts every piece once, from no board more than it has', () => {
    fc.assert(
      fc.property(lengths, fc.integer({ min: 0, max: 12 }).map(mm), (pieces, allowance) => {
        const { boards, tooLong } = cutting(pieces, mm(800), allowance);
        const cut = [...boards.flatMap((board) => board.pieces), ...tooLong];
        expect(cut.sort((a, b) => a - b)).toEqual([...pieces].sort((a, b) => a - b));
        for (const { pieces, left } of boards) {
          const taken = pieces.reduce((sum, length) => sum + length + allowance, 0);
          expect(taken + left).toBeCloseTo(800, 6);
        }
        expect(tooLong.every((length) => length + allowance > 800)).toBe(true);
      }),
    );
  });

  it('takes few boards: never fewer than the lengths ask for, and none but the last a quarter empty', () => {
    // Where no piece is longer than a quarter, no board but the last is more than a quarter empty.
    const small = fc.array(fc.integer({ min: 50, max: 200 }).map(mm), {
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(small, (pieces) => {
        const total = pieces.reduce((sum, length) => sum + length, 0);
        const { boards } = cutting(pieces, mm(800), mm(0));
        expect(boards.length).toBeGreaterThanOrEqual(Math.ceil(total / 800));
        expect(boards.length).toBeLessThanOrEqual(Math.ceil(total / 600) + 1);
      }),
    );
  });

  it('finds the fewest boards of a worked set: halves pair up, thirds go by three', () => {
    const pieces = [400, 400, 400, 400, 266, 266, 266].map(mm);
    expect(cutting(pieces, mm(800), mm(0)).boards).toHaveLength(3);
  });
});
