import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { AnswerEvent, ProgressEvent } from '../../../src/practice/progress/events.ts';
import {
  type Reviewable,
  dueForReview,
  reviewableId,
  standings,
} from '../../../src/practice/review/due.ts';
import { REVIEW_DAYS, afterAnswer } from '../../../src/practice/review/schedule.ts';
import { sittingOf } from '../../../src/practice/review/sitting.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** A Monday evening. */
const START = Date.UTC(2026, 10, 23, 19);

let made = 0;

function answer(question: string, at: number, right: boolean, mistakes: string[] = []) {
  return {
    ...{ version: 1, id: String(made++).padStart(6, '0'), learner: 'one', calc: 1, bank: 1 },
    ...{ kind: 'answer', question, at, right, mistakes },
    given: { kind: 'one', choices: [] },
  } satisfies AnswerEvent;
}

/** Three lessons, each with two questions of its own and two templates. */
const known: readonly Reviewable[] = ['split', 'stop', 'row'].flatMap((lesson) =>
  [`${lesson}/one`, `${lesson}/two`, `${lesson}-a`, `${lesson}-b`].map((id) => ({ id, lesson })),
);

const identity = (id: string) => (id.includes('/') ? `${id}@1` : `${id}@1:7`);

describe('when something is asked again', () => {
  const right = (at: number) => ({ at, right: true, mistakes: [] });
  const wrong = (at: number) => ({ at, right: false, mistakes: ['forgot-the-point'] });

  it('known each time that it is due, it is asked after ever more days', () => {
    let at = START;
    let standing = afterAnswer(undefined, right(at));
    const days: number[] = [];
    for (const _ of [...REVIEW_DAYS, 0]) {
      days.push(Math.ceil((standing.due - at) / DAY));
      at = standing.due;
      standing = afterAnswer(standing, right(at));
    }
    expect(days).toEqual([...REVIEW_DAYS, REVIEW_DAYS.at(-1)]);
  });

  it('missed, it is due at once; answered right after reading why, on the next day', () => {
    const missed = afterAnswer(undefined, wrong(START));
    expect(missed.due).toBe(START);
    const mended = afterAnswer(missed, right(START + HOUR));
    expect(mended.missed).toEqual({ at: START, mistakes: ['forgot-the-point'], mended: true });
    expect(mended.due).toBeGreaterThan(START + 12 * HOUR);
    // The class meets on the next morning.
    expect(mended.due).toBeLessThanOrEqual(START + 18 * HOUR);
    const known = afterAnswer(mended, right(START + DAY));
    expect(known.missed).toBeUndefined();
    expect(Math.ceil((known.due - START - DAY) / DAY)).toBe(3);
  });

  it('answered again and again on one day, it gains nothing', () => {
    const once = afterAnswer(undefined, right(START));
    const often = afterAnswer(afterAnswer(once, right(START + 1)), right(START + 2));
    expect(often).toEqual({ ...once, last: START + 2 });
  });

  it('missed after months, it begins anew', () => {
    const old = { wait: 6, due: START, last: START - 70 * DAY };
    expect(afterAnswer(old, wrong(START))).toMatchObject({ wait: 0, due: START });
  });
});

test.each([
  ['setting-the-stop/set-it@3', 'setting-the-stop/set-it'],
  ['stop-for-b@2:4000000000', 'stop-for-b'],
  ['nothing', null],
])('%s is %s, whatever its revision and numbers', (question, id) => {
  expect(reviewableId(question)).toBe(id);
});

/** What a learner may have done, in the order in which it happened. */
const anyEvents: fc.Arbitrary<readonly ProgressEvent[]> = fc
  .array(
    fc.record({
      id: fc.constantFrom(...known.map(({ id }) => id), 'gone/question', 'gone-template'),
      after: fc.integer({ min: 0, max: 20 * DAY }),
      right: fc.boolean(),
    }),
    { maxLength: 40 },
  )
  .map((list) => {
    let at = START;
    return list.map(({ id, after, right }) => {
      at += after;
      return answer(identity(id), at, right, right ? [] : ['split-in-half']);
    });
  });

/** Up to a year after the last event. */
const anyMoment = fc.integer({ min: 0, max: 365 * DAY });

describe('what is due', () => {
  it('is due by now, still there, missed first, and of each what has waited longest', () => {
    fc.assert(
      fc.property(anyEvents, anyMoment, (events, later) => {
        const now = (events.at(-1)?.at ?? START) + later;
        const due = dueForReview(events, now, known);
        for (const each of due) {
          expect(each.due).toBeLessThanOrEqual(now);
          expect(known.map(({ id }) => id)).toContain(each.id);
        }
        const missed = due.map((each) => each.missed !== undefined);
        expect(missed).toEqual(missed.toSorted((one, other) => Number(other) - Number(one)));
        for (const part of [true, false]) {
          const moments = due.filter((_, i) => missed[i] === part).map((each) => each.due);
          expect(moments).toEqual(moments.toSorted((one, other) => one - other));
        }
      }),
    );
  });

  it('is all that was answered once enough days have passed, and nothing without answers', () => {
    fc.assert(
      fc.property(anyEvents, (events) => {
        const now = (events.at(-1)?.at ?? START) + 71 * DAY;
        const answered = known.filter(({ id }) => standings(events).has(id));
        const due = dueForReview(events, now, known).map(({ id }) => id);
        expect(due.toSorted()).toEqual(answered.map(({ id }) => id).toSorted());
      }),
    );
  });

  it('grows by what is answered wrong, and loses what is answered right', () => {
    fc.assert(
      fc.property(anyEvents, fc.constantFrom(...known), anyMoment, (events, { id }, later) => {
        const at = (events.at(-1)?.at ?? START) + later;
        const dueAfter = (right: boolean) =>
          dueForReview([...events, answer(identity(id), at, right)], at, known).map((d) => d.id);
        expect(dueAfter(false)).toContain(id);
        expect(dueAfter(true)).not.toContain(id);
      }),
    );
  });
});

describe('a sitting', () => {
  const anySitting = fc.record({
    events: anyEvents,
    later: anyMoment,
    seed: fc.nat(),
    count: fc.integer({ min: 1, max: 14 }),
  });

  const held = ({
    events,
    later,
    ...rest
  }: {
    events: readonly ProgressEvent[];
    later: number;
    seed: number;
    count: number;
  }) => sittingOf(events, known, { now: (events.at(-1)?.at ?? START) + later, ...rest });

  it('asks nothing twice, two of one lesson in a row only where no other is left, and what is due before all else', () => {
    fc.assert(
      fc.property(anySitting, (given) => {
        const asked = held(given);
        const ids = asked.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.length).toBeLessThanOrEqual(given.count);
        asked.forEach(({ lesson }, i) => {
          if (i === 0 || asked[i - 1]!.lesson !== lesson) return;
          for (const later of asked.slice(i)) expect(later.lesson).toBe(lesson);
        });
        const now = (given.events.at(-1)?.at ?? START) + given.later;
        const due = dueForReview(given.events, now, known).length;
        expect(asked.filter(({ why }) => why === 'due').length).toBe(Math.min(due, given.count));
      }),
    );
  });

  it('is the same for the same events, moment and seed', () => {
    fc.assert(
      fc.property(anySitting, (given) => {
        expect(held(given)).toEqual(held(given));
      }),
    );
  });

  it('begins mixed where nothing was done yet: made questions, lesson by lesson', () => {
    const asked = sittingOf([], known, { now: START, seed: 1, count: 4 });
    expect(asked.map(({ why }) => why)).toEqual(['ahead', 'ahead', 'ahead', 'ahead']);
    expect(asked.map(({ lesson }) => lesson)).toEqual(['split', 'stop', 'row', 'split']);
    expect(asked.some(({ id }) => id.includes('/'))).toBe(false);
    const others = Array.from({ length: 8 }, (_, seed) =>
      sittingOf([], known, { now: START, seed, count: 4 })
        .map(({ id }) => id)
        .join(),
    );
    expect(new Set(others).size).toBeGreaterThan(1);
  });

  it('brings what was missed, then what is new where the learner is at work', () => {
    const events = [
      answer('stop/one@1', START, false, ['forgot-the-bushing']),
      answer('split/one@1', START + 1, true),
    ];
    const asked = sittingOf(events, known, { now: START + 2 * HOUR, seed: 1, count: 5 });
    expect(asked[0]).toMatchObject({ id: 'stop/one', why: 'due' });
    expect(asked.slice(1).every(({ why, lesson }) => why === 'new' && lesson !== 'row')).toBe(true);
  });
});
