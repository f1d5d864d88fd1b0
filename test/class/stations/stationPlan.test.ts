import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stationPlan } from '../../../src/class/stations/stationPlan.ts';

describe('stationPlan', () => {
  it('plans twelve benches at three guides, eight minutes each, in a lesson of 30 minutes', () => {
    const plan = stationPlan({ benches: 12, guides: 3, minutesEach: 8, minutesInLesson: 30 });
    expect(
      plan.rounds.map(({ lesson, from, to, drilling }) => [lesson, from, to, drilling]),
    ).toEqual([
      [1, 0, 8, [1, 2, 3]],
      [1, 8, 16, [4, 5, 6]],
      [1, 16, 24, [7, 8, 9]],
      [2, 0, 8, [10, 11, 12]],
    ]);
    expect(plan.longestWait).toBe(24);
    expect(plan.guidesForOneLesson).toBe(4);
  });

  it('lets every bench drill once, in no lesson longer than it is', () => {
    const input = fc.record({
      benches: fc.integer({ min: 1, max: 40 }),
      guides: fc.integer({ min: 1, max: 10 }),
      minutesEach: fc.integer({ min: 1, max: 20 }),
      minutesInLesson: fc.integer({ min: 20, max: 90 }),
    });
    fc.assert(
      fc.property(input, (input) => {
        const plan = stationPlan(input);
        const drilled = plan.rounds.flatMap(({ drilling }) => drilling);
        expect(drilled).toEqual(Array.from({ length: input.benches }, (_, i) => i + 1));
        for (const round of plan.rounds) {
          expect(round.to).toBeLessThanOrEqual(input.minutesInLesson);
          expect(round.drilling.length).toBeLessThanOrEqual(input.guides);
          expect([...round.done, ...round.drilling, ...round.waiting].length).toBe(input.benches);
        }
        expect(stationPlan({ ...input, guides: plan.guidesForOneLesson }).lessons).toBe(1);
        if (plan.guidesForOneLesson > 1) {
          const fewer = stationPlan({ ...input, guides: plan.guidesForOneLesson - 1 });
          expect(fewer.lessons).toBeGreaterThan(1);
        }
      }),
    );
  });

  it('says what is out of range', () => {
    const input = { benches: 4, guides: 1, minutesEach: 10, minutesInLesson: 30 };
    expect(() => stationPlan({ ...input, benches: 2.5 })).toThrow('benches is 2.5');
    expect(() => stationPlan({ ...input, minutesEach: 45 })).toThrow(/longer than a lesson/);
    expect(() => stationPlan({ ...input, minutesInLesson: NaN })).toThrow('minutesInLesson is NaN');
  });
});
