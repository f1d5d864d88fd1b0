import { glueRoom } from '../fit/glueRoom.ts';
import { diameterOfPin } from '../fit/fit.ts';
import { mm } from '../length/mm.ts';
import type { Board, Pin } from '../joint/types.ts';
import {
  type Member,
  type PlannedPiece,
  type PlannedJoint,
  markOf,
  membersOf,
} from './planPiece.ts';
import { type References, referencesOf } from './references.ts';

/** What is written on a board where a joint comes. */
export interface BoardMark {
  readonly mark: string;
  readonly member: Member;
  /** The side that the holes go into, and so where the mark stands. */
  readonly drilled: References['drilled'];
}

/** One board of the list, or several alike. */
export interface PieceBoard {
  readonly name: string;
  /** As the first joint that it belongs to has it. */
  readonly board: Board;
  /** 0 where it is glued up from others of the list. */
  readonly count: number;
  /** False for a board that nobody named: it is counted once for every joint that it is in. */
  readonly named: boolean;
  /** Sides that carry a face or edge mark, since something is measured from them. */
  readonly references: readonly string[];
  readonly marks: readonly BoardMark[];
}

export interface PiecePins {
  readonly pin: Pin;
  readonly inJoints: number;
  /** One for the test joint of every entry. */
  readonly inTests: number;
  readonly spare: number;
  readonly total: number;
}

export interface Materials {
  readonly boards: readonly PieceBoard[];
  readonly pins: readonly PiecePins[];
  /** Room for glue around and past all pins and under the points, mm³: the most that the holes take. */
  readonly glueInHoles: number;
  /** Faces that meet and are spread with glue, mm². */
  readonly glueFaces: number;
}

/** Pins to have beyond those needed, as a share of them; common practice. */
const SPARE = 0.1;

/** Aprons of a leg joint are two, of any other joint there is one A. */
function boardsIn(joint: PlannedJoint, side: 'a' | 'b'): number {
  return joint.label.count * (side === 'a' && joint.plan.secondRow.length > 0 ? 2 : 1);
}

function boardsOf({ joints, boards }: PlannedPiece): readonly PieceBoard[] {
  const found = new Map<string, PieceBoard>();
  for (const joint of joints.filter(({ made }) => made)) {
    const references = referencesOf(joint.plan);
    for (const side of ['a', 'b'] as const) {
      const name = side === 'a' ? joint.boardA : joint.boardB;
      const named = (side === 'a' ? joint.label.boardA : joint.label.boardB) !== '';
      const before = found.get(name);
      const { along, across, drilled } = references[side];
      found.set(name, {
        name,
        board: before?.board ?? joint.plan.spec[side],
        named,
        count: named
          ? (boards.find((each) => each.name === name)?.count ?? 1)
          : boardsIn(joint, side),
        references: [...new Set([...(before?.references ?? []), across, along])],
        marks: [
          ...(before?.marks ?? []),
          ...membersOf(joint.plan)
            .filter((member) => member.startsWith(side))
            .map((member) => ({ mark: markOf(joint.numbers, member), member, drilled })),
        ],
      });
    }
  }
  return [...found.values()];
}

function pinsOf(joints: readonly PlannedJoint[]): readonly PiecePins[] {
  const sizes = new Map<string, { pin: Pin; inJoints: number; inTests: number }>();
  for (const { plan, label } of joints) {
    const pin = plan.pin!;
    const key = `${pin.diameter} ${pin.length}`;
    const size = sizes.get(key) ?? { pin, inJoints: 0, inTests: 0 };
    size.inJoints += (plan.holes.length + plan.secondRow.length) * label.count;
    size.inTests += 1;
    sizes.set(key, size);
  }
  return [...sizes.values()]
    .sort(
      (one, other) => one.pin.diameter - other.pin.diameter || one.pin.length - other.pin.length,
    )
    .map(({ pin, inJoints, inTests }) => {
      // A tenth of 30 is 3, whatever 0.1 is in binary.
      const spare = Math.ceil((inJoints + inTests) * SPARE - 1e-9);
      return { pin, inJoints, inTests, spare, total: inJoints + inTests + spare };
    });
}

function glueInHoles({ plan, label }: PlannedJoint): number {
  const { spec } = plan;
  const { bit } = spec;
  const { diameter } = plan.pin!;
  // A hair of a pin, typed by a slip, still has a diameter.
  const pin = mm(Math.max(diameterOfPin({ diameter }), diameter / 2));
  const pins = (plan.holes.length + plan.secondRow.length) * label.count;
  const room = [plan.a, plan.b].reduce((sum, { engagement }) => {
    const { total } = glueRoom({
      hole: bit.diameter,
      pin,
      engagement,
      allowance: spec.allowance,
      cone: bit.point.kind === 'twist' ? bit.tip : mm(0),
      flutes: 0,
      fluteArea: 0,
      glue: 0,
    });
    return sum + total;
  }, 0);
  return room * pins;
}

function glueFaces({ plan, label }: PlannedJoint): number {
  const faces = plan.secondRow.length > 0 ? 2 : 1;
  return plan.spec.jointLength * plan.spec.a.thickness * faces * label.count;
}

/**
 * What a piece takes: its boards with the marks to make on them, its pins with one for each test
 * joint and a tenth to spare, and the room that its holes have for glue. Joints that can't be
 * made are left out.
 */
export function materials(piece: PlannedPiece): Materials {
  const made = piece.joints.filter((joint) => joint.made);
  const sum = (of: (joint: PlannedJoint) => number) =>
    made.reduce((total, joint) => total + of(joint), 0);
  return {
    boards: boardsOf(piece),
    pins: pinsOf(made),
    glueInHoles: sum(glueInHoles),
    glueFaces: sum(glueFaces),
  };
}
