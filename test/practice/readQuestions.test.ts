import { describe, expect, it, test } from 'vitest';
import { planJoint } from '../../src/core/joint/planJoint.ts';
import type { JointSpec } from '../../src/core/joint/types.ts';
import { ContentError } from '../../src/practice/questions/contentError.ts';
import { readMisconceptions } from '../../src/practice/questions/misconceptions.ts';
import { readQuestions } from '../../src/practice/questions/readQuestions.ts';
import { readSetups } from '../../src/practice/questions/setups.ts';
import { markAnswer } from '../../src/practice/questions/markAnswer.ts';
import type {
  FaultQuestion,
  LengthQuestion,
  OrderQuestion,
  RuleQuestion,
} from '../../src/practice/questions/types.ts';
import { misconceptions, questionCalled, setups } from './contentFiles.ts';

const FILE = 'content/questions/trial.yaml';

/** A sound question, one field a line. */
const SOUND = `- id: hole-in-b
  revision: 1
  part: self-check
  kind: length
  setup: stand-corner
  ask: How deep is the hole in B, with {b.engagement} of the pin in it?
  answer: b.holeDepth
  hint: Begin with {b.engagement}.
  why: Because of {allowance}.
  mistakes:
    - of: b.engagement
      misconception: pin-for-hole
      why: That is the pin.
    - with: { leave: 0 in, bit: { point: { kind: square } } }
      of: changed.b.holeDepth
      misconception: left-no-wood
      why: That is all of it, {this}.
`;

const CHOICE = `- id: who-holds-it
  revision: 2
  part: self-check
  kind: one
  setup: stand-corner
  ask: What does B hold?
  choices:
    - id: half
      of: pin.length / 2
      misconception: split-in-half
      why: Too much.
    - id: its-part
      of: b.engagement
      right: true
      why: That is it.
`;

const RULE = `- id: read-it
  revision: 1
  part: self-check
  kind: rule
  setup: rule-worked
  ask: What does it read at the line?
  hint: Find the last number first.
  why: Past {number} there are {marks} marks, {past}.
  mistakes:
    - of: number + 2 * past
      misconception: misread-the-divisions
      why: Each mark is worth {division}.
`;

const ORDER = `- id: in-order
  revision: 1
  part: self-check
  kind: order
  setup: stand-corner
  ask: Put the steps in order.
  steps:
    - id: measure-a
      says: Measure A, {a.thickness} thick.
      why: It can come first.
    - id: measure-b
      says: Measure B.
      after: []
      why: So can this one.
    - id: split
      says: Split the pin.
      misconception: set-before-the-choice
      why: It waits for both boards.
    - id: glue
      says: Glue it.
      after: [split]
      misconception: glued-before-the-dry-fit
      why: It waits for the split.
`;

const FAULT = `- id: which-hole
  revision: 1
  part: self-check
  kind: fault
  setup: stand-corner
  ask: Which holes are in the wrong place?
  drawing:
    view: row
    b: { moved: { hole: 2, farther: 1/2 in } }
  places:
    - id: a-2
      at: hole 2 of A
      says: Hole 2 of A, at {a.hole.2}
      misconception: blamed-the-sound-one
      why: It is where it should be.
    - id: b-2
      at: hole 2 of B
      says: Hole 2 of B, at {b.hole.2}
      misconception: one-number-off
      why: It should be at {a.hole.2}.
`;

const DEPTH = FAULT.replace('view: row', 'view: section')
  .replace('b: { moved: { hole: 2, farther: 1/2 in } }', 'b: { collar: a.stop }')
  .replace('at: hole 2 of A', 'at: depth of A')
  .replace('at: hole 2 of B', 'at: depth of B');

function read(text: string) {
  return readQuestions(FILE, text, 'trial', { setups, misconceptions });
}

function faultOf(text: string): string {
  try {
    read(text);
  } catch (error) {
    if (error instanceof ContentError) return error.message;
    throw error;
  }
  return 'nothing is wrong';
}

describe('a question is worked out by the calculator', () => {
  const plan = planJoint(setups.get('stand-corner') as JointSpec);

  it('right and wrong lengths are numbers of plans', () => {
    const [question] = read(SOUND) as [LengthQuestion];
    expect(question.identity).toBe('trial/hole-in-b@1');
    expect(question.right).toBe(plan.b.holeDepth);
    expect(question.mistakes.map(({ length }) => length)).toEqual([
      plan.b.engagement,
      expect.closeTo(19.05, 6),
    ]);
    expect(question.ask[1]).toEqual({ mm: plan.b.engagement });
    expect(question.mistakes[1]?.why[1]).toEqual({ mm: question.mistakes[1]?.length });
  });

  it('the working leads to the answer and leaves out what only states a setting', () => {
    const [question] = read(SOUND) as [LengthQuestion];
    expect(question.working.map(({ label }) => label)).toEqual([
      "Point beyond the bit's full diameter",
      "Wood to leave beyond the bit's point",
      'Most of the pin that B can hold',
      'Length of pin that B holds',
      'Depth of the hole in B, at full diameter',
    ]);
    expect(question.working.at(-1)?.lines.in.at(-1)).toContain('0.606');
    expect(question.working.at(-1)?.lines.mm.at(-1)).toContain('15.39');
  });

  it('keeps the pin of the question where a mistake would make the calculator choose another', () => {
    const question = questionCalled('alone-metric-end') as LengthQuestion;
    const forgot = question.mistakes.find(
      ({ misconception }) => misconception.id === 'forgot-the-point',
    );
    // 30 mm of pin less 18 - 1 - 3 mm in B.
    expect(forgot?.length).toBeCloseTo(16, 6);
  });

  it('a rule is drawn around the line that the setup gives, and right is what it reads', () => {
    const [question] = read(RULE) as [RuleQuestion];
    expect(question.rule).toEqual({
      division: { unit: 'in', denominator: 32 },
      from: 25.4,
      to: expect.closeTo(4 * 25.4, 9) as number,
      line: expect.closeTo((2 + 23 / 32) * 25.4, 9) as number,
    });
    const mark = (text: string) => markAnswer(question, { kind: 'rule', text, unit: 'in' });
    expect(mark('2 23/32').verdict).toBe('right');
    expect(mark('2 22/32').verdict).toBe('wrong');
    expect(mark('3 7/16').remarks[0]?.misconception?.id).toBe('misread-the-divisions');
  });

  it('an order is shown mixed; steps that wait for none may come in any order', () => {
    const [question] = read(ORDER) as [OrderQuestion];
    const mark = (...steps: string[]) => markAnswer(question, { kind: 'order', steps });
    expect(mark(...question.steps.map(({ id }) => id)).verdict).toBe('wrong');
    expect(mark('measure-a', 'measure-b', 'split', 'glue').verdict).toBe('right');
    expect(mark('measure-b', 'measure-a', 'split', 'glue').verdict).toBe('right');
    const early = mark('measure-a', 'split', 'measure-b', 'glue');
    expect(early.remarks[1]?.misconception?.id).toBe('set-before-the-choice');
    expect(read(ORDER)).toEqual(read(ORDER));
  });

  it('a place is at fault where the drawing differs from the plan', () => {
    const [row] = read(FAULT) as [FaultQuestion];
    expect(row.choices.map(({ id, right }) => [id, right])).toEqual([
      ['a-2', false],
      ['b-2', true],
    ]);
    expect(row.drawing.setup.b?.marks?.[1]).toBeCloseTo(plan.marks[1]! + 12.7, 9);
    const nearer = read(FAULT.replace('farther', 'nearer')) as [FaultQuestion];
    expect(nearer[0].drawing.setup.b?.marks?.[1]).toBeCloseTo(plan.marks[1]! - 12.7, 9);

    const [depth] = read(DEPTH) as [FaultQuestion];
    expect(depth.choices.map(({ right }) => right)).toEqual([false, true]);
    expect(depth.drawing.setup.b?.collar).toBe(plan.a.stop);
  });

  it('travels as JSON and comes back the same', () => {
    const all = [SOUND, CHOICE, RULE, ORDER, FAULT, DEPTH].flatMap(read);
    expect(JSON.parse(JSON.stringify(all))).toEqual(all);
  });
});

describe('a mistake in a file of questions names file, line and what to do', () => {
  test.each([
    [SOUND.replace('  ask:', '  aks:'), 6, "'aks' is not a field"],
    [SOUND.replace(/ {2}ask:.*\n/, ''), 1, "has no 'ask'"],
    [`${SOUND}  helps: no\n`, 18, "'helps' is not a field"],
    [
      SOUND.replace('kind: length', 'kind: number'),
      4,
      'one of one, several, length, rule, order, fault',
    ],
    [SOUND.replace('kind: length', 'kind:'), 4, 'should be a text'],
    [SOUND.replace('revision: 1', 'revision: 0'), 2, '1, 2, 3'],
    [SOUND.replace('id: hole-in-b', 'id: Hole in B'), 1, 'lower-case words'],
    [SOUND.replace('part: self-check', 'part: test'), 3, 'prediction'],
    [SOUND.replace('setup: stand-corner', 'setup: stool'), 5, "no setup 'stool'"],
    [SOUND.replace('{b.engagement} of', '{b.engagment} of'), 6, "no number 'b.engagment'"],
    [SOUND.replace('answer: b.holeDepth', 'answer: 5/8 in'), 7, 'not a number of this setup'],
    [
      SOUND.replace('misconception: pin-for-hole', 'misconception: pin'),
      12,
      "no misconception 'pin'",
    ],
    [SOUND.replace('      why: That is the pin.\n', ''), 11, "has no 'why'"],
    [SOUND.replace('leave: 0 in', 'leave: 1/8'), 14, 'has no unit'],
    [SOUND.replace('leave: 0 in', 'leave: soft'), 14, 'is not a length'],
    [SOUND.replace('kind: square', 'kind: blunt'), 14, 'one of twist, brad'],
    [SOUND.replace('of: changed.b.holeDepth', 'of: b.holeDepth'), 14, 'too near'],
    [SOUND.replace('of: b.engagement', 'of: changed.tip'), 11, 'nothing is changed here'],
    [SOUND + SOUND, 18, 'never reused'],
    [CHOICE.replace('      misconception: split-in-half\n', ''), 8, "add 'misconception'"],
    [CHOICE.replace('of: pin.length / 2', 'of: b.most'), 7, "both read '≈31/64 in'"],
    [CHOICE.replace('right: true', 'right: false\n      misconception: wrong-board'), 7, '0 are'],
    [CHOICE.replace('right: true', 'right: b.most > lots'), 14, "no number 'lots'"],
    [CHOICE.replace('right: true', 'right: perhaps'), 14, 'true, false or a comparison'],
    [CHOICE.replace('      of: pin.length / 2\n', ''), 8, "needs 'says', or 'of'"],
    [CHOICE.replace('id: its-part', 'id: half'), 7, 'same id'],
    [RULE.replace('rule-worked', 'stand-corner'), 5, "needs a setup of 'ruleReading'"],
    [`${RULE}  answer: line\n`, 13, "'answer' is not a field"],
    [RULE.replace('2 * past', 'past'), 10, 'too near'],
    [RULE.replace(/ {2}hint:.*\n/, ''), 1, "has no 'hint'"],
    [ORDER.replace('after: [split]', 'after: [clamp]'), 21, "no step 'clamp' stands above"],
    [ORDER.replace('after: []', 'after: split'), 13, 'should be a list'],
    [ORDER.replace('      misconception: set-before-the-choice\n', ''), 15, "add 'misconception'"],
    [
      ORDER.replace('after: []', 'after: []\n      misconception: split-in-half'),
      14,
      'waits for none',
    ],
    [ORDER.replace('id: measure-b', 'id: measure-a'), 7, 'same id'],
    [ORDER.replace('Measure B.', 'Split the pin.'), 7, "both read 'Split the pin.'"],
    [ORDER.replace(/ {4}- id: split[\s\S]*/, ''), 7, 'every order of these steps is right'],
    [FAULT.replace('setup: stand-corner', 'setup: rule-worked'), 5, 'only a joint'],
    [
      FAULT.replace('setup: stand-corner', 'setup: stand-frame-lower'),
      7,
      'marked from the same end',
    ],
    [FAULT.replace('view: row', 'view: face'), 8, 'one of row, section'],
    [FAULT.replace('hole: 2,', 'hole: 20,'), 9, 'this joint has'],
    [FAULT.replace('farther: 1/2 in', 'by: 1/2 in'), 9, "'by' is not a field"],
    [FAULT.replace('farther: 1/2 in', 'farther: 1/2'), 9, 'has no unit'],
    [FAULT.replace(', farther: 1/2 in', ''), 9, "has no 'nearer'"],
    [FAULT.replace('at: hole 2 of A', 'at: hole 2'), 12, "such as 'hole 2 of B'"],
    [FAULT.replace('at: hole 2 of A', 'at: hole 9 of A'), 12, 'this joint has'],
    [FAULT.replace('at: hole 2 of A', 'at: depth of A'), 12, 'this drawing shows the row'],
    [FAULT.replace('{a.hole.2}', '{a.hole.9}'), 13, "no number 'a.hole.9'"],
    [
      FAULT.replace('    b: { moved: { hole: 2, farther: 1/2 in } }\n', ''),
      9,
      'none of these places',
    ],
    [DEPTH.replace('at: depth of A', 'at: hole 1 of A'), 12, 'this drawing shows a section'],
    [DEPTH.replace('b: { collar', 'a: { collar: b.stop }\n    b: { collar'), 11, 'every one of'],
    [DEPTH.replace('collar: a.stop', 'collar: deep'), 9, "no number 'deep'"],
    [DEPTH.replace('collar: a.stop', 'end: near'), 9, 'one of other'],
    ['- id: [', 1, 'Flow sequence'],
    ['id: x', 1, 'should be a list'],
  ])('%#', (text, line, what) => {
    const fault = faultOf(text);
    expect(fault).toMatch(new RegExp(`^${FILE}:${line}: `));
    expect(fault).toContain(what);
  });

  it('a joint that cannot be made is no ground for a question', () => {
    const text = CHOICE.replace(
      'setup: stand-corner',
      'setup: stand-corner\n  with: { b: { thickness: 3/8 in } }',
    );
    expect(faultOf(text)).toMatch(/trial\.yaml:6: this joint can't be made: /);
  });

  it('a sound file has none', () => {
    expect(faultOf(SOUND)).toBe('nothing is wrong');
    for (const text of [CHOICE, RULE, ORDER, FAULT, DEPTH]) {
      expect(faultOf(text)).toBe('nothing is wrong');
    }
  });
});

describe('setups and misconceptions', () => {
  const SETUP = `one:
  kind: edge
  system: mm
  a: { thickness: 18 mm, width: 100 mm, length: 600 mm }
  b: { thickness: 18 mm, width: 100 mm, length: 600 mm }
`;

  it('a setup like another differs in what it says, and in nothing else', () => {
    const read = readSetups('s.yaml', `${SETUP}two:\n  like: one\n  b: { width: 120 mm }\n`);
    const [one, two] = [read.get('one') as JointSpec, read.get('two')];
    expect(two).toEqual({ ...one, b: { ...one.b, width: 120 } });
  });

  test.each([
    [
      SETUP.replace('kind: edge', 'kind: lap'),
      's.yaml:2: ',
      'edge, corner, tee, frame, miter, leg',
    ],
    [
      SETUP.replace('width: 100 mm, length: 600 mm }\n  b', 'length: 600 mm }\n  b'),
      's.yaml:4: ',
      "'width'",
    ],
    [SETUP.replace('100 mm', '100'), 's.yaml:4: ', "write '100 in' or '100 mm'"],
    [`${SETUP}two:\n  like: three\n`, 's.yaml:7: ', "no setup 'three'"],
    [`${SETUP}  colour: red\n`, 's.yaml:6: ', "'colour' is not a field"],
  ])('a faulty setup: %#', (text, place, what) => {
    expect(() => readSetups('s.yaml', text)).toThrow(ContentError);
    expect(() => readSetups('s.yaml', text)).toThrow(place);
    expect(() => readSetups('s.yaml', text)).toThrow(what);
  });

  it('a misconception needs a name and what the student believes', () => {
    expect(() => readMisconceptions('m.yaml', 'wrong-unit: { name: x }\n')).toThrow(
      "m.yaml:1: wrong-unit has no 'belief'",
    );
    expect(() => readMisconceptions('m.yaml', 'other: { name: x, belief: y }\n')).toThrow(
      "'wrong-unit' is missing",
    );
  });
});
