import fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { type JointPlan, inches, mm, planJoint } from '../../../src/core/index.ts';
import { arrangePictorial } from '../../../src/diagrams/pictorial/arrange.ts';
import { describePictorial } from '../../../src/diagrams/pictorial/describe.ts';
import { pictorialShapes } from '../../../src/diagrams/pictorial/geometry.ts';
import { grainOn } from '../../../src/diagrams/pictorial/grain.ts';
import { isometric, seenCircle } from '../../../src/diagrams/pictorial/isometric.ts';
import Pictorial from '../../../src/diagrams/pictorial/Pictorial.svelte';
import type { PictorialShapes, Solid } from '../../../src/diagrams/pictorial/shapes.ts';
import {
  type Place,
  cross,
  difference,
  dot,
  length,
  place,
} from '../../../src/diagrams/pictorial/space.ts';
import { KINDS, absurdSpec, ordinaryJoint, sensibleSpec } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const ORDINARY = KINDS.map(
  (kind) => [kind, planJoint(ordinaryJoint(kind, 'in', inches(3 / 4)))] as const,
);

const solidOf = (shapes: PictorialShapes, member: Solid['member']) =>
  shapes.solids.find((solid) => solid.member === member)!;

/** Sides of a solid as a corner and a unit vector out of it, top and bottom included. */
function sidesOf({ base, top, bottom }: Solid): (readonly [Place, Place])[] {
  return [
    ...base.map((from, i) => {
      const to = base[(i + 1) % base.length]!;
      const size = Math.hypot(to.x - from.x, to.y - from.y);
      return [
        place(from.x, from.y, 0),
        place((to.y - from.y) / size, (from.x - to.x) / size, 0),
      ] as const;
    }),
    [place(0, 0, top), place(0, 0, 1)],
    [place(0, 0, bottom), place(0, 0, -1)],
  ];
}

/** Distance from the surface of a solid, negative inside it. */
function outside(solid: Solid, at: Place): number {
  return Math.max(...sidesOf(solid).map(([on, out]) => dot(difference(at, on), out)));
}

/** True where a plane of one of the solids parts them. */
function parted(one: Solid, other: Solid): boolean {
  const cornersOf = ({ base, top, bottom }: Solid) =>
    base.flatMap(({ x, y }) => [place(x, y, top), place(x, y, bottom)]);
  const byPlaneOf = (a: Solid, b: Solid) =>
    sidesOf(a).some(([on, out]) =>
      cornersOf(b).every((corner) => dot(difference(corner, on), out) >= -1e-9),
    );
  return byPlaneOf(one, other) || byPlaneOf(other, one);
}

/** How far a place lies off the line of a bore. */
function offLine({ mouth, into }: PictorialShapes['bores'][number], at: Place): number {
  return length(cross(difference(at, mouth), into));
}

function holds(shapes: PictorialShapes): void {
  for (const bore of shapes.bores) {
    const solid = solidOf(shapes, bore.member);
    // On the face, neither above nor below it, and facing into the wood.
    expect(outside(solid, bore.mouth)).toBeCloseTo(0, 6);
    const inWood = {
      x: bore.mouth.x + bore.into.x * 1e-3,
      y: bore.mouth.y + bore.into.y * 1e-3,
      z: bore.mouth.z + bore.into.z * 1e-3,
    };
    expect(outside(solid, inWood)).toBeLessThan(0);
  }
  shapes.dowels.forEach((dowel, pin) => {
    const bores = shapes.bores.filter((bore) => bore.pin === pin);
    expect(bores).toHaveLength(2);
    for (const bore of bores) {
      expect(offLine(bore, dowel.from)).toBeCloseTo(0, 6);
      expect(offLine(bore, dowel.to)).toBeCloseTo(0, 6);
    }
  });
  shapes.solids.forEach((solid, i) => {
    for (const other of shapes.solids.slice(i + 1)) expect(parted(solid, other)).toBe(true);
  });
}

describe('a joint in space', () => {
  test.each(ORDINARY)(
    '%s: holes lie on mating faces, pins on the line of both holes',
    (_, plan) => {
      for (const apart of [0, 0.3, 1]) holds(pictorialShapes(plan, apart));
    },
  );

  test.each(ORDINARY)('%s: pushed home, the mouths of each pin meet', (_, plan) => {
    const { axes } = pictorialShapes(plan, 0);
    expect(axes.length).toBeGreaterThan(0);
    for (const [from, to] of axes) expect(length(difference(from, to))).toBeCloseTo(0, 9);
  });

  test.each(ORDINARY)('%s: pushed home, each board holds its part of the pin', (_, plan) => {
    const shapes = pictorialShapes(plan, 0);
    for (const [pin, dowel] of shapes.dowels.entries()) {
      const [mouth] = shapes.axes[pin]!;
      expect(length(difference(dowel.from, mouth))).toBeCloseTo(plan.a.engagement, 9);
      expect(length(difference(dowel.to, mouth))).toBeCloseTo(plan.b.engagement, 9);
    }
  });

  test.each(ORDINARY)('%s: apart, the pins are clear of every board', (_, plan) => {
    const shapes = pictorialShapes(plan, 1);
    for (const dowel of shapes.dowels) {
      for (const solid of shapes.solids) {
        expect(outside(solid, dowel.from)).toBeGreaterThan(0);
        expect(outside(solid, dowel.to)).toBeGreaterThan(0);
      }
    }
  });

  test('whatever the boards, every pin stands on the line of its two holes', () => {
    fc.assert(
      fc.property(sensibleSpec, fc.double({ min: 0, max: 1, noNaN: true }), (spec, apart) => {
        const plan = planJoint(spec);
        // Where the length of the joint was typed, B may end before it: a caution says so.
        if (!plan.ok || plan.cautions.some(({ code }) => code === 'off-board')) return;
        holds(pictorialShapes(plan, apart));
      }),
    );
  });

  test('a long joint is cut between two pins, and says how many it leaves out', () => {
    const plan = planJoint(ordinaryJoint('edge', 'in', inches(3 / 4)));
    const shapes = pictorialShapes(plan);
    expect(shapes.dowels.length + shapes.beyond).toBe(plan.positions.length);
    expect(shapes.beyond).toBeGreaterThan(0);
    expect(shapes.solids.map((solid) => solid.broken.sides.includes(2))).toEqual([true, true]);
  });

  test('corner: B stands its overhang over A', () => {
    const spec = ordinaryJoint('corner', 'mm', mm(18));
    const shapes = pictorialShapes(planJoint({ ...spec, overhang: mm(6) }));
    expect(solidOf(shapes, 'b').top - solidOf(shapes, 'a').top).toBe(6);
  });

  test('miter: both cuts stand at 45° to the fibers, and the members square to each other', () => {
    const shapes = pictorialShapes(planJoint(ordinaryJoint('miter', 'in', inches(3 / 4))));
    const [a, b] = (['a', 'b'] as const).map((member) => solidOf(shapes, member).grain.along);
    expect(dot(a!, b!)).toBeCloseTo(0, 12);
    expect(Math.abs(dot(a!, place(1, 0, 0)))).toBeCloseTo(Math.SQRT1_2, 12);
  });

  test('leg: the aprons come from neighboring sides, set back by the same', () => {
    const plan = planJoint({ ...ordinaryJoint('leg', 'mm', mm(18)), setback: mm(5) });
    const shapes = pictorialShapes(plan);
    const [leg, a, second] = (['b', 'a', 'second'] as const).map((m) => solidOf(shapes, m).base);
    const most = (corners: typeof leg, axis: 'x' | 'y') =>
      Math.max(...corners!.map((corner) => corner[axis]));
    expect(most(leg, 'y') - most(a, 'y')).toBe(5);
    expect(most(leg, 'x') - most(second, 'x')).toBe(5);
  });
});

describe('the isometric view', () => {
  test('keeps lengths along the three axes, whose lines cross at 60°', () => {
    const { project } = isometric(0);
    const ends = [place(10, 0, 0), place(0, 10, 0), place(0, 0, 10)].map(project);
    for (const [i, end] of ends.entries()) {
      expect(Math.hypot(end.x, end.y)).toBeCloseTo(10, 9);
      const next = ends[(i + 1) % 3]!;
      expect(Math.abs(end.x * next.x + end.y * next.y)).toBeCloseTo(50, 9);
    }
  });

  test('shows a circle in a plane of the axes 1.22 times as wide and 0.71 times as high', () => {
    const { rx, ry } = seenCircle(isometric(0), place(0, 0, 0), place(1, 0, 0), 10);
    expect(rx).toBeCloseTo(12.247, 3);
    expect(ry).toBeCloseTo(7.071, 3);
  });

  test.each([0, 45, 30])('sees a circle as it sees the points on it, turned %d°', (turn) => {
    const view = isometric(turn);
    const { center, rx, ry, turn: lean } = seenCircle(view, place(3, 4, 5), place(1, 0, 0), 10);
    const angle = (lean * Math.PI) / 180;
    for (let i = 0; i < 12; i++) {
      const part = (i / 12) * 2 * Math.PI;
      const p = view.project(place(3, 4 + 10 * Math.cos(part), 5 + 10 * Math.sin(part)));
      const [dx, dy] = [p.x - center.x, p.y - center.y];
      const along = dx * Math.cos(angle) + dy * Math.sin(angle);
      const across = dy * Math.cos(angle) - dx * Math.sin(angle);
      expect((along / rx) ** 2 + (across / ry) ** 2).toBeCloseTo(1, 9);
    }
  });
});

describe('grain', () => {
  const grain = { along: place(1, 0, 0), pith: place(0, 50, -60), ring: 5 };
  const fromPith = ({ y, z }: Place) => Math.hypot(y - 50, z + 60);

  test('rings on an end and lines on a face belong to the same rings of one tree', () => {
    const end = [place(0, 0, 0), place(0, 100, 0), place(0, 100, -20), place(0, 0, -20)];
    const face = [place(0, 0, 0), place(200, 0, 0), place(200, 100, 0), place(0, 100, 0)];
    const lines = [
      ...grainOn(grain, end, place(-1, 0, 0), 1),
      ...grainOn(grain, face, place(0, 0, 1), 1),
    ];
    expect(lines.length).toBeGreaterThan(12);
    for (const at of lines.flat()) {
      expect(Math.abs(fromPith(at) / 5 - Math.round(fromPith(at) / 5))).toBeLessThan(1e-9);
    }
  });

  test('lines on a face run with the fibers and keep their distance', () => {
    const face = [place(0, 0, 0), place(200, 0, 0), place(200, 100, 0), place(0, 100, 0)];
    const at = [
      ...new Set(
        grainOn(grain, face, place(0, 0, 1), 8).map(([from, to]) => {
          expect(to!.y).toBeCloseTo(from!.y, 9);
          return Math.round(from!.y * 1e6) / 1e6;
        }),
      ),
    ].sort((a, b) => a - b);
    for (const [i, y] of at.slice(1).entries()) expect(y - at[i]!).toBeGreaterThanOrEqual(8 - 1e-6);
  });
});

describe('the drawing', () => {
  const draw = (plan: JointPlan, more: object = {}) =>
    render(Pictorial, { props: { plan, unit: 'in', width: 300, ...more } }).body;

  test.each(ORDINARY)('%s joint looks as it did', (_, plan) => {
    expect(draw(plan)).toMatchSnapshot();
  });

  test.each(ORDINARY)('%s: letters stand clear on the sheet at any width', (_, plan) => {
    for (const width of [280, 320, 560, 900]) {
      for (const apart of [0, 0.5, 1]) {
        const sheet = arrangePictorial(pictorialShapes(plan), pictorialShapes(plan, apart), width);
        expect(labelFaults(sheet)).toEqual([]);
      }
    }
  });

  test('keeps its size while the joint is pushed home', () => {
    const plan = ORDINARY[0]![1];
    const size = (html: string) => /viewBox="([^"]+)"/.exec(html)![1];
    expect(size(draw(plan, { apart: 0 }))).toBe(size(draw(plan, { apart: 1 })));
  });

  test('dashes what is hidden: the holes in A, and the walls of those in B', () => {
    const plan = planJoint({ ...ordinaryJoint('frame', 'in', inches(3 / 4)) });
    // Two walls, a floor and a mouth in A; B's mouth is seen.
    const dashed = [...draw(plan).matchAll(/class="hidden" d="([^"]*)"/g)].map(([, d]) => d);
    const hidden = dashed.join('').match(/M/g)!.length;
    expect(hidden).toBe(plan.positions.length * (4 + 3));
  });

  test('never leads a line to nowhere, whatever is typed', () => {
    fc.assert(
      fc.property(absurdSpec, (spec) => {
        const shapes = pictorialShapes(planJoint(spec), 1);
        const sheet = arrangePictorial(shapes, shapes, 320);
        for (const { d } of sheet.strokes) expect(d).not.toMatch(/NaN|Infinity/);
      }),
      { numRuns: 60 },
    );
  });

  test('says what stands where, and how deep the holes are', () => {
    const plan = planJoint(ordinaryJoint('leg', 'in', inches(3 / 4)));
    const text = describePictorial(plan, 1, 'in');
    expect(text).toContain('second apron, A2');
    expect(text).toContain('for each apron');
    expect(text).toMatch(/stand between the boards/);
    expect(describePictorial(plan, 0, 'mm')).toMatch(/hidden in their holes.* millimeters deep/);
  });
});
