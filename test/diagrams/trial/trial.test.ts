import { describe, expect, test } from 'vitest';
import { type BenchSetup, type JointKind, drill, dryFit, mm } from '../../../src/core/index.ts';
import { startSetup, startStates } from '../../../src/core/trial/startStates.ts';
import { clipArea, clipLine, roundWindow } from '../../../src/diagrams/drafting/clip.ts';
import { labelBox } from '../../../src/diagrams/drafting/label.ts';
import { type Point, overlap } from '../../../src/diagrams/drafting/point.ts';
import { arrangeTrialRow } from '../../../src/diagrams/trial/arrangeRow.ts';
import { arrangeTrialSection } from '../../../src/diagrams/trial/arrangeSection.ts';
import { describeRow } from '../../../src/diagrams/trial/describe.ts';
import { chooseDetails } from '../../../src/diagrams/trial/detail.ts';
import { trialRow } from '../../../src/diagrams/trial/row.ts';
import { endingsOf } from '../../../src/diagrams/trial/says.ts';
import { seatPins } from '../../../src/diagrams/trial/seat.ts';
import { trialSection } from '../../../src/diagrams/trial/section.ts';

function made(setup: BenchSetup) {
  const trial = drill(setup);
  const outcome = dryFit(trial);
  const seated = seatPins(trial, outcome);
  const pin = outcome.faults[0]?.pins[0] ?? 0;
  return {
    ...{ setup, trial, outcome, seated, pin },
    section: trialSection(trial, setup.plan, outcome, pin, seated, 0),
    row: trialRow(trial, setup.plan, outcome, seated),
  };
}

function start(id: string, kind?: JointKind, system: 'in' | 'mm' = 'mm') {
  const found = startStates.find((each) => each.id === id)!;
  return made(startSetup(found, kind ?? found.kinds[0]!, found.fixed?.system ?? system));
}

const xs = (points: readonly Point[]) => points.map(({ x }) => x);
const ys = (points: readonly Point[]) => points.map(({ y }) => y);
const span = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;

describe('the joint cut along a pin', () => {
  test('sound: the boards meet, the room past the pin is shared, the pin is as thin as it is', () => {
    const { section, seated, setup } = start('sound', 'corner');
    const { plan } = setup;
    expect(seated.opening).toEqual({ start: 0, end: 0 });
    expect(seated.seats[0]!.inA).toBeCloseTo(plan.a.engagement, 9);
    const pin = section.pieces.find(({ pen }) => pen === 'pin')!;
    expect(span(xs(pin.points))[0]).toBeCloseTo(-plan.a.engagement, 9);
    expect(span(xs(pin.points))[1]).toBeCloseTo(plan.b.engagement, 9);
    const [top, bottom] = span(ys(pin.points));
    expect(bottom - top).toBeCloseTo(plan.pin!.diameter - 0.1, 9);
    expect(section.small).toEqual([]);
    expect(section.cautions).toEqual([]);
  });

  test('forgot the bushing: B stands off by the pin less its two holes', () => {
    const { section, trial } = start('forgot-bushing', 'edge');
    const { a, b, pin } = trial.pins[0]!;
    // 23 mm asked for, 20 mm of bushing forgotten.
    expect(a.depth).toBeCloseTo(3, 9);
    expect(span(xs(section.bodies[1]!.outline))[0]).toBeCloseTo(pin.length - a.depth - b.depth, 9);
    expect(section.measures.find(({ id }) => id === 'gap')!.value).toBeCloseTo(34, 9);
  });

  test('turned over: A’s face lies off B’s by the step', () => {
    const { section, outcome } = start('turned-over', 'edge');
    const [topA, topB] = section.bodies.map((body) => span(ys(body.outline))[0]);
    // 18 mm board, guide set at 10 and 0.8 off: 18 − 2 × 10.8.
    expect(topA! - topB!).toBeCloseTo(18 - 21.6, 9);
    expect(outcome.step.start).toBeCloseTo(-3.6, 9);
    expect(section.small).toMatchObject([{ fault: 'step', axis: 'y' }]);
  });

  test('same stop: the bit is drawn out of B’s far face as far as it came', () => {
    const { section, setup } = start('same-stop', 'corner');
    const phantom = section.pieces
      .filter(({ pen }) => pen === 'phantom')
      .flatMap(({ points }) => points);
    // 23 mm and a 3 mm spur in 22 mm of wood.
    expect(span(xs(phantom))[0]).toBeCloseTo(22, 9);
    expect(span(xs(phantom))[1]).toBeCloseTo(26, 9);
    expect(section.cautions).toHaveLength(1);
    expect(section.measures.find(({ id }) => id === 'b.woodLeft')).toMatchObject({ caution: true });
    expect(setup.plan.b.limit).toBe(22);
  });

  test('a stop that is absurdly deep still draws a joint of a joint’s size', () => {
    const { setup } = start('sound', 'corner');
    const { section } = made({ ...setup, b: { ...setup.b, stop: { collar: mm(90_000) } } });
    expect(span(section.pieces.flatMap(({ points }) => xs(points)))[1]).toBeLessThan(60);
  });

  test('a pin too thick stands on the mouths of both holes by its eased ends', () => {
    const { seated, trial } = start('10-mm-pin-3-8-bit');
    expect(seated.seats[0]!.inA).toBeCloseTo(9.9 / 8, 9);
    expect(seated.opening.start).toBeCloseTo(trial.pins[0]!.pin.length - 2 * (9.9 / 8), 9);
    expect(seated.opening.end).toBe(seated.opening.start);
  });

  test('a leaning pin goes into B until the clearance lets it lean no more', () => {
    const { seated, trial, outcome } = start('guide-rocked', 'edge');
    const { inA, inB } = seated.seats[0]!;
    const lean = Math.tan((3 * Math.PI) / 180);
    const { a, b } = outcome.pins[0]!.fit;
    expect(a.clearance / inA + b.clearance / inB).toBeCloseTo(lean, 9);
    expect(inA).toBeCloseTo(trial.pins[0]!.a.depth, 9);
  });

  test('a pin that misses its hole rests on B’s surface', () => {
    const { setup } = start('sound', 'edge');
    const marks = setup.b.marks.with(0, mm(setup.b.marks[0]! + 3));
    const { seated, trial, outcome, row } = made({ ...setup, b: { ...setup.b, marks } });
    expect(outcome.fits).toBe(false);
    expect(seated.opening.start).toBeCloseTo(trial.pins[0]!.pin.length - trial.pins[0]!.a.depth, 9);
    expect(row.small).toMatchObject([{ fault: 'misses', axis: 'x' }]);
    expect(row.small[0]!.to - row.small[0]!.from).toBeCloseTo(
      Math.abs(outcome.pins[0]!.rest.along),
      9,
    );
  });
});

describe('the row of pins', () => {
  test('the stop slipped: holes after the first are deeper by the slip', () => {
    const { trial, setup, row } = start('stop-slipped', 'edge');
    expect(trial.pins.map(({ b }) => b.depth - setup.plan.b.holeDepth)).toEqual(
      trial.pins.map((_, j) =>
        j === 0 ? expect.closeTo(0, 9) : expect.closeTo(setup.slip!.by, 9),
      ),
    );
    expect(row.pins).toHaveLength(5);
  });

  test('pins too long at one end: B tilts, touches at the other, and rests on each pin by its own gap', () => {
    const { setup } = start('sound', 'edge');
    // The collar slips 10 mm down before the last hole of A.
    const count = setup.plan.holes.length;
    const slip = { after: 2 * count - 1, by: mm(-10) };
    const { row, seated, outcome, trial } = made({ ...setup, first: 'b', slip });
    const { opening } = outcome;
    expect(opening.start).toBe(0);
    // 4 mm over at 562 mm of 600: two allowances of 3 mm are used up.
    expect(outcome.gap).toBeCloseTo(4, 9);
    expect(opening.end).toBeCloseTo((4 * trial.length) / trial.pins.at(-1)!.a.along, 9);
    expect(seated.opening).toEqual({ start: opening.start, end: opening.end });
    expect(row.opening).toEqual(seated.opening);
    const edge = row.cut.bodies[1]!.outline;
    const at = (along: number) =>
      edge[0]!.y + ((edge[1]!.y - edge[0]!.y) * (along - edge[0]!.x)) / (edge[1]!.x - edge[0]!.x);
    expect(at(0)).toBeCloseTo(0, 9);
    expect(at(trial.length)).toBeCloseTo(opening.end, 9);
    trial.pins.forEach(({ a, pin }, j) => {
      const seat = seated.seats[j]!;
      expect(seat.opening).toBeCloseTo(at(a.along), 9);
      expect(seat.inA + seat.opening + seat.inB).toBeCloseTo(pin.length, 9);
      const section = trialSection(trial, setup.plan, outcome, j, seated, 0);
      expect(span(xs(section.bodies[1]!.outline))[0]).toBeCloseTo(seat.opening, 9);
    });
    const says = describeRow(trial, outcome, seated, 'mm');
    expect(says).toContain(
      'they stand open by 0 millimeters at the start of the joint and about 4.',
    );
    const shown = arrangeTrialRow(row, 640, 'mm').labels.map(({ text }) => text.mm);
    expect(shown.filter((text) => text.startsWith('open'))).toEqual([
      'open 0',
      expect.stringMatching(/^open ≈4\.\d$/),
    ]);
  });

  test('opposite ends: A is drawn that far along', () => {
    const { row } = start('opposite-ends', 'edge', 'in');
    expect(row.outOfPlace!.to - row.outOfPlace!.from).toBeCloseTo(25.4, 6);
    expect(span(xs(row.cut.bodies[0]!.outline))[0]).toBeCloseTo(25.4, 6);
  });
});

describe('a detail', () => {
  const small = {
    fault: 'step',
    axis: 'y',
    from: 0,
    to: 0.5,
    text: { in: '', mm: '' },
    at: { x: 0, y: 0 },
  } as const;

  test('enlarges by the first step of ISO 5455 that shows the length, and says so', () => {
    // 2 px on the drawing: 5 : 1 makes 10, which is too little; 10 : 1 makes 20.
    expect(chooseDetails([small], 4)).toMatchObject([{ letter: 'X', times: 10 }]);
  });

  test('is not wanted where the length can be seen', () => {
    expect(chooseDetails([{ ...small, to: 2 }], 4)).toEqual([]);
  });

  test('shows what lies inside its circle and nothing else', () => {
    const window = roundWindow({ x: 10, y: 20 }, 5);
    const square = [-50, 50].flatMap((x) => (x < 0 ? [-50, 50] : [50, -50]).map((y) => ({ x, y })));
    const seen = clipArea(square, window);
    const area = seen.reduce((sum, p, i) => {
      const q = seen[(i + 1) % seen.length]!;
      return sum + (p.x * q.y - q.x * p.y) / 2;
    }, 0);
    expect(Math.abs(area)).toBeCloseTo(0.5 * 72 * 25 * Math.sin((2 * Math.PI) / 72), 6);
    const [line] = clipLine(
      [
        { x: -50, y: 20 },
        { x: 50, y: 20 },
      ],
      window,
    );
    expect(line![0]!.x).toBeCloseTo(5, 6);
    expect(line![1]!.x).toBeCloseTo(15, 6);
    expect(
      clipLine(
        [
          { x: -50, y: 40 },
          { x: 50, y: 40 },
        ],
        window,
      ),
    ).toEqual([]);
    expect(
      clipArea(
        square.map(({ x, y }) => ({ x: x + 200, y })),
        window,
      ),
    ).toEqual([]);
  });
});

describe('what is told of it', () => {
  test.each([
    ['sound', ['closes']],
    ['forgot-bushing', ['open']],
    ['10-mm-pin-3-8-bit', ['refuses']],
    ['turned-over', ['step']],
    ['opposite-ends', ['step']],
    ['same-stop', ['through']],
    ['no-stop', ['open', 'through']],
    ['guide-rocked', ['refuses', 'step']],
    ['forgot-allowance', ['closes']],
  ] as const)('%s: %j', (id, endings) => {
    expect(endingsOf(start(id).outcome)).toEqual(endings);
  });
});

describe.each([320, 640, 840])('on a sheet %i px wide', (width) => {
  test.each(startStates.flatMap((each) => each.kinds.map((kind) => [each.id, kind] as const)))(
    '%s, %s: numbers stay apart and on the sheet',
    (id, kind) => {
      for (const system of ['in', 'mm'] as const) {
        const { section, row } = start(id, kind, system);
        for (const unit of ['in', 'mm', 'both'] as const) {
          for (const sheet of [
            arrangeTrialSection(section, section, width, unit),
            arrangeTrialRow(row, width, unit),
          ]) {
            const numbers = sheet.labels.filter(({ kind }) => kind === 'number');
            numbers.forEach((label, i) => {
              const box = labelBox(label);
              const what = `${label.text.in}, ${label.text.mm} in ${unit}`;
              expect(box.left, what).toBeGreaterThan(-2);
              expect(box.right, what).toBeLessThan(width + 2);
              expect(box.bottom, what).toBeLessThan(sheet.height);
              for (const other of numbers.slice(i + 1)) {
                expect(overlap(box, labelBox(other)), `${what} on ${other.text.in}`).toBe(false);
              }
            });
            expect(sheet.strokes.filter(({ d }) => /NaN|Infinity/.test(d))).toEqual([]);
          }
        }
      }
    },
  );
});
