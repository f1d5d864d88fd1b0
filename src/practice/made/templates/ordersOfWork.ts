import { about, jointOf } from '../joints.ts';
import type { DraftStep, Template } from '../template.ts';

const FIRST_OF_ALL: DraftStep = {
  id: 'manual',
  says: "Put on eye protection, and read what the drill's manual says about changing bits.",
  why: 'Every drill has its own rules, and they come before anything is touched.',
  misconception: 'hurry-with-the-drill',
};

const AT_THE_DRILL: readonly DraftStep[] = [
  {
    id: 'power-off',
    says: 'Take the battery out, or pull the plug.',
    why: 'The manual tells how your drill is made safe, so read it first.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'bit',
    says: 'Tighten the bit in the chuck, its collar at {b.stop} for B.',
    why: 'A drill that has power can start while your fingers are in the chuck.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'power-on',
    says: 'Give the drill its power back.',
    why: 'Power comes last of all the setting up: nothing is touched at the bit after it.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'scrap',
    says: 'Drill one hole in a clamped scrap, through the guide.',
    why: 'The trial hole shows what this very bit and collar do, so they must be set and the drill ready.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'measure',
    says: 'Measure the hole in the scrap: it should be {b.holeDepth} deep.',
    why: 'There has to be a hole before it can be measured.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'board',
    says: 'Drill B, clamped to the bench.',
    why: 'A wrong stop that shows in a scrap costs nothing. In B it costs the board.',
    misconception: 'hurry-with-the-drill',
  },
];

/** From the drill in its case to the first hole. */
export const orderAtTheDrill: Template = {
  id: 'order-at-the-drill',
  revision: 1,
  lesson: 'drilling-safely',
  joints: ['corner', 'tee', 'frame', 'leg'],
  kind: 'order',
  misconceptions: ['hurry-with-the-drill', 'set-before-the-choice'],
  draft(draws, system) {
    const spec = jointOf(draws, draws.joint(['corner', 'tee', 'frame', 'leg']), system);
    return {
      kind: 'order',
      ...about(spec),
      situation: 'You are to drill board B, which is {b.thickness} thick, through your guide.',
      ask: 'Put the steps in order.',
      // Eye protection and the manual come first, whatever is left out.
      steps: [FIRST_OF_ALL, ...draws.some(AT_THE_DRILL, draws.whole(3, 5))],
    };
  },
};

const AT_THE_BENCH: readonly DraftStep[] = [
  {
    id: 'measure',
    says: 'Measure the boards: A is {a.thickness} thick, B {b.thickness}.',
    why: 'Everything is worked out from the boards as they are, so they are measured first.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'pin',
    says: 'Choose the pin.',
    why: 'The pin is chosen for the boards, so their sizes have to be known.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'split',
    says: "Split the pin's length between A and B.",
    why: 'Until the pin is chosen there is no length to split.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'stop',
    says: 'Work out the stop for each board.',
    why: 'A stop is bushing, gap and depth of the hole. The depths come from the split.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'scrap',
    says: 'Set the stop and drill a hole in a scrap.',
    why: 'A collar can only be set to a number that has been worked out.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'drill',
    says: 'Drill the boards.',
    why: 'The stop is tried in a scrap before it is trusted in a board.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'dry-fit',
    says: 'Push the joint together dry.',
    why: 'There is nothing to push together before both boards are drilled.',
    misconception: 'glued-before-the-dry-fit',
  },
  {
    id: 'glue',
    says: 'Glue the pins and the joint.',
    why: 'With glue in it, a joint that does not close cannot be put right.',
    misconception: 'glued-before-the-dry-fit',
  },
  {
    id: 'clamp',
    says: 'Clamp the joint and let it stand.',
    why: 'The clamp holds what is glued while the glue sets, so the glue is in before it.',
    misconception: 'glued-before-the-dry-fit',
  },
];

/** From two boards to a glued joint. */
export const orderAtTheBench: Template = {
  id: 'order-at-the-bench',
  revision: 1,
  lesson: 'the-working-order-and-the-setup-sheet',
  joints: ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'],
  kind: 'order',
  misconceptions: ['set-before-the-choice', 'hurry-with-the-drill', 'glued-before-the-dry-fit'],
  draft(draws, system) {
    const kind = draws.joint(['edge', 'corner', 'tee', 'frame', 'miter', 'leg']);
    return {
      kind: 'order',
      ...about(jointOf(draws, kind, system)),
      situation: 'Two boards, A and B, lie on your bench and are to be joined with pins.',
      ask: 'Put the steps in order.',
      steps: draws.some(AT_THE_BENCH, draws.whole(5, 7)),
    };
  },
};

const A_WHOLE_PIECE: readonly DraftStep[] = [
  {
    id: 'draw',
    says: 'Draw the plant stand and list its joints.',
    why: 'Nothing can be counted or marked for a piece that is not drawn.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'order',
    says: 'Count the pins and order them, with some to spare.',
    why: 'The list of joints tells how many pins there are to count.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'caliper',
    says: 'Measure the pins that came with a caliper.',
    why: 'Only pins that are there can be measured.',
    misconception: 'set-before-the-choice',
  },
  {
    id: 'drill',
    says: 'Drill every joint, marked faces and ends toward the guide.',
    why: 'The bit has to belong to the pins as they measure, so they come first.',
    misconception: 'hurry-with-the-drill',
  },
  {
    id: 'dry-fit',
    says: 'Put the whole stand together dry.',
    why: 'It can only be put together when all its holes are drilled.',
    misconception: 'glued-before-the-dry-fit',
  },
  {
    id: 'sign-off',
    says: 'Have the dry stand looked at and signed off.',
    why: 'What is signed off is the stand as it stands together, dry.',
    misconception: 'glued-before-the-dry-fit',
  },
  {
    id: 'glue',
    says: 'Take it apart and glue it, joint by joint.',
    why: 'After glue nothing can be put right. That is why somebody looks first.',
    misconception: 'glued-before-the-dry-fit',
  },
];

/** From a drawing to a glued piece. */
export const orderOfAPiece: Template = {
  id: 'order-of-a-piece',
  revision: 1,
  lesson: 'plan-a-whole-piece',
  joints: ['corner', 'tee'],
  kind: 'order',
  misconceptions: ['set-before-the-choice', 'hurry-with-the-drill', 'glued-before-the-dry-fit'],
  draft(draws, system) {
    return {
      kind: 'order',
      ...about(jointOf(draws, draws.joint(['corner', 'tee']), system)),
      situation:
        'You make the two-shelf plant stand from boards {a.thickness} thick, from the drawing to the glue.',
      ask: 'Put the steps in order.',
      steps: draws.some(A_WHOLE_PIECE, draws.whole(4, 6)),
    };
  },
};
