import { describe, expect, it } from 'vitest';
import { accuracyOf, attemptsOf } from '../../../src/practice/progress/attempts.ts';
import { benchName } from '../../../src/practice/progress/benchName.ts';
import { partsOf } from '../../../src/practice/progress/events.ts';
import { nameOf, stateInWords } from '../../../src/practice/progress/inWords.ts';
import { learnersOf } from '../../../src/practice/progress/learners.ts';
import { lastLesson, lessonState } from '../../../src/practice/progress/lessonState.ts';
import { mistakesMet } from '../../../src/practice/progress/mistakesMet.ts';
import { answer, eventsOf, LEARNER, madeAnswer } from './someEvents.ts';

const QUESTIONS = ['glue/one@1', 'glue/two@1'];

describe('partsOf', () => {
  it.each([
    ['glue/one@2', { lesson: 'glue', id: 'one', revision: 2 }],
    ['pin-diameter@1:4294967295', { id: 'pin-diameter', revision: 1, seed: 4294967295 }],
    ['glue/one', null],
    ['one@1', null],
    ['glue/one@1:5', null],
    ['../one@1', null],
    ['', null],
  ])('takes %s apart', (identity, parts) => {
    expect(partsOf(identity)).toEqual(parts);
  });
});

describe('lessonState', () => {
  it('is not begun before anything was done in the lesson', () => {
    const events = eventsOf([{ kind: 'opened', lesson: 'moisture' }, answer('moisture/x@1', true)]);
    expect(lessonState(events, 'glue', QUESTIONS)).toEqual({ state: 'not begun', right: 0 });
  });

  it('is begun once it is opened, and counts what was right', () => {
    const events = eventsOf([
      { kind: 'opened', lesson: 'glue' },
      answer('glue/one@1', false),
      answer('glue/one@1', true),
      answer('glue/one@1', true),
      answer('glue/prediction@1', true),
    ]);
    const state = lessonState(events, 'glue', QUESTIONS);
    expect(state).toEqual({ state: 'begun', right: 1, last: events[4]!.at });
    expect(stateInWords(state, 2)).toBe('1 of 2 right');
  });

  it('is finished by the answer that was missing, and stays so after a wrong one', () => {
    const events = eventsOf([
      answer('glue/one@1', true),
      answer('glue/two@1', true),
      answer('glue/two@1', false),
    ]);
    const state = lessonState(events, 'glue', QUESTIONS);
    expect(state).toMatchObject({ state: 'finished', right: 2, finished: events[1]!.at });
    expect(stateInWords(state, 2)).toBe('Finished');
  });

  it('does not count an answer to an earlier revision, but remembers that it was finished', () => {
    const events = eventsOf([answer('glue/one@1', true), answer('glue/two@1', true)]);
    const changed = ['glue/one@2', 'glue/two@1'];
    expect(lessonState(events, 'glue', changed)).toMatchObject({ state: 'begun', right: 1 });
    const noted = [...events, ...eventsOf([{ kind: 'finished', lesson: 'glue' }])];
    const state = lessonState(noted, 'glue', changed);
    expect(state).toMatchObject({ state: 'finished', right: 1 });
    expect(stateInWords(state, 2)).toBe('Finished, 1 new since');
  });

  it('is never finished by asking nothing', () => {
    const events = eventsOf([{ kind: 'opened', lesson: 'glue' }, answer('glue/one@1', true)]);
    expect(lessonState(events, 'glue', []).state).toBe('begun');
  });

  it('shows the sign-off until it is taken back', () => {
    const signed = { kind: 'sign-off', lesson: 'glue', bench: 'Bench 3', seen: true } as const;
    const events = eventsOf([signed, { ...signed, seen: false }]);
    expect(lessonState(events.slice(0, 1), 'glue', []).signedOff).toEqual({
      at: events[0]!.at,
      bench: 'Bench 3',
    });
    expect(lessonState(events, 'glue', []).signedOff).toBeUndefined();
  });
});

describe('lastLesson', () => {
  it('is where something was done last, made questions and names aside', () => {
    expect(lastLesson([])).toBeUndefined();
    expect(
      lastLesson(
        eventsOf([
          { kind: 'opened', lesson: 'glue' },
          answer('moisture/one@1', false),
          madeAnswer('pin-diameter', 1, true),
          { kind: 'name', name: 'Bench 3' },
        ]),
      ),
    ).toBe('moisture');
  });
});

describe('attemptsOf and accuracyOf', () => {
  const events = eventsOf([
    madeAnswer('pin-diameter', 1, false),
    madeAnswer('pin-diameter', 1, true),
    madeAnswer('pin-diameter', 2, true),
    madeAnswer('pin-diameter', 3, true, 'blank'),
    answer('glue/one@1', true),
    madeAnswer('free-room', 1, false),
  ]);

  it('gathers the answers by question', () => {
    expect(attemptsOf(events).map(({ question, answers }) => [question, answers.length])).toEqual([
      ['pin-diameter@1:1', 2],
      ['pin-diameter@1:2', 1],
      ['pin-diameter@1:3', 1],
      ['glue/one@1', 1],
      ['free-room@1:1', 1],
    ]);
  });

  it('counts first tries without help, by template, the latest first', () => {
    expect([...accuracyOf(events)]).toEqual([
      ['pin-diameter', { asked: 2, right: 1, lately: [true, false] }],
      ['free-room', { asked: 1, right: 0, lately: [false] }],
    ]);
  });
});

describe('mistakesMet', () => {
  it('counts answers, and what came right since', () => {
    const events = eventsOf([
      answer('glue/one@1', false, ['forgot-the-point', 'forgot-the-point']),
      answer('glue/one@1', false, ['split-in-half']),
      answer('glue/one@1', true),
      answer('glue/two@1', false, ['forgot-the-point']),
      answer('glue/one@1', true),
    ]);
    expect(mistakesMet(events)).toEqual([
      { id: 'forgot-the-point', times: 2, last: events[3]!.at, mended: 1 },
      { id: 'split-in-half', times: 1, last: events[1]!.at, mended: 1 },
    ]);
  });
});

describe('learnersOf', () => {
  it('lists everybody by the latest name', () => {
    const other = 'b'.repeat(24);
    const events = eventsOf([
      { kind: 'name', name: 'Bench 3' },
      { ...answer('glue/one@1', true), learner: other },
      { kind: 'name', name: 'Bench 4' },
    ]);
    expect(learnersOf(events)).toEqual([
      { id: LEARNER, name: 'Bench 4', answers: 0 },
      { id: other, name: '', answers: 1 },
    ]);
    expect(nameOf(events)).toBe('Bench 4');
    expect(nameOf([])).toBe('');
  });
});

describe('benchName', () => {
  it.each([
    ['  Bench \t 3 ', 'Bench 3'],
    ['Ｂｅｎｃｈ\u00a03', 'Bench 3'],
    ['Bench\u202e 3\u0000', 'Bench 3'],
    [' \n ', ''],
    ['x'.repeat(60), 'x'.repeat(40)],
    [`${'x'.repeat(39)} y`, 'x'.repeat(39)],
  ])('tidies %j', (typed, name) => {
    expect(benchName(typed)).toBe(name);
  });
});
