import { describe, expect, test } from 'vitest';
import { inches, planJoint } from '../../../src/core/index.ts';
import { halfDone, holeByHole, runsOf, settingsOf } from '../../../src/core/piece/drillingOrder.ts';
import { arrangeOrder, describeOrder } from '../../../src/diagrams/order/arrange.ts';
import { ordinaryJoint } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const plan = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
const pairs = [
  runsOf({ number: 1, plan, boardA: 'Side 1', boardB: 'Top' }),
  runsOf({ number: 2, plan, boardA: 'Side 2', boardB: 'Top' }),
  runsOf({ number: 3, plan, boardA: 'Rail', boardB: 'Stile' }),
];
const manyBoards = [
  runsOf({ number: 1, plan, boardA: 'Left side', boardB: 'Top, front' }),
  runsOf({ number: 2, plan, boardA: 'Right side', boardB: 'Top, back' }),
  runsOf({ number: 3, plan, boardA: 'Upper shelf', boardB: 'Left side' }),
  runsOf({ number: 4, plan, boardA: 'Rail', boardB: 'Left stile' }),
  runsOf({ number: 5, plan, boardA: 'Lower rail', boardB: 'Right stile' }),
];
const orders = {
  'joint by joint': pairs.flat(),
  'hole by hole': pairs.flatMap(holeByHole),
  'nine boards': manyBoards.flat(),
};

function shown(name: keyof typeof orders, done = orders[name].length) {
  const runs = orders[name];
  return { runs, settings: settingsOf(runs), halfDone: halfDone(runs), done };
}

describe.each(['joint by joint', 'hole by hole', 'nine boards'] as const)('%s', (name) => {
  test.each([280, 320, 420, 900])(
    'names and numbers stay apart and on the sheet at %i px',
    (width) => {
      for (const unit of ['in', 'mm', 'both'] as const) {
        expect(labelFaults(arrangeOrder(shown(name), width, unit))).toEqual([]);
      }
    },
  );
});

describe('the order of drilling, drawn', () => {
  const drilled = (done: number) =>
    arrangeOrder(shown('joint by joint', done), 640, 'in').strokes.filter(
      ({ pen }) => pen === 'wood-a',
    ).length;

  test('shows one piece of board for each step that is done, and keeps its size', () => {
    expect([1, 3, 6].map(drilled)).toEqual([1, 3, 6]);
    const heights = [1, 6].map(
      (done) => arrangeOrder(shown('joint by joint', done), 640, 'in').height,
    );
    expect(heights[0]).toBe(heights[1]);
  });

  test('draws a dashed bar only where a board lies half done', () => {
    const dashed = (done: number) =>
      arrangeOrder(shown('joint by joint', done), 640, 'in').strokes.filter(
        ({ pen }) => pen === 'phantom',
      ).length;
    // One stands in the legend.
    expect([2, 3, 6].map(dashed)).toEqual([1, 2, 2]);
  });

  test('says what is set anew, and what waits', () => {
    const text = describeOrder(shown('joint by joint'), 'in');
    expect(text).toMatch(/1, Side 1: \d holes, set anew: bit 3\/8 inch, stop /);
    expect(text).toContain('half done: Top.');
    expect(text).toMatch(/4, Top: \d holes, set anew: stop /);
  });
});
