import { describe, expect, it } from 'vitest';
import { mm, planJoint } from '../../../src/core/index.ts';
import {
  EMPTY_PIECE,
  withCount,
  withJoint,
  withJointMoved,
  withLabel,
  withSizes,
  withSpec,
  withoutJoint,
} from '../../../src/core/piece/changePiece.ts';
import { NO_LABEL } from '../../../src/core/setup/labels.ts';
import { ordinaryJoint } from '../../support/joints.ts';

const corner = ordinaryJoint('corner', 'mm', mm(18));
const tee = { ...ordinaryJoint('tee', 'mm', mm(18)), at: mm(200) };
const leg = ordinaryJoint('leg', 'mm', mm(18));

/** Sides to a top, and a shelf between them. */
const stand = [
  [corner, { ...NO_LABEL, name: 'Top', boardA: 'Side', boardB: 'Top', count: 2 }],
  [tee, { ...NO_LABEL, name: 'Shelf', boardA: 'Shelf', boardB: 'Side', count: 2 }],
] as const;
const piece = withCount(
  withCount(
    stand.reduce((all, [spec, label]) => withJoint(all, spec, label), EMPTY_PIECE),
    'Side',
    2,
  ),
  'Top',
  1,
);
const names = ({ labels }: typeof piece) => labels.map(({ name }) => name);

describe('a change of a piece', () => {
  it('moves a joint with its label, there and back', () => {
    const moved = withJointMoved(piece, 0, 1);
    expect(names(moved)).toEqual(['Shelf', 'Top']);
    expect(moved.joints).toEqual([tee, corner]);
    expect(withJointMoved(moved, 1, 0)).toEqual(piece);
  });

  it('takes a joint off, and no longer counts a board that no joint has', () => {
    const less = withoutJoint(piece, 0);
    expect(names(less)).toEqual(['Shelf']);
    expect(less.piece.boards).toEqual([{ name: 'Side', count: 2 }]);
  });

  it('makes a board that has a name thicker in every joint that it is in, and no other', () => {
    const thick = withSizes(piece, 0, 'a', { thickness: mm(25) });
    expect(thick.joints.map(({ a, b }) => [a.thickness, b.thickness])).toEqual([
      [25, 18],
      [18, 25],
    ]);
  });

  it('makes a board without a name thicker in its own joint only', () => {
    const nameless = withJoint(withJoint(EMPTY_PIECE, corner), corner);
    const thick = withSizes(nameless, 1, 'b', { thickness: mm(25) });
    expect(thick.joints.map(({ b }) => b.thickness)).toEqual([18, 25]);
  });

  it('keeps a leg square', () => {
    const { joints } = withSizes(withJoint(EMPTY_PIECE, leg), 0, 'b', { thickness: mm(45) });
    expect(joints[0]!.b).toMatchObject({ thickness: 45, width: 45 });
    expect(planJoint(joints[0]!).ok).toBe(true);
  });

  it('lets a board keep its count under another name, but not while the old name is in use', () => {
    const renamed = withLabel(piece, 0, { boardB: ' Lid ' });
    expect(renamed.labels[0]!.boardB).toBe('Lid');
    expect(renamed.piece.boards).toContainEqual({ name: 'Lid', count: 1 });
    const split = withLabel(piece, 0, { boardA: 'Gable' });
    expect(split.piece.boards.map(({ name }) => name).toSorted()).toEqual(['Side', 'Top']);
  });

  it('puts a joint back from the bench under the name that it had', () => {
    const back = withSpec(piece, 1, { ...tee, at: mm(300) });
    expect(names(back)).toEqual(['Top', 'Shelf']);
    expect(back.joints[1]!.at).toBe(300);
    expect(piece.joints[1]!.at).toBe(200);
  });
});
