/**
 * Whatever comes from others, damaged at random: links, hand-ins, archives, files of progress, kept
 * tools, typed lengths. Prints how many inputs each reader took, refused or crashed on, how long
 * the slowest took, and whether what is sound comes back whole: `npm run fuzz -- 20000`.
 */
import { strFromU8, strToU8, zipSync } from 'fflate';
import { decodeAssignment, encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import { writeHandIn } from '../../src/class/hand-in/handIn.ts';
import { readHandIn } from '../../src/class/hand-in/readHandIn.ts';
import { readArchive } from '../../src/class/marking/readArchive.ts';
import { decodeSetup, encodeSetup, mm, parseLength, planJoint } from '../../src/core/index.ts';
import { drillList } from '../../src/core/piece/drillList.ts';
import { materials } from '../../src/core/piece/materials.ts';
import { pieceCautions } from '../../src/core/piece/pieceCautions.ts';
import { planPiece } from '../../src/core/piece/planPiece.ts';
import { readToolbox, writeToolbox } from '../../src/core/tools/keptTools.ts';
import { unmeasured } from '../../src/core/tools/toolSet.ts';
import { Draws } from '../../src/practice/made/draws.ts';
import type { ProgressEvent } from '../../src/practice/progress/events.ts';
import { progressFile, readProgressFile } from '../../src/practice/progress/file.ts';
import { BANK, CALC } from '../../src/practice/versions.ts';
import { setupIn } from '../../src/widgets/shop/piece/setupIn.ts';
import { misconceptions } from '../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../support/classOf.ts';
import { KINDS, ordinaryJoint } from '../support/joints.ts';

const count = Number(process.argv[2] ?? 2000);
const now = Date.UTC(2026, 10, 25);

/** A reader of what comes from others. */
interface Reader {
  readonly name: string;
  /** Sound inputs, to be damaged. */
  readonly sound: readonly string[];
  /** Whether it took the input; throws only where it is broken. */
  readonly takes: (input: string) => boolean;
  /** Whether a sound input comes back as it was. */
  readonly whole: (input: string) => boolean;
}

const setups = KINDS.map((kind) =>
  encodeSetup({
    joints: [ordinaryJoint(kind, 'in', mm(19.05)), ordinaryJoint(kind, 'mm', mm(18))],
  }),
);
const piece = encodeSetup({
  joints: KINDS.map((kind) => ordinaryJoint(kind, 'in', mm(19.05))),
  labels: KINDS.map((kind, i) => ({ name: kind, boardA: 'Rail', boardB: 'Leg', count: i + 1 })),
  piece: { title: 'Stool', boards: [{ name: 'Leg', count: 4 }] },
});
const handIns = ['Bench 1', 'Bench 2'].map((bench) =>
  handInOf(stopAssignment, bench, 0.7, misconceptions),
);
const archive = zipSync(
  Object.fromEntries(handIns.map((each, i) => [`folder/${i}.json`, strToU8(writeHandIn(each))])),
);
const happened = { version: 1, learner: '01'.padStart(24, '0'), calc: CALC, bank: BANK } as const;
const events: readonly ProgressEvent[] = [
  { ...happened, id: '0a'.padStart(24, '0'), at: now - 3e6, kind: 'name', name: 'Bench 3' },
  {
    ...happened,
    id: '0b'.padStart(24, '0'),
    at: now - 2e6,
    kind: 'opened',
    lesson: 'setting-the-stop',
  },
  {
    ...happened,
    ...{
      id: '0c'.padStart(24, '0'),
      at: now - 1e6,
      kind: 'answer',
      question: 'stop-for-a-board@1:77',
    },
    made: { template: 'stop-for-a-board', revision: 1, seed: 77, system: 'in', level: 'own' },
    ...{ given: { kind: 'length', text: '1 3/8', unit: 'in' }, right: false, mistakes: [] },
  },
];

const readers: readonly Reader[] = [
  {
    name: 'Links to the bench',
    sound: setups,
    takes: (input) => {
      const decoded = decodeSetup(input);
      // What was taken has to plan as well.
      if (decoded.ok) decoded.setup.joints.forEach(planJoint);
      return decoded.ok;
    },
    whole: (input) => {
      const decoded = decodeSetup(input);
      return decoded.ok && encodeSetup(decoded.setup) === input;
    },
  },
  {
    name: 'Pieces, in whatever text',
    sound: [`Our stool: https://school.example/bench/piece/#${piece}`],
    takes: (input) => {
      const read = setupIn(input);
      if (!read.ok) return false;
      const planned = planPiece(read.setup);
      const bits = drillList(planned.joints);
      materials(planned);
      pieceCautions(planned, bits);
      return true;
    },
    whole: (input) => {
      const read = setupIn(input);
      return read.ok && input.endsWith(`#${encodeSetup(read.setup)}`);
    },
  },
  {
    name: 'Links to an assignment',
    sound: [encodeAssignment(stopAssignment)],
    takes: (input) => decodeAssignment(input).ok,
    whole: (input) => {
      const decoded = decodeAssignment(input);
      return decoded.ok && encodeAssignment(decoded.assignment) === input;
    },
  },
  {
    name: 'Hand-ins',
    sound: handIns.map(writeHandIn),
    takes: (input) => readHandIn(input).ok,
    whole: (input) => {
      const read = readHandIn(input);
      return read.ok && writeHandIn(read.handIn) === input;
    },
  },
  {
    name: 'Archives of hand-ins',
    sound: [strFromU8(archive, true)],
    takes: (input) => readArchive('class.zip', strToU8(input, true)).sources.length > 0,
    whole: (input) => readArchive('class.zip', strToU8(input, true)).sources.length === 2,
  },
  {
    name: 'Files of progress',
    sound: [progressFile(events)],
    takes: (input) => readProgressFile(input, now).ok,
    whole: (input) => {
      const read = readProgressFile(input, now);
      return read.ok && read.events.length === events.length && read.refusals.length === 0;
    },
  },
  {
    name: 'Kept tools',
    sound: [writeToolbox({ sets: [unmeasured('Guide 1'), unmeasured('Guide 2')], inUse: 1 })],
    takes: (input) => readToolbox(input).ok,
    whole: (input) => {
      const read = readToolbox(input);
      return read.ok && writeToolbox(read.toolbox) === input;
    },
  },
  {
    name: 'Typed lengths',
    sound: ['3/4', '1 23/64 in', '19.05 mm', '2\' 6 1/2"', '0,75'],
    takes: (input) => parseLength(input, 'in').ok,
    whole: (input) => parseLength(input, 'in').ok,
  },
];

/** What breaks readers: names of prototypes, numbers without end, signs that can't be seen. */
const NASTY = [
  ...['__proto__', '"__proto__":{"x":1},', 'constructor', 'toString', '1e999', '-0', 'NaN', 'null'],
  ...[
    '[',
    '{',
    ']',
    '}',
    '"',
    '\\',
    '\u0000',
    '\u202e',
    '\ud800',
    '\ufeff',
    '%',
    '%E0%A4%A',
    ';',
    '=',
  ],
  ...['999999999999999999999', '0x10', '../../', '<script>', "'", '½', '⁄', '−', ' ', '\n'],
  '['.repeat(2000),
  '9'.repeat(400),
];

function damaged(draws: Draws, sound: readonly string[]): string {
  let text = draws.pick(sound);
  for (let i = draws.whole(1, 4); i > 0; i--) {
    const at = draws.whole(0, text.length);
    const to = Math.min(text.length, at + draws.whole(0, 12));
    const [before, cut, after] = [text.slice(0, at), text.slice(at, to), text.slice(to)];
    switch (draws.whole(0, 6)) {
      case 0:
        text = before + after;
        break;
      case 1:
        text = before + cut + cut + after;
        break;
      case 2:
        text = before;
        break;
      case 3:
        text = before + draws.pick(sound).slice(at);
        break;
      case 4:
        text = before + String.fromCharCode(draws.whole(0, 255)) + after;
        break;
      default:
        text = before + draws.pick(NASTY) + after;
    }
  }
  return text;
}

let [crashes, losses] = [0, 0];
for (const { name, sound, takes, whole } of readers) {
  const lost = sound.filter((input) => !whole(input)).length;
  let [taken, crashed, slowest] = [0, 0, 0];
  const draws = new Draws(`hostile:${name}`);
  for (let i = 0; i < count; i++) {
    const input = damaged(draws, sound);
    const start = performance.now();
    try {
      if (takes(input)) taken += 1;
    } catch (error) {
      crashed += 1;
      console.log(`  ${name}: ${String(error)}: ${JSON.stringify(input).slice(0, 300)}`);
    }
    slowest = Math.max(slowest, performance.now() - start);
  }
  crashes += crashed;
  losses += lost;
  console.log(
    `${name.padEnd(24)} ${count} tried, ${taken} taken, ${count - taken - crashed} refused,` +
      ` ${crashed} crashed, slowest ${slowest.toFixed(1)} ms; ${lost} of ${sound.length} sound ones lost`,
  );
}
console.log(`\n${crashes} crashes, ${losses} losses`);
process.exitCode = crashes + losses === 0 ? 0 : 1;
