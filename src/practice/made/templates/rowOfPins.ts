import type { JointSpec, System } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import type { Draws } from '../draws.ts';
import { about, instead, jointOf } from '../joints.ts';
import { passedOver, withMore } from '../numbersFrom.ts';
import { steps } from '../shop.ts';
import type { Numbers } from '../../questions/numbers.ts';
import type { DraftChoice, Template } from '../template.ts';
import { valueOf } from '../values.ts';

const KINDS = ['corner', 'tee', 'edge'] as const;

/** Where a row stands, in a sentence. */
function rowIn({ kind }: JointSpec): string {
  return {
    corner: 'A corner of the plant stand: the joint is {jointLength} long.',
    tee: "A fixed shelf of the plant stand: the joint is {jointLength} long, the shelf's width.",
    edge: "Two boards of the plant stand's top, edge to edge: the joint is {jointLength} long.",
  }[kind as (typeof KINDS)[number]];
}

/** A row whose pins stand on whole shop steps: first pin and spacing are drawn, the joint is as long as they make it. */
function evenRow(draws: Draws, system: System, least: number, most: number) {
  const joint = jointOf(draws, draws.joint(KINDS), system);
  const spaces = draws.whole(least, most);
  const margin = steps(system, draws.whole(12, 24), 5 * draws.whole(4, 8));
  const pitch = steps(system, draws.whole(32, 72), 5 * draws.whole(10, 24));
  const length = mm(2 * margin + spaces * pitch);
  const layout = { endMargin: margin, maxPitch: pitch };
  const spec: JointSpec =
    joint.kind === 'edge'
      ? { ...joint, layout, a: { ...joint.a, length }, b: { ...joint.b, length } }
      : { ...joint, layout, a: { ...joint.a, width: length }, b: { ...joint.b, width: length } };
  return { spec, spaces, endMargin: margin };
}

/** The choices that give different numbers: of two mistakes that come to the same, the first. */
function told(numbers: Numbers, choices: readonly DraftChoice[]): readonly DraftChoice[] {
  const counts = choices.map(({ of = '', changed }) => valueOf(of, { numbers, changed }).value);
  return choices.filter((_, i) => counts.indexOf(counts[i]!) === i);
}

/** How many pins does a row take? */
export const howManyPins: Template = {
  id: 'how-many-pins',
  revision: 1,
  lesson: 'placing-the-pins',
  joints: KINDS,
  kind: 'one',
  misconceptions: ['counted-the-spaces', 'forgot-the-margin', 'margin-at-one-end'],
  draft(draws, system) {
    const joint = jointOf(draws, draws.joint(KINDS), system);
    const endMargin = steps(system, draws.whole(16, 40), 5 * draws.whole(5, 12));
    const maxPitch = steps(system, 16 * draws.whole(2, 6), 10 * draws.whole(5, 15));
    const spec: JointSpec = { ...joint, layout: { endMargin, maxPitch } };
    const { setup, numbers } = about(spec);
    const {
      positions,
      spec: { jointLength, layout },
    } = planJoint(spec);
    const drawn = Math.abs(layout.endMargin - endMargin) < 1e-6;
    const enough = positions.length > 2;
    const withOne = withMore(
      drawn && enough ? numbers : passedOver(numbers, 'the joint is too short'),
      [
        ['one', '1', 1, 'count'],
        ['widest', 'P', maxPitch],
      ],
    );
    return {
      kind: 'one',
      setup,
      numbers: withOne,
      situation: `${rowIn(spec)} The first and the last pin stand {layout.margin} from its ends. No two neighbors are to be more than {widest} apart.`,
      ask: 'How many pins does it take, at least?',
      choices: told(withOne, [
        {
          id: 'right',
          of: 'layout.count',
          right: true,
          why: 'From the first pin to the last there is {layout.span}. Divide by {widest}, go up to the next whole number of spaces, and add one: a row has one more pin than spaces.',
        },
        {
          id: 'spaces',
          of: 'layout.count - one',
          misconception: 'counted-the-spaces',
          why: 'That is the number of spaces. There is a pin at both ends of every space: one more.',
        },
        {
          id: 'whole-joint',
          of: 'changed.layout.count',
          // As long again as both margins: the row then fills the joint.
          changed: instead(spec, { jointLength: mm(jointLength + 2 * endMargin) }),
          misconception: 'forgot-the-margin',
          why: 'You spread the pins over the whole {jointLength}. The first and the last keep {layout.margin} from the ends.',
        },
        {
          id: 'one-margin',
          of: 'changed.layout.count',
          changed: instead(spec, { jointLength: mm(jointLength + endMargin) }),
          misconception: 'margin-at-one-end',
          why: 'You took off one margin. There is one at each end.',
        },
      ]),
      working: 'layout.count',
    };
  },
};

/** How far apart are the pins? */
export const pitchOfARow: Template = {
  id: 'pitch-of-a-row',
  revision: 1,
  lesson: 'placing-the-pins',
  joints: KINDS,
  kind: 'length',
  misconceptions: ['counted-the-pins', 'forgot-the-margin', 'margin-at-one-end'],
  draft(draws, system) {
    const { spec, spaces, endMargin } = evenRow(draws, system, 2, 5);
    return {
      kind: 'length',
      ...about(spec),
      situation: `${rowIn(spec)} It takes ${spaces + 1} pins, evenly spaced. The first and the last stand {layout.margin} from its ends.`,
      ask: 'How far is it from one pin to the next, center to center?',
      answer: 'layout.pitch',
      why: `From the first pin to the last there is {layout.span}, and ${spaces + 1} pins have ${spaces} spaces between them.`,
      hint: 'How far is it from the first pin to the last? And how many spaces lie between?',
      mistakes: [
        {
          misconception: 'counted-the-pins',
          of: `layout.span / ${spaces + 1}`,
          why: `You divided by the number of pins. Between ${spaces + 1} pins there are ${spaces} spaces.`,
        },
        {
          misconception: 'forgot-the-margin',
          of: `jointLength / ${spaces}`,
          why: 'You divided the whole joint. Take both margins off first.',
        },
        {
          misconception: 'margin-at-one-end',
          of: `changed.layout.span / ${spaces}`,
          changed: instead(spec, {
            jointLength: mm(planJoint(spec).spec.jointLength + endMargin),
          }),
          why: 'You took off one margin. There is one at each end.',
        },
      ],
      blanks: {
        'layout.span': [
          {
            misconception: 'margin-at-one-end',
            of: 'layout.span + layout.margin',
            why: 'There is a margin at each end. Take off two.',
          },
          {
            misconception: 'forgot-the-margin',
            of: 'jointLength',
            why: 'That is the whole joint. The first and the last pin keep away from its ends.',
          },
        ],
      },
    };
  },
};

/** Where is the mark of a pin in the row? */
export const placeOfAPin: Template = {
  id: 'place-of-a-pin',
  revision: 1,
  lesson: 'placing-the-pins',
  joints: KINDS,
  kind: 'length',
  misconceptions: ['counted-the-pins', 'forgot-the-margin', 'mirrored-the-row'],
  draft(draws, system) {
    const { spec, spaces } = evenRow(draws, system, 3, 6);
    const before = draws.whole(1, spaces - 1);
    return {
      kind: 'length',
      ...about(spec),
      situation: `${rowIn(spec)} The first of ${spaces + 1} pins stands {layout.margin} from the reference end, and from one pin to the next it is {layout.pitch}.`,
      ask: `Where is the mark for pin ${before + 1}, from the reference end?`,
      answer: `layout.margin + ${before} * layout.pitch`,
      why: `Up to pin ${before + 1} there are ${before} spaces of {layout.pitch}. They begin at the first pin, {layout.margin} from the end.`,
      hint: `How many spaces lie between the first pin and pin ${before + 1}?`,
      mistakes: [
        {
          misconception: 'counted-the-pins',
          of: `layout.margin + ${before + 1} * layout.pitch`,
          why: `You counted ${before + 1} spaces, one for each pin. The first pin has none before it.`,
        },
        {
          misconception: 'forgot-the-margin',
          of: `${before} * layout.pitch`,
          why: 'You measured from the first pin. The rule is hooked on the end of the board, {layout.margin} before it.',
        },
        {
          misconception: 'mirrored-the-row',
          of: `layout.margin + ${spaces - before} * layout.pitch`,
          why: 'That is its place from the other end of the board.',
        },
      ],
    };
  },
};

/** Which hole of the row is in the wrong place? */
export const wrongHole: Template = {
  id: 'wrong-hole',
  revision: 2,
  lesson: 'placing-the-pins',
  joints: KINDS,
  kind: 'fault',
  misconceptions: ['blamed-the-sound-one', 'one-number-off'],
  draft(draws, system) {
    const { spec, spaces } = evenRow(draws, system, 2, 3);
    const { setup, numbers } = about(spec);
    const {
      marks,
      spec: { jointLength },
    } = planJoint(spec);
    const member = draws.pick(['a', 'b'] as const);
    const hole = draws.whole(0, spaces);
    const off = steps(system, 16, 10) * draws.pick([1, -1]);
    const drilled = marks.map((mark, i) => mm(i === hole ? mark + off : mark));
    const edge = steps(system, 8, 10);
    const inWood = drilled[hole]! >= edge && drilled[hole]! <= jointLength - edge;
    const named = (['a', 'b'] as const).flatMap((board) =>
      marks.map((mark, i) => ({
        board,
        i,
        name: `${board}.hole.${i}`,
        value: board === member ? drilled[i]! : mark,
      })),
    );
    const onOtherBoard = member === 'a' ? 'B' : 'A';
    return {
      kind: 'fault',
      setup,
      numbers: withMore(
        inWood ? numbers : passedOver(numbers, 'a hole leaves the board'),
        named.map(({ name, value }) => [name, 'x', value]),
      ),
      situation: `${rowIn(spec)} The first pin was to stand {layout.margin} from the reference end of both boards, and the next ones {layout.pitch} apart. The drawing shows the holes as marked.`,
      ask: 'Which hole is in the wrong place?',
      drawing: { view: 'row', setup: { spec, [member]: { marks: drilled } } },
      places: named.map(({ board, i, name }) => {
        const letter = board.toUpperCase();
        const place = {
          id: `${board}-${i + 1}`,
          at: { member: board, part: 'hole', hole: i } as const,
          says: `Hole ${i + 1} of ${letter}, {${name}} from the end`,
        };
        return board === member && i === hole
          ? {
              ...place,
              right: true,
              misconception: 'one-number-off',
              why: `It should be at {${onOtherBoard.toLowerCase()}.hole.${i}}. The rule was read one number off.`,
            }
          : {
              ...place,
              misconception: 'blamed-the-sound-one',
              why: `It is where it should be: ${['', '{layout.pitch} beyond the first, '][i] ?? `${i} times {layout.pitch} beyond the first, `}{${name}} from the end.`,
            };
      }),
      working: 'layout.pitch',
    };
  },
};
