import type { Caution, JointPlan, MemberPlan, ResolvedSpec } from '../../../core/joint/types.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { pointName } from '../../class/order/orderRows.ts';
import { jointNames } from './startingJoints.ts';

/** A length, a count, or words; null where a joint has no such thing. */
export type Compared = { readonly mm: Mm } | number | string | null;

/** One thing of two joints in which they differ. */
export interface Difference {
  readonly label: string;
  readonly here: Compared;
  readonly aside: Compared;
  /** By how much this one is longer, in mm; null where that says nothing. */
  readonly longer: Mm | null;
}

export interface Comparison {
  /** What was set otherwise, then what follows from it. */
  readonly set: readonly Difference[];
  readonly follows: readonly Difference[];
  /** Names of what is the same in both. */
  readonly alike: readonly string[];
  /** What only one of them is warned of. */
  readonly onlyHere: readonly Caution[];
  readonly onlyAside: readonly Caution[];
}

/** Lengths count as equal below this, in mm. */
const SAME = 1e-6;

type Row = readonly [label: string, of: (plan: JointPlan) => Compared];

const length = (value: Mm | null | undefined): Compared =>
  value === null || value === undefined ? null : { mm: value };
const member = (label: string, of: (member: MemberPlan) => Mm | null): Row[] =>
  (['a', 'b'] as const).map((side) => [
    `${label} in ${side.toUpperCase()}`,
    (plan) => (plan.holes.length === 0 ? null : length(of(plan[side]))),
  ]);
const given = (label: string, of: (spec: ResolvedSpec) => Mm): Row => [
  label,
  ({ spec }) => length(of(spec)),
];

const SET: readonly Row[] = [
  ['Joint', ({ kind }) => jointNames.find((joint) => joint.kind === kind)!.name],
  ...(['a', 'b'] as const).flatMap((side): Row[] => [
    given(`Thickness of ${side.toUpperCase()}`, (spec) => spec[side].thickness),
    given(`Width of ${side.toUpperCase()}`, (spec) => spec[side].width),
    given(`Length of ${side.toUpperCase()}`, (spec) => spec[side].length),
  ]),
  ['A is drilled in its', ({ spec }) => spec.drilled],
  given('Bit', (spec) => spec.bit.diameter),
  ['Point of the bit', ({ spec }) => pointName(spec.bit.point)],
  given('Bushing', (spec) => spec.guide.bushing),
  given('Guide above the wood', (spec) => spec.guide.standoff),
  given('Free depth past the pin', (spec) => spec.allowance),
  given('Wood to leave', (spec) => spec.leave),
  given('Overhang', (spec) => spec.overhang),
  given('A lies from B’s end', (spec) => spec.at),
  given('A lies behind B’s face', (spec) => spec.reveal),
  given('Setback', (spec) => spec.setback),
  given('Second row shifted', (spec) => spec.stagger),
];

const FOLLOWS: readonly Row[] = [
  ['Pin, across', ({ pin }) => length(pin?.diameter)],
  ['Pin, long', ({ pin }) => length(pin?.length)],
  ['Pins', ({ positions, secondRow }) => positions.length + secondRow.length],
  ...member('Pin held', ({ engagement }) => engagement),
  ...member('Depth of the hole', ({ holeDepth }) => holeDepth),
  ...member('Wood left', ({ woodLeft }) => woodLeft),
  ...member('Wood beside the hole', ({ wall }) => wall),
  ...member('Stop on the bit', ({ stop }) => stop),
  ['First mark', ({ marks }) => length(marks.at(0))],
  ['Last mark', ({ marks }) => length(marks.at(-1))],
];

function same(here: Compared, aside: Compared): boolean {
  return isLength(here) && isLength(aside) ? Math.abs(here.mm - aside.mm) < SAME : here === aside;
}

const isLength = (value: Compared): value is { readonly mm: Mm } =>
  typeof value === 'object' && value !== null;

/** In what two planned joints differ: lengths in mm, by how much, and what each is warned of. */
export function compareJoints(here: JointPlan, aside: JointPlan): Comparison {
  const alike: string[] = [];
  const differing = (rows: readonly Row[]): Difference[] =>
    rows.flatMap(([label, of]) => {
      const [one, other] = [of(here), of(aside)];
      if (!same(one, other)) {
        const longer = isLength(one) && isLength(other) ? mm(one.mm - other.mm) : null;
        return { label, here: one, aside: other, longer };
      }
      // Nothing is overhung, set back or shifted in most joints: no news.
      if (one !== null && !(isLength(one) && one.mm === 0)) alike.push(label);
      return [];
    });
  const says = ({ code, message }: Caution) => `${code} ${message}`;
  const only = (one: JointPlan, other: JointPlan) =>
    one.cautions.filter((caution) => !other.cautions.some((each) => says(each) === says(caution)));
  return {
    set: differing(SET),
    follows: differing(FOLLOWS),
    alike,
    onlyHere: only(here, aside),
    onlyAside: only(aside, here),
  };
}
