import type { Mm } from '../length/mm.ts';
import type { BitPoint } from '../joint/types.ts';
import type { JointNumbers } from './numberJoints.ts';
import { SAME_STOP } from './orderOfWork.ts';
import { type Member, type PlannedJoint, markOf, membersOf } from './planPiece.ts';
import { type References, referencesOf } from './references.ts';

/** Rows of holes that are drilled in one go: one side of a joint, on all boards that are alike. */
export interface DrilledRow {
  /** What stands on the boards at this row: '3A to 6A'. */
  readonly mark: string;
  readonly numbers: JointNumbers;
  readonly member: Member;
  /** The board by its name. */
  readonly board: string;
  readonly drilled: References['drilled'];
  /** Holes in each row, and in all rows together. */
  readonly each: number;
  readonly holes: number;
  /** Full-diameter depth, mm. */
  readonly depth: Mm;
  /** Gap between bushing and wood, mm. */
  readonly standoff: Mm;
}

/** One setting of the collar, and all that is drilled before it is touched again. */
export interface DrillSetting {
  /** From the collar to the full-diameter corner of the bit, mm. */
  readonly stop: Mm;
  readonly stopFromPoint: Mm;
  readonly holes: number;
  readonly rows: readonly DrilledRow[];
}

export interface BushingGroup {
  /** Length of the bushing, mm. */
  readonly bushing: Mm;
  readonly settings: readonly DrillSetting[];
}

export interface BitGroup {
  readonly diameter: Mm;
  readonly point: BitPoint;
  readonly bushings: readonly BushingGroup[];
}

interface Drilling extends DrilledRow {
  readonly diameter: Mm;
  readonly point: BitPoint;
  readonly bushing: Mm;
  readonly stop: Mm;
  readonly stopFromPoint: Mm;
}

function drillingsOf(joint: PlannedJoint): readonly Drilling[] {
  const { plan, numbers, label } = joint;
  const { spec } = plan;
  const references = referencesOf(plan);
  return membersOf(plan).map((member): Drilling => {
    const side = member === 'a' || member === 'a2' ? 'a' : 'b';
    const each = member.length === 1 ? plan.holes.length : plan.secondRow.length;
    return {
      mark: markOf(numbers, member),
      numbers,
      member,
      board: side === 'a' ? joint.boardA : joint.boardB,
      drilled: references[side].drilled,
      each,
      holes: each * label.count,
      depth: plan[side].holeDepth,
      standoff: spec.guide.standoff,
      diameter: spec.bit.diameter,
      point: spec.bit.point,
      bushing: spec.guide.bushing,
      stop: plan[side].stop,
      stopFromPoint: plan[side].stopFromPoint,
    };
  });
}

/** Groups of what is alike, the smallest first; what is alike keeps its order. */
function grouped<Item>(
  items: readonly Item[],
  compare: (one: Item, other: Item) => number,
  alike: (one: Item, other: Item) => boolean,
): readonly (readonly [Item, ...Item[]])[] {
  const groups: [Item, ...Item[]][] = [];
  for (const item of items.toSorted(compare)) {
    const group = groups.findLast(([first]) => alike(first, item));
    if (group) group.push(item);
    else groups.push([item]);
  }
  return groups;
}

/** Lengths that no one sets apart; stops are set by hand and eye, bits and bushings bought. */
const same = (one: number, other: number) => Math.abs(one - other) < SAME_STOP;

const points = ({ point }: Drilling) => JSON.stringify(point);

/**
 * Every hole of a piece once, so that each bit, each bushing and each stop is set once for all
 * holes that share it: by bit, then by bushing, then by stop, the shallow ones first. Joints that
 * can't be made are left out.
 */
export function drillList(joints: readonly PlannedJoint[]): readonly BitGroup[] {
  const drillings = joints.filter(({ made }) => made).flatMap(drillingsOf);
  return grouped(
    drillings,
    (one, other) => one.diameter - other.diameter || points(one).localeCompare(points(other), 'en'),
    (one, other) => same(one.diameter, other.diameter) && points(one) === points(other),
  ).map((ofBit): BitGroup => ({
    diameter: ofBit[0].diameter,
    point: ofBit[0].point,
    bushings: grouped(
      ofBit,
      (one, other) => one.bushing - other.bushing,
      (one, other) => same(one.bushing, other.bushing),
    ).map((ofBushing): BushingGroup => ({
      bushing: ofBushing[0].bushing,
      settings: grouped(
        ofBushing,
        (one, other) => one.stop - other.stop,
        (one, other) => same(one.stop, other.stop),
      ).map((rows): DrillSetting => ({
        stop: rows[0].stop,
        stopFromPoint: rows[0].stopFromPoint,
        holes: rows.reduce((sum, { holes }) => sum + holes, 0),
        rows: rows.toSorted(
          (one, other) =>
            one.numbers.first - other.numbers.first || one.member.localeCompare(other.member, 'en'),
        ),
      })),
    })),
  }));
}

/** How often the collar is set in a drill list, and how many holes there are in all. */
export function totalsOf(bits: readonly BitGroup[]): { settings: number; holes: number } {
  const settings = bits.flatMap(({ bushings }) => bushings.flatMap((each) => each.settings));
  return {
    settings: settings.length,
    holes: settings.reduce((sum, { holes }) => sum + holes, 0),
  };
}
