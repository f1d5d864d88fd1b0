import type { Board, JointSpec } from '../joint/types.ts';
import { type JointLabel, NO_LABEL, tidyName } from '../setup/labels.ts';
import type { ReadSetup } from '../setup/setupLink.ts';

/** The sizes of a board that can be changed, mm; the species stays. */
export type Sizes = Pick<Board, 'thickness' | 'width' | 'length'>;

/** A piece without a joint. */
export const EMPTY_PIECE: ReadSetup = { joints: [], labels: [], piece: { title: '', boards: [] } };

const namesIn = (labels: readonly JointLabel[]) =>
  new Set(labels.flatMap(({ boardA, boardB }) => [boardA, boardB]));

/** The piece with other joints; boards that no joint has any longer are counted no longer. */
function withJoints(
  piece: ReadSetup,
  joints: readonly JointSpec[],
  labels: readonly JointLabel[],
): ReadSetup {
  const used = namesIn(labels);
  const boards = piece.piece.boards.filter(({ name }) => used.has(name));
  return { ...piece, joints, labels, piece: { ...piece.piece, boards } };
}

/** A piece with one more joint at its end. */
export function withJoint(piece: ReadSetup, spec: JointSpec, label = NO_LABEL): ReadSetup {
  return withJoints(piece, [...piece.joints, spec], [...piece.labels, label]);
}

/** A piece without one of its joints. @param at its place, from 0 */
export function withoutJoint(piece: ReadSetup, at: number): ReadSetup {
  return withJoints(piece, piece.joints.toSpliced(at, 1), piece.labels.toSpliced(at, 1));
}

/** A piece with one of its joints at another place. Places count from 0. */
export function withJointMoved(piece: ReadSetup, from: number, to: number): ReadSetup {
  const moved = <Item>(items: readonly Item[]) =>
    items.toSpliced(from, 1).toSpliced(to, 0, items[from]!);
  return withJoints(piece, moved(piece.joints), moved(piece.labels));
}

/** A piece with another joint in the place of one; what it and its boards are called stays. */
export function withSpec(piece: ReadSetup, at: number, spec: JointSpec): ReadSetup {
  return withJoints(piece, piece.joints.with(at, spec), piece.labels);
}

/**
 * A piece with a joint called something else, or made more or less often. A board whose name is
 * changed wherever it stands keeps its count.
 */
export function withLabel(piece: ReadSetup, at: number, change: Partial<JointLabel>): ReadSetup {
  const before = piece.labels[at]!;
  const after = { ...before, ...change };
  const label = {
    ...after,
    name: tidyName(after.name),
    boardA: tidyName(after.boardA),
    boardB: tidyName(after.boardB),
  };
  const labels = piece.labels.with(at, label);
  const [had, have] = [namesIn(piece.labels), namesIn(labels)];
  const boards = piece.piece.boards.map((board) => {
    if (have.has(board.name)) return board;
    const to = board.name === before.boardA ? label.boardA : label.boardB;
    return to === '' || had.has(to) ? board : { ...board, name: to };
  });
  return withJoints({ ...piece, piece: { ...piece.piece, boards } }, piece.joints, labels);
}

/** A piece that has as many of a board. @param count a whole number; 0 where it is glued up */
export function withCount(piece: ReadSetup, name: string, count: number): ReadSetup {
  const others = piece.piece.boards.filter((board) => board.name !== name);
  return { ...piece, piece: { ...piece.piece, boards: [...others, { name, count }] } };
}

/** A leg is square: one side sets the other. */
function resized(spec: JointSpec, side: 'a' | 'b', sizes: Partial<Sizes>): JointSpec {
  const square = spec.kind === 'leg' && side === 'b' ? (sizes.thickness ?? sizes.width) : undefined;
  return {
    ...spec,
    [side]: {
      ...spec[side],
      ...sizes,
      ...(square === undefined ? {} : { thickness: square, width: square }),
    },
  };
}

/**
 * A piece with a board of another size. A board that has a name is one board, whatever joint it
 * is in: it changes in all of them.
 * @param at the place of a joint that has the board, from 0
 */
export function withSizes(
  piece: ReadSetup,
  at: number,
  side: 'a' | 'b',
  sizes: Partial<Sizes>,
): ReadSetup {
  const { boardA, boardB } = piece.labels[at]!;
  const name = side === 'a' ? boardA : boardB;
  const joints = piece.joints.map((spec, i) => {
    const label = piece.labels[i]!;
    const has = (one: 'a' | 'b') =>
      name === '' ? i === at && one === side : name === (one === 'a' ? label.boardA : label.boardB);
    return (['a', 'b'] as const)
      .filter(has)
      .reduce((changed, one) => resized(changed, one, sizes), spec);
  });
  return withJoints(piece, joints, piece.labels);
}
