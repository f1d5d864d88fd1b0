import { describe, expect, test } from 'vitest';
import { byLetter, entriesOf, lookedUpUnder } from '../../../src/pages/glossary/_entries.ts';

const words = {
  stop: { term: 'Stop', says: 'How far the collar stands from the corner.' },
  binds: { term: 'To bind', says: 'No place of the boards suits all pins.' },
  'stop-collar': { term: 'Stop collar', says: 'A ring around the bit.' },
  bushing: { term: 'Bushing', says: 'A sleeve in the guide.' },
};
const lesson = (id: string, number: string, body: string) => ({ id, number, title: id, body });
const lessons = [
  lesson('one', '1.1', 'The <Term id="stop">stop</Term> and its bushing.'),
  lesson('two', '1.2', '<Term id="stop-collar">collar</Term>, <Term id="stop">stops</Term>'),
];

describe('the glossary', () => {
  const entries = entriesOf(words, lessons);

  test('stands from A to Z, a verb under its own letter', () => {
    expect(entries.map(({ term }) => term)).toEqual(['To bind', 'Bushing', 'Stop', 'Stop collar']);
    expect(lookedUpUnder('To bind')).toBe('bind');
    expect(lookedUpUnder('Tongue')).toBe('tongue');
  });

  test('names the lessons in which a word opens, in their order, and no others', () => {
    const used = new Map(entries.map(({ id, lessons: some }) => [id, some.map((one) => one.id)]));
    expect(Object.fromEntries(used)).toEqual({
      stop: ['one', 'two'],
      'stop-collar': ['two'],
      binds: [],
      bushing: [],
    });
  });

  test('has each letter once, with all of its words', () => {
    const letters = byLetter(entries);
    expect(letters.map(({ letter }) => letter)).toEqual(['B', 'S']);
    expect(letters.flatMap((each) => each.entries)).toEqual(entries);
  });
});
