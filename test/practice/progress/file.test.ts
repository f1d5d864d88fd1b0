import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LONGEST_FILE,
  MOST_EVENTS,
  progressFile,
  readProgressFile,
} from '../../../src/practice/progress/file.ts';
import { inOrder } from '../../../src/practice/progress/stored.ts';
import { answer, anyEvent, anyEvents, eventsOf, madeAnswer } from './someEvents.ts';

const NOW = Date.UTC(2026, 11, 2);
const DAY = 24 * 60 * 60 * 1000;

function fileOf(entries: readonly unknown[]): string {
  return JSON.stringify({ progress: 1, events: entries });
}

/** What is said of a file with this one entry. */
function refusal(entry: unknown): string | undefined {
  const read = readProgressFile(fileOf([entry]), NOW);
  if (!read.ok) throw new Error(read.reason);
  expect(read.events).toEqual([]);
  expect(read.refusals).toHaveLength(1);
  return read.refusals[0]!.why;
}

const NOT_AS_KEPT = 'not as this workbook keeps it';
const [answered] = eventsOf([answer('glue/one@1', true)]);
const [made] = eventsOf([madeAnswer('pin-diameter', 5, true)]);
const [opened] = eventsOf([{ kind: 'opened', lesson: 'glue' }]);

describe('a saved file', () => {
  it('gives back what was saved, in the order in which it happened', () => {
    fc.assert(
      fc.property(anyEvents, (events) => {
        const read = readProgressFile(progressFile(events), NOW);
        expect(read).toEqual({ ok: true, events: inOrder(events), refusals: [] });
      }),
    );
  });

  it('gives back the boards and joints of a class with a made question', () => {
    const limits = { joints: ['leg', 'tee'], thicknesses: [19.05], tolerance: 0.5 };
    const entry = { ...made, made: { ...(made as { made: object }).made, limits } };
    expect(readProgressFile(fileOf([entry]), NOW)).toMatchObject({ ok: true, events: [entry] });
  });
});

describe('a file of anyone’s', () => {
  it.each([
    ['empty', '', 'it is cut off or damaged, or is another sort of file'],
    [
      'cut off',
      '{"progress":1,"events":[{"ver',
      'it is cut off or damaged, or is another sort of file',
    ],
    ['nothing', 'null', 'it is not progress that was saved here'],
    ['a list', '[1,2]', 'it is not progress that was saved here'],
    ['a hand-in', '{"handIn":1}', 'it is not progress that was saved here'],
    [
      'a prototype',
      '{"__proto__":{"progress":1,"events":[]}}',
      'it is not progress that was saved here',
    ],
    ['a newer one', '{"progress":2,"events":[]}', 'it is of a newer edition of this workbook'],
    ['no entries', '{"progress":1}', 'its entries are no list, or too many'],
    [
      'entries that only look like a list',
      '{"progress":1,"events":{"length":3}}',
      'its entries are no list, or too many',
    ],
    [
      'too many entries',
      `{"progress":1,"events":[${'0,'.repeat(MOST_EVENTS)}0]}`,
      'its entries are no list, or too many',
    ],
    ['gigantic', ' '.repeat(LONGEST_FILE + 1), 'it is longer than any that is saved here'],
  ])('is refused in a sentence: %s', (_, text, why) => {
    expect(readProgressFile(text, NOW)).toEqual({
      ok: false,
      reason: `This file can’t be read: ${why}.`,
    });
  });

  it.each([
    ['no object', 'entry', NOT_AS_KEPT],
    ['nothing', null, NOT_AS_KEPT],
    ['a list', [opened], NOT_AS_KEPT],
    ['a later version', { ...opened, version: 2 }, 'of a newer edition of this workbook'],
    ['no version', { ...opened, version: undefined }, NOT_AS_KEPT],
    ['a version that is none', { ...opened, version: 0.5 }, NOT_AS_KEPT],
    ['an id of its own making', { ...opened, id: 'x' }, NOT_AS_KEPT],
    ['an id that is no text', { ...opened, id: 7 }, NOT_AS_KEPT],
    ['no learner', { ...opened, learner: '' }, NOT_AS_KEPT],
    ['a date that is a text', { ...opened, at: '2026-11-02' }, NOT_AS_KEPT],
    ['a date before dates', { ...opened, at: -1 }, NOT_AS_KEPT],
    ['a date after dates', { ...opened, at: 1e300 }, NOT_AS_KEPT],
    ['a date in the future', { ...opened, at: NOW + DAY + 1 }, 'dated in the future'],
    ['an unknown kind', { ...opened, kind: 'won' }, 'of a kind that this edition does not know'],
    ['no kind', { ...opened, kind: undefined }, 'of a kind that this edition does not know'],
    ['a lesson with a path', { ...opened, lesson: '../secrets' }, NOT_AS_KEPT],
    ['a gigantic lesson', { ...opened, lesson: 'x'.repeat(1e6) }, NOT_AS_KEPT],
    ['a question that is none', { ...answered, question: 'glue' }, NOT_AS_KEPT],
    ['an answer of no kind', { ...answered, given: { kind: 'magic' } }, NOT_AS_KEPT],
    ['no answer', { ...answered, given: null }, NOT_AS_KEPT],
    ['a mark that is a word', { ...answered, right: 'yes' }, NOT_AS_KEPT],
    ['mistakes by the thousand', { ...answered, mistakes: Array(1000).fill('x') }, NOT_AS_KEPT],
    ['a seed, and nothing made', { ...made, made: undefined }, NOT_AS_KEPT],
    [
      'something else made than asked',
      { ...made, made: { ...(made as { made: object }).made, seed: 6 } },
      NOT_AS_KEPT,
    ],
    [
      'a joint that nobody makes',
      { ...made, made: { ...(made as { made: object }).made, limits: { joints: ['dovetail'] } } },
      NOT_AS_KEPT,
    ],
  ])('leaves out an entry with %s', (_, entry, why) => {
    expect(refusal(entry)).toBe(why);
  });

  it('takes what differs by a time zone', () => {
    const ahead = { ...opened, at: NOW + DAY };
    expect(readProgressFile(fileOf([ahead]), NOW)).toMatchObject({ events: [ahead] });
  });

  it('takes one of two entries with the same id, and says so', () => {
    const other = { ...opened, lesson: 'moisture' };
    expect(readProgressFile(fileOf([opened, other]), NOW)).toEqual({
      ok: true,
      events: [opened],
      refusals: [{ count: 1, why: 'in it twice, and taken once' }],
    });
  });

  it('takes over no field that it does not know, and nothing of a prototype', () => {
    const text = `{"progress":1,"events":[{"__proto__":{"lesson":"x"},"extra":1,${JSON.stringify(
      opened,
    ).slice(1)}]}`;
    const read = readProgressFile(text, NOW);
    expect(read).toEqual({ ok: true, events: [opened], refusals: [] });
    expect(read.ok && Object.keys(read.events[0]!)).not.toContain('extra');
    const { lesson: _, ...without } = opened as unknown as Record<string, unknown>;
    expect(
      refusal(JSON.parse(`{"__proto__":{"lesson":"glue"},${JSON.stringify(without).slice(1)}`)),
    ).toBe(NOT_AS_KEPT);
    expect(({} as { lesson?: unknown }).lesson).toBeUndefined();
  });

  it('tidies names, so that none can hide or reach across the page', () => {
    const [named] = eventsOf([{ kind: 'name', name: `\u202e  Bench\n3 ${'!'.repeat(80)}` }]);
    const read = readProgressFile(fileOf([named]), NOW);
    expect(read).toMatchObject({ events: [{ name: `Bench 3 ${'!'.repeat(32)}` }] });
  });

  it('never throws, whatever one field is put in place of', () => {
    fc.assert(
      fc.property(anyEvent, fc.nat(), fc.jsonValue(), (event, place, value) => {
        const keys = Object.keys(event);
        const entry = { ...event, [keys[place % keys.length]!]: value };
        const read = readProgressFile(fileOf([entry]), NOW);
        expect(read.ok && read.events.length + read.refusals.length).toBe(1);
      }),
    );
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readProgressFile(text, NOW).ok).toBe(false);
      }),
    );
  });
});
