import fc from 'fast-check';
import {
  type BitPoint,
  type Board,
  type JointKind,
  type JointSpec,
  type Mm,
  type Pin,
  type System,
  inches,
  mm,
  speciesNames,
} from '../../src/core/index.ts';

export const KINDS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

/** A board of one thickness, ordinary otherwise. */
export function board(thickness: Mm, width = mm(140), length = mm(600)): Board {
  return { thickness, width, length };
}

/** A joint of any kind in boards of one thickness, as a class would make it. */
export function ordinaryJoint(kind: JointKind, system: System, thickness: Mm): JointSpec {
  const width = kind === 'frame' || kind === 'miter' ? inches(2) : mm(140);
  const a = board(thickness, width);
  if (kind !== 'leg') return { kind, system, a, b: a };
  const side = mm(Math.max(38.1, 2 * thickness));
  return { kind, system, a, b: { thickness: side, width: side, length: mm(700) } };
}

const point = (spur: fc.Arbitrary<number>): fc.Arbitrary<BitPoint> =>
  fc.oneof(
    fc.record({
      kind: fc.constant('twist' as const),
      angle: fc.double({ min: 60, max: 180, noNaN: true }),
    }),
    fc.record({ kind: fc.constant('brad' as const) }),
    fc.record({ kind: fc.constant('brad' as const), spur: spur.map(mm) }),
    fc.record({ kind: fc.constant('center' as const), spur: spur.map(mm) }),
    fc.record({ kind: fc.constant('square' as const) }),
  );

/** Fills a spec from a generator of lengths, so that sensible and absurd specs share a shape. */
function specOf(length: (least: number, most: number) => fc.Arbitrary<number>) {
  const between = (least: number, most: number): fc.Arbitrary<Mm> => length(least, most).map(mm);
  const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });
  const wood = maybe(fc.constantFrom(...speciesNames));
  const boards = fc.record({
    thickness: between(10, 45),
    width: between(40, 300),
    length: between(150, 1200),
    species: wood,
  });
  const pin: fc.Arbitrary<Pin> = fc.record({
    diameter: between(5, 14),
    length: between(20, 70),
  });
  return fc
    .record({
      kind: fc.constantFrom(...KINDS),
      system: fc.constantFrom<System>('in', 'mm'),
      a: boards,
      b: boards,
      leg: between(25, 90),
      drilled: maybe(fc.constantFrom('end' as const, 'edge' as const)),
      jointLength: maybe(between(40, 300)),
      pin: fc.oneof(fc.constant('choose' as const), pin),
      diameterRule: maybe(fc.constantFrom('shop-table' as const, 'ratio' as const)),
      allowance: maybe(between(0, 6)),
      leave: maybe(between(0, 6)),
      bit: fc.record({ diameter: maybe(between(5, 14)), point: maybe(point(length(0, 8))) }),
      guide: fc.record({
        bushing: maybe(between(0, 60)),
        standoff: maybe(between(0, 20)),
        offset: maybe(length(-2, 2).map(mm)),
        centering: maybe(fc.boolean()),
      }),
      layout: fc.record({
        endMargin: maybe(between(5, 80)),
        maxPitch: maybe(between(30, 250)),
        minPitch: maybe(between(12, 60)),
      }),
      overhang: maybe(between(0, 30)),
      at: maybe(between(0, 100)),
      reveal: maybe(length(-5, 5).map(mm)),
      setback: maybe(between(0, 10)),
      stagger: maybe(between(0, 40)),
    })
    .map(({ leg, ...spec }) => {
      // Optional fields are absent, not undefined, as the types want them.
      const dropped = JSON.parse(JSON.stringify(spec)) as JointSpec;
      return spec.kind === 'leg'
        ? { ...dropped, b: { ...dropped.b, thickness: leg, width: leg } }
        : dropped;
    });
}

/** Setups that a shop could have on its benches. */
export const sensibleSpec: fc.Arbitrary<JointSpec> = specOf((least, most) =>
  fc.double({ min: least, max: most, noNaN: true }),
);

/** Setups with lengths that no one could mean: zero, negative, minute, vast. */
export const absurdSpec: fc.Arbitrary<JointSpec> = specOf((least, most) =>
  fc.oneof(
    fc.double({ min: least, max: most, noNaN: true }),
    fc.constantFrom(0, -1, 1e-9, 1e-3, 0.5, 99_999, 100_000, 1e7, -1e9, Number.MIN_VALUE),
    fc.double({ min: -1000, max: 200_000, noNaN: true }),
  ),
);
