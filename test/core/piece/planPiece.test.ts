import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type JointSpec,
  decodeSetup,
  encodeSetup,
  inches,
  mm,
  plainText,
} from '../../../src/core/index.ts';
import { withSizes } from '../../../src/core/piece/changePiece.ts';
import { drillList } from '../../../src/core/piece/drillList.ts';
import { materials } from '../../../src/core/piece/materials.ts';
import { orderOfPiece } from '../../../src/core/piece/orderOfPiece.ts';
import { pieceCautions } from '../../../src/core/piece/pieceCautions.ts';
import { planPiece, placesOf } from '../../../src/core/piece/planPiece.ts';
import { type JointLabel, NO_LABEL } from '../../../src/core/setup/labels.ts';
import type { ReadSetup } from '../../../src/core/setup/setupLink.ts';
import { anyText } from '../../support/anyText.ts';
import { KINDS, board, ordinaryJoint, sensibleSpec } from '../../support/joints.ts';

function setup(
  joints: readonly (readonly [JointSpec, Partial<JointLabel>?])[],
  boards: ReadSetup['piece']['boards'] = [],
): ReadSetup {
  return {
    joints: joints.map(([spec]) => spec),
    labels: joints.map(([, label]) => ({ ...NO_LABEL, ...label })),
    piece: { title: 'Plant stand', boards },
  };
}

/**
 * Joints of all sorts with their pins given: to choose one, the calculator plans the joint with
 * every pin in stock, and that is ten times the work.
 */
const pinned = sensibleSpec.map((spec): JointSpec => ({
  ...spec,
  pin:
    spec.pin === undefined || spec.pin === 'choose'
      ? { diameter: mm(8), length: mm(30) }
      : spec.pin,
}));

/** Joints of which most are alike in bit, bushing or stop. */
const ofAPiece = fc.array(
  fc.tuple(
    fc.oneof(
      {
        weight: 3,
        arbitrary: fc
          .tuple(
            fc.constantFrom(...KINDS),
            fc.constantFrom(18, 20),
            fc.constantFrom(20, 25),
            fc.constantFrom(0, 4),
            fc.constantFrom(30, 40),
          )
          .map(([kind, thickness, bushing, standoff, length]): JointSpec => ({
            ...ordinaryJoint(kind, 'mm', mm(thickness)),
            pin: { diameter: mm(8), length: mm(length) },
            guide: { bushing: mm(bushing), standoff: mm(standoff) },
          })),
      },
      { weight: 1, arbitrary: pinned },
    ),
    fc.record({ count: fc.integer({ min: 1, max: 4 }) }),
  ),
  { minLength: 1, maxLength: 8 },
);

describe('the drill list of a piece', () => {
  it('has every hole of every joint exactly once', () => {
    fc.assert(
      fc.property(ofAPiece, (joints) => {
        const piece = planPiece(setup(joints));
        const rows = drillList(piece.joints).flatMap(({ bushings }) =>
          bushings.flatMap(({ settings }) => settings.flatMap((setting) => setting.rows)),
        );
        const holes = rows.flatMap(({ numbers, member, each }) =>
          Array.from({ length: numbers.last - numbers.first + 1 }, (_, i) =>
            Array.from({ length: each }, (_, n) => `${numbers.first + i}${member}-${n + 1}`),
          ).flat(),
        );
        const expected = piece.joints
          .filter(({ made }) => made)
          .flatMap(({ plan, numbers }) =>
            Array.from({ length: numbers.last - numbers.first + 1 }, (_, i) =>
              (['a', 'b', 'a2', 'b2'] as const).flatMap((member) => {
                const row = member.length === 1 ? plan.positions : plan.secondRow;
                return row.map((_, n) => `${numbers.first + i}${member}-${n + 1}`);
              }),
            ).flat(),
          );
        expect(holes.toSorted()).toEqual(expected.toSorted());
        expect(rows.reduce((sum, row) => sum + row.holes, 0)).toBe(expected.length);
      }),
      { numRuns: 60 },
    );
  });

  it('sets each bit, bushing and stop once: as few settings as there are different ones', () => {
    fc.assert(
      fc.property(ofAPiece, (joints) => {
        const piece = planPiece(setup(joints));
        const list = drillList(piece.joints);
        const wanted = new Set(
          piece.joints
            .filter(({ made }) => made)
            .flatMap(({ plan: { a, b, spec } }) =>
              [a.stop, b.stop].map((stop) =>
                [spec.bit.diameter, spec.guide.bushing, stop]
                  .map((value) => value.toFixed(4))
                  .concat(JSON.stringify(spec.bit.point))
                  .join(' '),
              ),
            ),
        );
        const settings = list.flatMap(({ bushings }) => bushings.flatMap((each) => each.settings));
        // Stops that differ by less than a hundredth of a millimeter are one setting.
        expect(settings.length).toBeLessThanOrEqual(wanted.size);
        const apart = (values: readonly number[]) =>
          values.slice(1).every((value, i) => value - values[i]! >= 0.01);
        for (const { bushings } of list) {
          expect(apart(bushings.map(({ bushing }) => bushing))).toBe(true);
          for (const each of bushings)
            expect(apart(each.settings.map(({ stop }) => stop))).toBe(true);
        }
        for (const { stop, rows } of settings) {
          for (const { depth, standoff } of rows) {
            const bushing = list
              .flatMap((bit) => bit.bushings)
              .find((each) => each.settings.some((setting) => setting.rows === rows))!.bushing;
            expect(bushing + standoff + depth).toBeCloseTo(stop, 1);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of the stand drills the faces of top and sides with one stop, and their ends with one', () => {
    const corner = ordinaryJoint('corner', 'in', inches(3 / 4));
    const shelf = { ...ordinaryJoint('tee', 'in', inches(3 / 4)), at: mm(200) };
    const [bit, ...more] = drillList(
      planPiece(
        setup([
          [corner, { count: 2 }],
          [shelf, { count: 4 }],
        ]),
      ).joints,
    );
    expect(more).toEqual([]);
    expect(bit!.bushings).toHaveLength(1);
    const marks = bit!.bushings[0]!.settings.map(({ rows }) => rows.map(({ mark }) => mark));
    expect(marks).toEqual([
      ['1B to 2B', '3B to 6B'],
      ['1A to 2A', '3A to 6A'],
    ]);
  });
});

describe('the order of work of a piece', () => {
  const stepsOf = (given: ReadSetup) => {
    const piece = planPiece(given);
    return orderOfPiece(piece, drillList(piece.joints), materials(piece)).map(
      ({ id, says }) => [id, plainText(says, 'mm')] as const,
    );
  };
  const edge = ordinaryJoint('edge', 'mm', mm(18));
  const corner = ordinaryJoint('corner', 'mm', mm(18));
  const tee = { ...ordinaryJoint('tee', 'mm', mm(18)), at: mm(200) };

  it('glues a panel before anything is laid out on it, and shelves before what closes them in', () => {
    const steps = stepsOf(
      setup(
        [
          [edge, { boardA: 'Board', boardB: 'Board' }],
          [corner, { boardA: 'Side', boardB: 'Top', count: 2 }],
          [tee, { count: 4 }],
        ],
        [
          { name: 'Board', count: 2 },
          { name: 'Top', count: 0 },
        ],
      ),
    );
    const ids = steps.map(([id]) => id);
    expect(ids.indexOf('panels')).toBeLessThan(ids.indexOf('lay-out'));
    const says = new Map(steps);
    expect(says.get('panels')).toMatch(/glue joint 1 before the rest\. Top is laid out when/);
    expect(says.get('drill')).toMatch(/3 settings.* Rows in Top wait/);
    expect(says.get('glue')).toMatch(/\(joints 4 to 7\).*\(joints 2 to 3\)/);
  });

  it('has no panel and nothing that waits where nothing is glued up', () => {
    const steps = stepsOf(setup([[corner]]));
    expect(steps.map(([id]) => id)).not.toContain('panels');
    expect(steps.map(([, says]) => says).join()).not.toContain('wait');
  });
});

describe('the material of a piece', () => {
  const side = { boardA: 'Side', boardB: 'Top' };

  it('counts a board once that is in several joints, and pins for tests and to spare', () => {
    const corner = ordinaryJoint('corner', 'mm', mm(18));
    const tee = { ...ordinaryJoint('tee', 'mm', mm(18)), at: mm(200) };
    const { boards, pins } = materials(
      planPiece(
        setup(
          [
            [corner, { ...side, count: 2 }],
            [tee, { boardA: 'Shelf', boardB: 'Side', count: 4 }],
          ],
          [
            { name: 'Side', count: 2 },
            { name: 'Shelf', count: 2 },
          ],
        ),
      ),
    );
    expect(boards.map(({ name, count }) => [name, count])).toEqual([
      ['Side', 2],
      ['Top', 1],
      ['Shelf', 2],
    ]);
    expect(boards[0]!.marks.map(({ mark, drilled }) => `${mark} ${drilled}`)).toEqual([
      '1A to 2A end',
      '3B to 6B face',
    ]);
    expect(boards[0]!.references).toEqual(['reference face', 'reference edge', 'reference end']);
    // Two pins a joint here, in six joints; two test joints; a tenth of 14, rounded up.
    expect(pins).toEqual([
      {
        pin: { diameter: 8, length: 30 },
        inJoints: 12,
        inTests: 2,
        spare: 2,
        total: 16,
      },
    ]);
  });

  it('counts boards without a name for every joint, and both aprons of a leg', () => {
    const leg = ordinaryJoint('leg', 'mm', mm(18));
    const { boards, pins } = materials(planPiece(setup([[leg, { count: 4 }]])));
    expect(boards.map(({ name, count }) => [name, count])).toEqual([
      ['A of joints 1 to 4', 8],
      ['B of joints 1 to 4', 4],
    ]);
    const plan = planPiece(setup([[leg]])).joints[0]!.plan;
    expect(pins[0]!.inJoints).toBe(4 * 2 * plan.positions.length);
  });

  it('finds as much room for glue as there is air in the closed joint', () => {
    const spec: JointSpec = {
      ...ordinaryJoint('edge', 'mm', mm(20)),
      pin: { diameter: mm(8), length: mm(40) },
      bit: { point: { kind: 'square' } },
      allowance: mm(3),
    };
    const piece = planPiece(setup([[spec]]));
    const pins = piece.joints[0]!.plan.positions.length;
    const hole = (Math.PI / 4) * 8 ** 2;
    const pin = (Math.PI / 4) * 7.9 ** 2;
    // Both holes together less the pin in them.
    expect(materials(piece).glueInHoles).toBeCloseTo(pins * (46 * hole - 40 * pin), 6);
    expect(materials(piece).glueFaces).toBeCloseTo(600 * 20, 9);
  });
});

describe('a piece', () => {
  it('numbers its joints on both boards, those alike one after the other', () => {
    const edge = ordinaryJoint('edge', 'mm', mm(18));
    const { joints } = planPiece(setup([[edge], [edge, { count: 3 }], [edge]]));
    expect(joints.map(({ numbers }) => [numbers.first, numbers.last])).toEqual([
      [1, 1],
      [2, 4],
      [5, 5],
    ]);
  });

  it('says so where a joint can’t be made, a board disagrees or stops look alike', () => {
    const corner = ordinaryJoint('corner', 'mm', mm(18));
    const wide = { ...corner, b: board(mm(18), mm(150)) };
    const never = { ...corner, pin: { diameter: mm(16), length: mm(40) } };
    const near = { ...corner, allowance: mm(3.3) };
    const given = setup([
      [corner, { boardA: 'Side', boardB: 'Top' }],
      [wide, { boardA: 'Side', boardB: 'Top' }],
      [never, { name: 'Too thick' }],
      [near],
    ]);
    const piece = planPiece(given);
    const list = drillList(piece.joints);
    const says = pieceCautions(piece, list).map(
      ({ severity, message }) => `${severity}: ${plainText(message, 'mm')}`,
    );
    expect(says[0]).toMatch(/^error: Too thick \(joint 3\) can’t be made/);
    expect(says[1]).toMatch(/^caution: Top is 140 mm wide in joint 1, but 150 mm in joint 2/);
    for (const { at, side, sizes } of pieceCautions(piece, list)[1]!.mends) {
      const mended = planPiece(withSizes(given, at, side, sizes));
      expect(pieceCautions(mended, list).some(({ mends }) => mends.length > 0)).toBe(false);
    }
    expect(says[2]).toMatch(/^note: On the 8 mm bit the stops .* are easily mistaken/);
    expect(list[0]!.bushings[0]!.settings.flatMap(({ rows }) => rows)).toHaveLength(6);
  });

  it('goes through a link unchanged', () => {
    const shelf = { ...ordinaryJoint('tee', 'mm', mm(18)), at: mm(200) };
    const sent = setup(
      [
        [ordinaryJoint('leg', 'mm', mm(20)), { name: 'Apron to leg', count: 4, boardB: 'Leg' }],
        [shelf, { name: 'Shelf; upper & lower', boardA: 'Shelf', boardB: 'Side' }],
      ],
      [{ name: 'Leg', count: 4 }],
    );
    const decoded = decodeSetup(encodeSetup(sent));
    if (!decoded.ok) throw new Error(decoded.reason);
    const [before, after] = [planPiece(sent), planPiece(decoded.setup)];
    expect(after.title).toBe(before.title);
    expect(after.boards).toEqual(before.boards);
    expect(drillList(after.joints)).toEqual(drillList(before.joints));
    expect(materials(after)).toEqual(materials(before));
    expect(after.joints.map(({ plan }) => placesOf(plan, 'b'))).toEqual(
      before.joints.map(({ plan }) => placesOf(plan, 'b')),
    );
  });

  it('from any link gives lists without a fault', () => {
    const fields = fc.record({
      name: anyText(20),
      count: fc.integer({ min: 1, max: 9 }),
      boardA: fc.constantFrom('', 'Side', 'Top'),
      boardB: fc.constantFrom('', 'Side', 'Top'),
    });
    const tiny = ordinaryJoint('edge', 'mm', mm(18));
    const hair: JointSpec = { ...tiny, pin: { diameter: mm(0.05), length: mm(30) } };
    const any = fc.oneof(pinned, fc.constant(hair));
    fc.assert(
      fc.property(fc.array(fc.tuple(any, fields), { minLength: 1, maxLength: 5 }), (joints) => {
        const piece = planPiece(setup(joints));
        const { pins, glueInHoles } = materials(piece);
        const list = drillList(piece.joints);
        expect(pieceCautions(piece, list).length).toBeGreaterThanOrEqual(
          piece.joints.filter(({ made }) => !made).length,
        );
        expect(glueInHoles).toBeGreaterThanOrEqual(0);
        for (const { total, inJoints } of pins) expect(total).toBeGreaterThan(inJoints);
      }),
      { numRuns: 60 },
    );
  });
});
