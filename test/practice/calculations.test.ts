import { describe, expect, it, test } from 'vitest';
import {
  type Mm,
  caseCornerMoment,
  clamps,
  equilibriumMoisture,
  glueRoom,
  holeAndPin,
  inches,
  mm,
  planJoint,
  rowMovement,
  species,
  withdrawal,
} from '../../src/core/index.ts';
import { compareCorners, comparePull } from '../../src/core/strength/compare.ts';
import { evaluate } from '../../src/core/working/expression.ts';
import { calculations } from '../../src/practice/questions/calculations/index.ts';
import { ContentError } from '../../src/practice/questions/contentError.ts';
import { fillIn } from '../../src/practice/questions/fillIn.ts';
import { readQuestions } from '../../src/practice/questions/readQuestions.ts';
import { isJoint } from '../../src/practice/questions/setupKinds.ts';
import { numbersOf } from '../../src/practice/questions/numbersOf.ts';
import { readSetups } from '../../src/practice/questions/setups.ts';
import { misconceptions } from './contentFiles.ts';

const SETUPS = `corner:
  kind: corner
  system: in
  a: { thickness: 3/4 in, width: 9 in, length: 27 in }
  b: { thickness: 3/4 in, width: 9 in, length: 24 in }
  pin: { diameter: 3/8 in, length: 1 1/2 in }
snug:
  system: in
  fit: { hole: 3/8 in, pin: 3/8 in }
metric-pin:
  like: snug
  fit: { pin: 10 mm, measured: 9.9 mm }
plain:
  system: in
  glueRoom: { joint: corner, board: b, flutes: 0, glue: 1.2 ml }
fluted:
  like: plain
  glueRoom: { flutes: 8, fluteArea: 0.5 mm², measured: 9.4 mm }
summer:
  system: in
  equilibrium: { temperature: 77 °F, humidity: 65 % }
board:
  system: in
  movement: { size: 9 1/4 in, wood: 'maple, sugar (hard)', rings: along, from: 7 %, to: summer }
year:
  system: mm
  seasons: { hole: 8 mm, wood: 'cherry, black', surface: face, sawn: flat, moisture: 12 %, pin: 7.9 mm, pinWood: 'birch, yellow', pinMoisture: 12 %, to: 7 % }
rail:
  system: in
  rowMovement: { span: 4 in, wood: 'red oak, commercial', rings: along, clearance: 0.1 mm, dry: 6 %, damp: 12 % }
row:
  system: in
  odds: { joint: corner, pins: 2, sigmaAlong: 0.2 mm, sigmaAcross: 0.2 mm, flushTolerance: 0.5 mm, mayTurn: true, trials: 2000, seed: 7 }
three:
  system: in
  agreement: { joint: corner, measured: 9.425 mm, secondFarther: 0.12 mm, thirdNearer: 0.13 mm, guideOff: 0.4 mm }
pull:
  system: in
  withdrawal: { diameter: 3/8 in, engagement: 1 in, wood: 'maple, sugar (hard)', pinWood: 'birch, yellow', grain: side, thinGlue: false, clearance: 0.1 mm, grooved: false }
shallow:
  like: pull
  withdrawal: { engagement: 1/2 in, grain: end, clearance: 0.2 mm, grooved: true }
pulls:
  system: in
  comparedPull: { first: pull, second: shallow }
cases:
  system: in
  comparedCorners: { firstDiameter: 3/8 in, firstDepth: 1/2 in, secondDiameter: 1/4 in, secondDepth: 5/8 in }
case:
  system: in
  caseCorner: { diameter: 3/8 in, faceDepth: 1/2 in }
panel:
  system: mm
  clamps: { length: 900 mm, thickness: 19 mm, boardWidth: 90 mm, caul: 20 mm, pressure: 1 MPa }
read:
  system: in
  ruleReading: { rule: inches, division: 1/32 in, number: 2 in, marks: 23 }
slipped:
  system: in
  behind: { joint: corner, slip: 1/8 in, waste: 3/4 in }
burned:
  like: read
  ruleReading: { start: 1 in }
`;

const setups = readSetups('s.yaml', SETUPS);
const numbers = (name: string) => numbersOf(setups.get(name)!);
const value = (name: string, of: string) => evaluate(numbers(name).quantities.get(of)!);

describe('numbers of a calculation are those of the core', () => {
  test('a fit: an unmeasured pin is taken 0.1 mm under its name, a measured one as it is', () => {
    expect(value('snug', 'pin')).toBeCloseTo(9.425, 9);
    expect(value('snug', 'clearance')).toBeCloseTo(0.1, 9);
    expect(value('snug', 'glueLine')).toBeCloseTo(0.05, 9);
    expect(value('metric-pin', 'clearance')).toBeCloseTo(9.525 - 9.9, 9);
    expect(value('snug', 'goodFrom')).toBe(0.05);
    expect(value('snug', 'goodTo')).toBe(0.2);
    expect(value('snug', 'offGood')).toBe(0);
    expect(value('metric-pin', 'offGood')).toBeCloseTo(0.05 + 0.375, 9);
  });

  test('the point behind a board: the stop worked out, and what the collar slipped', () => {
    const corner = setups.get('corner')!;
    if (!isJoint(corner)) throw new Error('corner is a joint');
    const { b } = planJoint(corner);
    expect(value('slipped', 'stop')).toBe(b.stop);
    expect(value('slipped', 'depth')).toBeCloseTo(b.holeDepth + inches(1 / 8), 6);
    expect(value('slipped', 'woodLeft')).toBeCloseTo(b.woodLeft - inches(1 / 8), 6);
    expect(value('slipped', 'beyond')).toBeCloseTo(inches(1 / 8) - b.woodLeft, 6);
  });

  test('a reading of a rule: number and marks, less where the board starts', () => {
    expect(value('read', 'line')).toBeCloseTo(inches(2 + 23 / 32), 6);
    expect(value('read', 'board')).toBeCloseTo(inches(2 + 23 / 32), 6);
    expect(value('burned', 'board')).toBeCloseTo(inches(1 + 23 / 32), 6);
    expect(value('burned', 'half')).toBeCloseTo(inches(55 / 64), 6);
  });

  test.each([
    ['plain', 9.425, 0, 0],
    ['fluted', 9.4, 8, 0.5],
  ])('room for glue, %s: part by part', (name, pin, flutes, fluteArea) => {
    const corner = setups.get('corner')!;
    if (!isJoint(corner)) throw new Error('corner is a joint');
    const plan = planJoint(corner);
    const room = glueRoom({
      hole: inches(3 / 8),
      pin: mm(pin),
      engagement: plan.b.engagement,
      allowance: plan.spec.allowance,
      cone: plan.spec.bit.tip as Mm,
      flutes,
      fluteArea,
      glue: 1200,
    });
    for (const part of [
      'around',
      'inFlutes',
      'atEnd',
      'inCone',
      'total',
      'over',
      'standsOff',
    ] as const) {
      if (part === 'standsOff' && flutes > 0) continue; // nothing to tell: flutes trap nothing
      expect(value(name, part), part).toBeCloseTo(room[part], 6);
    }
    expect(room.over).toBeGreaterThan(0);
  });

  test('moisture, and a board that moves to the moisture of a named air', () => {
    const moisture = equilibriumMoisture(25, 0.65);
    expect(value('summer', 'moisture')).toBeCloseTo(moisture, 9);
    expect(value('board', 'to')).toBeCloseTo(moisture, 9);
    expect(value('board', 'change')).toBeCloseTo(inches(9.25) * 0.00353 * (moisture - 7), 9);
    expect(value('board', 'newSize')).toBeCloseTo(inches(9.25) + value('board', 'change'), 9);
  });

  test('a hole and a pin through the season', () => {
    const wood = species('cherry, black')!;
    const birch = species('birch, yellow')!;
    const found = holeAndPin(
      { diameter: mm(8), wood, surface: 'face', sawn: 'flat', moisture: 12 },
      { diameter: mm(7.9), wood: birch, moisture: 12 },
      7,
    );
    if (!found.ok) throw new Error(found.reason);
    expect(value('year', 'least')).toBe(found.clearance.least);
    expect(value('year', 'greatest')).toBe(found.clearance.greatest);
    expect(value('year', 'hole.alongGrain')).toBe(8);
  });

  test('a row of pins across the grain', () => {
    const found = rowMovement({
      span: inches(4),
      coefficient: 0.00369,
      clearance: mm(0.1),
      dry: 6,
      damp: 12,
    });
    for (const of of ['change', 'play', 'widest'] as const) {
      expect(value('rail', of), of).toBeCloseTo(found[of], 9);
    }
    expect(value('rail', 'held')).toBeCloseTo(found.change - found.play, 9);
  });

  test('three pins by hand: two errors that point apart add up, a guide off the middle counts twice', () => {
    const play = inches(3 / 8) - 9.425;
    expect(value('three', 'play')).toBeCloseTo(play, 9);
    expect(value('three', 'room')).toBeCloseTo(2 * play, 9);
    expect(value('three', 'apart')).toBeCloseTo(0.25, 9);
    expect(value('three', 'short')).toBeCloseTo(0.25 - 2 * play, 9);
    expect(value('three', 'inA')).toBeCloseTo(inches(3 / 8) + 0.4, 9);
    expect(value('three', 'proud')).toBeCloseTo(0.8, 9);
  });

  test('two of a row of pins: the odds lie in their interval', () => {
    expect(value('row', 'pins')).toBe(2);
    expect(value('row', 'play')).toBeCloseTo(0.1, 9);
    expect(value('row', 'probability')).toBeGreaterThan(value('row', 'low'));
    expect(value('row', 'probability')).toBeLessThan(value('row', 'high'));
  });

  test('comparisons of strength, and clamps', () => {
    const pull = withdrawal({
      diameter: inches(3 / 8),
      engagement: inches(1),
      memberShear: 16.1,
      dowelShear: 13,
      grain: 'side',
      thinGlue: false,
      clearance: mm(0.1),
      grooved: false,
    });
    expect(value('pull', 'force')).toBe(pull.force);
    const corner = caseCornerMoment({ diameter: inches(3 / 8), faceDepth: inches(1 / 2) });
    if (!corner.ok) throw new Error('these sizes were tested');
    expect(value('case', 'opening')).toBe(corner.opening);
    const glueUp = clamps({
      length: mm(900),
      thickness: mm(19),
      boardWidth: mm(90),
      caul: mm(20),
      pressure: 1,
    });
    for (const of of ['count', 'reach', 'spacing', 'fromEnd', 'force', 'forcePerClamp'] as const) {
      expect(value('panel', of), of).toBeCloseTo(glueUp[of], 9);
    }
  });

  test('two pins and two corners against each other', () => {
    const pin = {
      diameter: inches(3 / 8),
      engagement: inches(1),
      memberShear: 16.1,
      dowelShear: 13,
      grain: 'side',
      clearance: mm(0.1),
      grooved: false,
    } as const;
    const pulls = comparePull(pin, {
      ...pin,
      engagement: inches(1 / 2),
      grain: 'end',
      clearance: mm(0.2),
      grooved: true,
    });
    if (!pulls.ok) throw new Error('neither is loose');
    expect(value('pulls', 'ratio')).toBeCloseTo(pulls.ratios['pull']!, 9);
    const factor = (of: string) => pulls.factors.find((each) => each.of === of)!.ratio;
    expect(value('pulls', 'byDepth')).toBeCloseTo(factor('depth'), 9);
    expect(value('pulls', 'byClearance')).toBeCloseTo(factor('clearance'), 9);
    expect(value('pulls', 'byGrooves')).toBeCloseTo(factor('grooves'), 9);
    expect(value('pulls', 'byWood')).toBeCloseTo(factor('grain'), 9);
    const corners = compareCorners(
      { diameter: inches(3 / 8), faceDepth: inches(1 / 2) },
      { diameter: inches(1 / 4), faceDepth: inches(5 / 8) },
    );
    if (!corners.ok) throw new Error('these sizes were tested');
    expect(value('cases', 'open')).toBeCloseTo(corners.ratios['open']!, 9);
    expect(value('cases', 'closed')).toBeCloseTo(corners.ratios['closed']!, 9);
  });

  it('has an example here of every calculation', () => {
    const used = [...setups.values()].flatMap((setup) =>
      isJoint(setup) ? [] : [setup.calculation],
    );
    expect(new Set(used)).toEqual(new Set(calculations.keys()));
    for (const name of setups.keys()) expect(numbers(name).errors, name).toEqual([]);
  });
});

describe('a number that is no ordinary length is written out for either reader', () => {
  test.each([
    ['snug', 'clearance', '3.9 thousandths', '100 µm'],
    ['metric-pin', 'clearance', '−14.8 thousandths', '−375 µm'],
    ['plain', 'glue', '1.2 ml', '1.2 ml'],
    ['summer', 'temperature', '77 °F', '25 °C'],
    ['summer', 'humidity', '65 %', '65 %'],
    ['case', 'closing', '134 lb·in', '15.2 N·m'],
    ['panel', 'force', '3844 lb', '17,100 N'],
    ['panel', 'pressure', '145 psi', '1 MPa'],
    ['panel', 'count', '5', '5'],
    ['board', 'coefficient', '0.00353', '0.00353'],
    ['pulls', 'byDepth', '0.54', '0.54'],
  ])('%s: %s', (name, of, inInches, metric) => {
    const [piece] = fillIn(`{${of}}`, { numbers: numbers(name) });
    expect(typeof piece === 'string' ? { in: piece, mm: piece } : piece).toEqual({
      in: inInches,
      mm: metric,
    });
  });
});

const QUESTION = `- id: is-it-good
  revision: 1
  part: self-check
  kind: one
  setup: snug
  ask: The hole is {hole} and the pin {pin.named}. How much play has it?
  working: glueLine
  choices:
    - id: all
      of: clearance
      right: changed.clearance < clearance
      with: { fit: { measured: 9.5 mm } }
      why: That is it, {this}.
    - id: half
      of: glueLine
      misconception: pin-for-hole
      why: That is one side.
`;

function read(text: string) {
  return readQuestions('q.yaml', text, 'trial', { setups, misconceptions });
}

describe('a question about a calculation', () => {
  it('is worked out, with what an answer changes and with its working', () => {
    const [question] = read(QUESTION);
    if (question?.kind !== 'one') throw new Error('it is a choice');
    expect(question.choices.map(({ right }) => right)).toEqual([true, false]);
    expect(question.choices[1]?.says).toEqual([{ in: '2 thousandths', mm: '50 µm' }]);
    expect(question.working.map(({ label }) => label)).toEqual([
      'Clearance, the hole less the pin',
      'Glue line, half of the clearance',
    ]);
    expect(question.working[1]?.lines.mm.at(-1)).toContain('<mn>50</mn>');
    expect(question.working[1]?.lines.in.at(-1)).toContain('thousandths');
  });

  test.each([
    ['{hole}', '{whole}', /q\.yaml:6: there is no number 'whole'; there are clearance, glueLine/],
    ['measured: 9.5 mm', 'measured: 9.5', /q\.yaml:12: measured '9.5' has no unit/],
    ['fit: { measured', 'glueRoom: { measured', /q\.yaml:12: 'glueRoom' is not a field/],
  ])('%s → %s', (from, to, fault) => {
    expect(() => read(QUESTION.replace(from, to))).toThrow(ContentError);
    expect(() => read(QUESTION.replace(from, to))).toThrow(fault);
  });

  it('lets only a length be typed', () => {
    const text = QUESTION.replace(/ {2}choices:[\s\S]*/, '')
      .replace('kind: one', 'kind: length')
      .concat('  answer: clearance\n  hint: Half.\n  why: So.\n  mistakes: []\n');
    expect(() => read(text)).toThrow("q.yaml:8: only a length can be typed; ask for 'clearance'");
  });
});

test('what lies beyond the range of its source is no ground for a question', () => {
  const damp = readSetups('s.yaml', SETUPS.replace('humidity: 65 %', 'humidity: 90 %'));
  expect(numbersOf(damp.get('board')!).errors).toEqual([
    'The coefficients are said to hold from 6 to 14 % only.',
  ]);
});

describe('a faulty setup names file, line and what to do', () => {
  const at = (line: string, to: string) => SETUPS.replace(line, to);
  test.each([
    [at('pin: 3/8 in }', 'pin: 0 in }'), 's.yaml:7: pin must be more than 0'],
    [
      at('fit: { hole: 3/8 in, pin: 3/8 in }', 'fit: { hole: 3/8 in }'),
      "s.yaml:9: fit has no 'pin'",
    ],
    [at('joint: corner, board: b', 'joint: stool, board: b'), "s.yaml:15: no joint 'stool'"],
    [at('glue: 1.2 ml', 'glue: 1.2'), "s.yaml:15: glue '1.2' should be a number with its unit"],
    [at('77 °F', '77 F'), "s.yaml:21: temperature '77 F'"],
    [at("wood: 'maple, sugar (hard)', rings", 'wood: maple, rings'), "no wood 'maple'; there are"],
    [at('to: summer', 'to: winter'), "the name of an 'equilibrium' that stands above"],
    [at('like: snug\n  fit', 'like: snug\n  clamps'), "s.yaml:12: 'clamps' is not a field"],
  ])('%#', (text, fault) => {
    expect(() => readSetups('s.yaml', text)).toThrow(ContentError);
    expect(() => readSetups('s.yaml', text)).toThrow(fault);
  });
});
