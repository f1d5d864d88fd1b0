import type { JointKind } from '../joint/types.ts';
import { type Sentence, say } from '../working/sentence.ts';
import { type BitGroup, totalsOf } from './drillList.ts';
import type { Materials } from './materials.ts';
import { OFF, type WorkStep } from './orderOfWork.ts';
import type { PlannedPiece } from './planPiece.ts';

/** In which order joints are closed, and why then: common practice, no source. */
const GLUED: readonly { readonly kinds: readonly JointKind[]; readonly why: string }[] = [
  { kinds: ['frame', 'miter'], why: 'frames, which lie flat' },
  { kinds: ['leg'], why: 'legs and aprons, two opposite sides first, then the rest between them' },
  { kinds: ['tee'], why: 'what stands between other boards, all at once' },
  { kinds: ['corner'], why: 'what closes the piece' },
];

/** 'A', 'A and B', 'A, B and C'. */
function listed(words: readonly string[]): string {
  return words.length < 2
    ? words.join('')
    : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
}

/**
 * What is done to make a whole piece, in order: what is glued up into a panel comes before what is
 * laid out on it, and every setting is tried before it serves. Joints that can't be made are left
 * out. For a piece with at least one that can.
 * @param bits its drill list
 * @param material its boards
 */
export function orderOfPiece(
  piece: PlannedPiece,
  bits: readonly BitGroup[],
  { boards }: Materials,
): readonly WorkStep[] {
  const made = piece.joints.filter((joint) => joint.made);
  const numbersOf = (kinds: readonly JointKind[]) =>
    made
      .filter(({ plan }) => kinds.includes(plan.kind))
      .map(({ numbers: { first, last } }) => (first === last ? `${first}` : `${first} to ${last}`));
  const joints = (numbers: readonly string[]) =>
    `${numbers.length === 1 && !numbers[0]!.includes('to') ? 'joint' : 'joints'} ${listed(numbers)}`;

  const panels = numbersOf(['edge']);
  const others = made.some(({ plan }) => plan.kind !== 'edge');
  const gluedUp = boards.filter(({ count }) => count === 0).map(({ name }) => name);
  const { settings } = totalsOf(bits);
  const steps = GLUED.flatMap(({ kinds, why }) => {
    const numbers = numbersOf(kinds);
    return numbers.length === 0 ? [] : [`${why} (${joints(numbers)})`];
  });
  const wait: Sentence =
    gluedUp.length === 0
      ? []
      : say` Rows in ${listed(gluedUp)} wait until that is glued up: set the stop again then, and try it again.`;

  return [
    {
      id: 'measure',
      title: 'Measure',
      says: say`Every board against the list of material. More than ${OFF[made[0]!.plan.system]} off? Change it in the plan first: the stops follow.`,
    },
    {
      id: 'marks',
      title: 'Mark and number',
      says: say`Face and edge marks on every board, by the same list. Lay the boards as they come together, and chalk each joint’s number with its letter on both, on the side that the guide sits on.`,
    },
    ...(panels.length === 0 || !others
      ? []
      : [
          {
            id: 'panels',
            title: 'Panels first',
            says: say`Lay out, drill and glue ${joints(panels)} before the rest. ${gluedUp.length === 0 ? 'What comes on a panel' : listed(gluedUp)} is laid out when the glue has set and the panel is flat and measured.`,
          },
        ]),
    {
      id: 'lay-out',
      title: 'Lay out',
      says: say`Every row from its own reference, by the marks of its joint or by its story stick.`,
    },
    {
      id: 'drill',
      title: 'Drill',
      says: [
        ...say`By the drill list, from its top${settings === 1 ? '' : `, ${settings} settings`}. Set, drill one hole in an offcut, measure; then every row of that setting, ticked off; then the next.`,
        ...wait,
      ],
    },
    {
      id: 'clean',
      title: 'Clean',
      says: say`Shake or vacuum the chips out, never blow. Take the sharp rim off each hole.`,
    },
    {
      id: 'dry-fit',
      title: 'Dry fit',
      says: say`The whole piece, with pins sanded to slide, and marked so. Every joint closes by hand. Write down gaps and steps by the joint’s number.`,
    },
    {
      id: 'glue',
      title: 'Glue',
      says: [
        ...say`Rehearse every step with its clamps, against the open time on the glue’s label.`,
        ...(steps.length === 0 ? [] : say` In this order: ${steps.join('; ')}.`),
      ],
    },
    {
      id: 'check',
      title: 'Check',
      says: say`In the clamps, before the glue takes hold: faces flush, both diagonals equal, no twist.`,
    },
  ];
}
