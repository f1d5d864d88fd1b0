import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/core/index.ts';
import { arrangePictorial } from '../../../src/diagrams/pictorial/arrange.ts';
import { describePair } from '../../../src/diagrams/pictorial/describePair.ts';
import { drilledPair, pairWithAllCues } from '../../../src/diagrams/pictorial/drilledPair.ts';
import { namedBoard } from '../../../src/diagrams/pictorial/namedBoard.ts';
import { type Drilling, drilledAs } from '../../../src/widgets/figures/marks/drilledAs.ts';
import { ordinaryJoint } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const offcut = { thickness: inches(3 / 4), width: inches(4), length: inches(6) };
const spec = { ...ordinaryJoint('edge', 'in', inches(3 / 4)), a: offcut, b: offcut };
const marked = { face: 'reference', end: 'reference' } as const;

function pair(change: Partial<Drilling> = {}) {
  const drilled = drilledAs(spec, {
    a: marked,
    b: marked,
    guideOff: inches(1 / 32),
    longer: inches(1 / 16),
    ...change,
  });
  return { ...drilled, shapes: drilledPair(drilled.plan, drilled.setup, drilled.trial) };
}

/** From where each pin of A arrives on B to B's hole. */
function astray({ shapes }: ReturnType<typeof pair>) {
  return shapes.axes.map(([, arrives], i) => {
    const hole = shapes.bores.find((bore) => bore.member === 'b' && bore.pin === i)!.mouth;
    return { along: hole.y - arrives.y, up: hole.z - arrives.z };
  });
}

describe('a pair as it was drilled', () => {
  test('from the marks: every pin arrives at its hole, though the guide is off and B longer', () => {
    const drilled = pair();
    for (const { along, up } of astray(drilled)) {
      expect(along).toBeCloseTo(0, 9);
      expect(up).toBeCloseTo(0, 9);
    }
    expect(drilled.shapes.arrivals).toEqual([]);
  });

  test('with B turned over its holes lie twice the guide’s error nearer to the marked face', () => {
    const drilled = pair({ b: { face: 'other', end: 'reference' } });
    for (const { along, up } of astray(drilled)) {
      expect(along).toBeCloseTo(0, 9);
      expect(up).toBeCloseTo(inches(1 / 16), 9);
    }
    expect(drilled.shapes.arrivals).toHaveLength(drilled.plan.holes.length);
  });

  test('with the rule on B’s other end its row is off by what B is longer', () => {
    const drilled = pair({ b: { face: 'reference', end: 'other' } });
    for (const { along, up } of astray(drilled)) {
      expect(along).toBeCloseTo(inches(1 / 16), 9);
      expect(up).toBeCloseTo(0, 9);
    }
  });

  test('says where guide and rule were put', () => {
    const { setup, trial, shapes } = pair({ a: { face: 'other', end: 'other' } });
    expect(shapes.cues?.map(({ text }) => text)).toEqual(['guide', 'rule', 'guide', 'rule']);
    const [guideA, ruleA, guideB, ruleB] = shapes.cues!.map(({ from }) => from);
    expect([guideA!.z, ruleA!.y, guideB!.z, ruleB!.y]).toEqual([-1, 1, 1, -1]);
    expect(describePair(setup, trial, 'in')).toContain(
      'On board A the guide lay against its other face and the rule was hooked on its other end.',
    );
  });

  test.each([280, 320, 600, 880])('has room for its words %d px wide', (width) => {
    for (const face of ['reference', 'other'] as const) {
      for (const end of ['reference', 'other'] as const) {
        const { plan, setup, trial, shapes } = pair({ b: { face, end }, guideOff: mm(3) });
        const sheet = arrangePictorial(pairWithAllCues(plan, setup, trial), shapes, width);
        expect(labelFaults(sheet)).toEqual([]);
      }
    }
  });
});

test('a board with its surfaces named has room for the names', () => {
  const board = namedBoard();
  for (const width of [290, 430]) {
    const sheet = arrangePictorial(board, board, width);
    expect(labelFaults(sheet)).toEqual([]);
    expect(sheet.labels.map(({ text }) => text.in)).toEqual(
      expect.arrayContaining(['face', 'edge', 'end']),
    );
  }
});
