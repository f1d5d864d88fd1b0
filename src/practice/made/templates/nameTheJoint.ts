import type { JointKind } from '../../../core/joint/types.ts';
import { about, jointOf } from '../joints.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

const KINDS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

/** Each joint by what is drilled, without its name. */
const DRILLED: Readonly<Record<JointKind, string>> = {
  edge: 'Board A is drilled in its long edge, and so is board B. Both are {a.thickness} thick. Together they make a wider board.',
  corner:
    'Board A is {a.thickness} thick and drilled in its end. Board B is drilled in its face, right at its own end.',
  tee: "Board A is {a.thickness} thick and drilled in its end. Board B is drilled in its face, {at} from B's end.",
  frame:
    'Board A is {a.width} wide and drilled in its end. Board B is drilled in its edge. Their faces lie in one plane.',
  miter:
    'Boards A and B are both {a.width} wide. Each is cut at 45° across its width and drilled in the cut.',
  leg: 'Board A is {a.width} wide and drilled in its end. B is square, {b.thickness} on each side, and takes another board like A from the next side.',
};

const NAMES: Readonly<Record<JointKind, string>> = {
  edge: 'An edge joint',
  corner: 'A corner joint',
  tee: 'A tee joint',
  frame: 'A frame joint',
  miter: 'A miter joint',
  leg: 'A leg joint',
};

const NEEDS: Readonly<Record<JointKind, string>> = {
  edge: 'In an edge joint both boards are drilled in a long edge.',
  corner:
    "In a corner joint A's end or edge meets B's face at B's very end: together they turn a corner.",
  tee: "In a tee joint A's end or edge meets B's face away from B's ends, as a shelf meets a side.",
  frame: "In a frame joint a rail's end meets a stile's edge, and both lie flat.",
  miter: 'In a miter joint both members are cut at 45°.',
  leg: "In a leg joint an apron's end goes into a square leg, which takes a second apron.",
};

/** Which of the six joints is it? */
export const nameTheJoint: Template = {
  id: 'name-the-joint',
  revision: 1,
  lesson: 'what-a-dowel-joint-is',
  joints: KINDS,
  kind: 'one',
  misconceptions: ['joint-by-its-boards'],
  draft(draws, system) {
    const kind = draws.joint(KINDS);
    const others = draws.some(
      KINDS.filter((each) => each !== kind),
      3,
    );
    const joint = jointOf(draws, kind, system);
    const at = steps(system, 16 * draws.whole(4, 10), 10 * draws.whole(10, 25));
    const spec = kind === 'tee' ? { ...joint, at } : joint;
    return {
      kind: 'one',
      ...about(spec),
      situation: DRILLED[kind],
      ask: 'Which joint is it?',
      choices: [
        { id: kind, says: `${NAMES[kind]}.`, right: true, why: NEEDS[kind] },
        ...others.map((other) => ({
          id: other,
          says: `${NAMES[other]}.`,
          misconception: 'joint-by-its-boards',
          why: `${NEEDS[other]} Look again at where the holes are here.`,
        })),
      ],
      working: 'b.limit',
    };
  },
};
