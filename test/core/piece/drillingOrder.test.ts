import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm, planJoint } from '../../../src/core/index.ts';
import {
  type Run,
  boardByBoard,
  fewestSettings,
  halfDone,
  holeByHole,
  runsOf,
  settingsOf,
} from '../../../src/core/piece/drillingOrder.ts';
import { ordinaryJoint } from '../../support/joints.ts';

const corner = planJoint({
  ...ordinaryJoint('corner', 'in', inches(3 / 4)),
  pin: { diameter: inches(3 / 8), length: inches(3 / 2) },
});
const frame = planJoint({
  ...ordinaryJoint('frame', 'in', inches(3 / 4)),
  pin: { diameter: inches(5 / 16), length: inches(3 / 2) },
});

/** Two corners that share a top, and a corner of a frame with a thinner bit. */
const stand = [
  runsOf({ number: 1, plan: corner, boardA: 'Side 1', boardB: 'Top' }),
  runsOf({ number: 2, plan: corner, boardA: 'Side 2', boardB: 'Top' }),
  runsOf({ number: 3, plan: frame, boardA: 'Rail', boardB: 'Stile' }),
] as const;
const jointByJoint = stand.flat();

const ids = (runs: readonly Run[]) => runs.map(({ id }) => id);
const collars = (runs: readonly Run[]) => settingsOf(runs).filter(({ collar }) => collar).length;

/** Runs of a few boards, bits, bushings and stops, in any order. */
const someRuns: fc.Arbitrary<readonly Run[]> = fc.uniqueArray(
  fc.record({
    id: fc.string({ minLength: 1, maxLength: 4 }),
    board: fc.constantFrom('A', 'B', 'C', 'D'),
    holes: fc.integer({ min: 1, max: 5 }),
    bit: fc.constantFrom(mm(6), mm(8)),
    bushing: fc.constantFrom(mm(20), mm(25)),
    stop: fc.constantFrom(mm(40), mm(45), mm(50)),
  }),
  { selector: ({ id }) => id, minLength: 1, maxLength: 8 },
);

describe('the order of drilling', () => {
  test('joint by joint sets a stop for every row, but where two boards share one', () => {
    expect(ids(jointByJoint)).toEqual(['1A', '1B', '2A', '2B', '3A', '3B']);
    expect(settingsOf(jointByJoint)).toEqual([
      { bit: true, bushing: true, collar: true },
      { bit: false, bushing: false, collar: true },
      { bit: false, bushing: false, collar: true },
      { bit: false, bushing: false, collar: true },
      { bit: true, bushing: true, collar: true },
      { bit: false, bushing: false, collar: false },
    ]);
  });

  test('the top lies half done while the second side is drilled, and at no other step', () => {
    expect(halfDone(jointByJoint)).toEqual([[], [], ['Top'], [], [], []]);
    expect(halfDone(boardByBoard(jointByJoint)).flat()).toEqual([]);
  });

  test('hole by hole sets more than joint by joint, that more than board by board, that more than stop by stop', () => {
    const orders = [
      stand.flatMap(holeByHole),
      jointByJoint,
      boardByBoard(jointByJoint),
      fewestSettings(jointByJoint),
    ];
    const counts = orders.map(collars);
    expect(counts).toEqual(counts.toSorted((one, other) => other - one));
    expect(new Set(counts).size).toBe(orders.length);
    expect(ids(fewestSettings(jointByJoint))).toEqual(['1A', '2A', '1B', '2B', '3A', '3B']);
  });

  test('hole by hole drills every hole once, in A and then in B', () => {
    const runs = holeByHole(stand[2]);
    expect(ids(runs)).toEqual(['3A-1', '3B-1', '3A-2', '3B-2']);
    expect(runs.every(({ holes }) => holes === 1)).toBe(true);
  });

  test('a bit that was changed takes its bushing and its collar with it, even at the same stop', () => {
    const [a] = stand[0];
    const thinner: Run = { ...a, id: '4A', bit: mm(6) };
    expect(settingsOf([a, thinner])[1]).toEqual({ bit: true, bushing: true, collar: true });
    const longer: Run = { ...a, id: '5A', bushing: mm(a.bushing + 5) };
    expect(settingsOf([a, longer])[1]).toEqual({ bit: false, bushing: true, collar: true });
  });

  test('stop by stop sets each bit, bushing and stop once, keeps every run, and no order sets less', () => {
    fc.assert(
      fc.property(someRuns, (runs) => {
        const best = fewestSettings(runs);
        expect(ids(best).toSorted()).toEqual(ids(runs).toSorted());
        const settings = new Set(runs.map(({ bit, bushing, stop }) => `${bit} ${bushing} ${stop}`));
        expect(collars(best)).toBe(settings.size);
        expect(collars(runs)).toBeGreaterThanOrEqual(collars(best));
        expect(settingsOf(best).filter(({ bit }) => bit)).toHaveLength(
          new Set(runs.map(({ bit }) => bit)).size,
        );
      }),
    );
  });

  test('board by board leaves none half done, whatever the runs', () => {
    fc.assert(
      fc.property(someRuns, (runs) => {
        expect(halfDone(boardByBoard(runs)).flat()).toEqual([]);
      }),
    );
  });
});
