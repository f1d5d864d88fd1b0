import { describe, expect, it, test } from 'vitest';
import { readCourse } from './courseLessons.ts';
import { LARGEST_SEED, makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { LEVELS, type Level, type Question } from '../../../src/practice/questions/types.ts';
import { misconceptions } from '../contentFiles.ts';
import { faultsIn, recognized } from './faultsIn.ts';

/** Seeds of each template that are tried here; test/bench/seeds.ts tries as many as it is told to. */
const SEEDS = Array.from({ length: 24 }, (_, i) => i * 7919);
const SYSTEMS = ['in', 'mm'] as const;

function make(id: string, seed: number, system: 'in' | 'mm', level: Level = 'own'): Question {
  return makeQuestion(id, seed, { system, level, misconceptions });
}

describe.each(templates.map((template) => [template.id, template] as const))(
  'the template %s',
  (id, template) => {
    it('never has two right answers or none, nor answers that read alike', () => {
      for (const seed of SEEDS) {
        for (const system of SYSTEMS) {
          for (const level of seed % 3 === 0 ? LEVELS : (['own'] as const)) {
            const faults = faultsIn(make(id, seed, system, level));
            expect(faults, `seed ${seed}, ${system}, ${level}`).toEqual([]);
          }
        }
      }
    });

    it('makes the same question from the same seed, and others from others', () => {
      const asked = SEEDS.slice(0, 12).map((seed) => JSON.stringify(make(id, seed, 'in')));
      expect(SEEDS.slice(0, 12).map((seed) => JSON.stringify(make(id, seed, 'in')))).toEqual(asked);
      expect(new Set(asked).size).toBeGreaterThan(4);
    });

    it('travels as JSON', () => {
      const question = make(id, 5, 'mm', 'example');
      expect(JSON.parse(JSON.stringify(question))).toEqual(question);
    });

    it('says which mistakes it recognizes, no more and no fewer', () => {
      const found = SEEDS.flatMap((seed) =>
        SYSTEMS.flatMap((system) =>
          (['own', 'blank'] as const).flatMap((level) => recognized(make(id, seed, system, level))),
        ),
      );
      expect([...new Set(found)].sort()).toEqual([...template.misconceptions].sort());
    });

    it('shows the same numbers at all three levels, and leaves one step less to do', () => {
      const [example, blank, own] = LEVELS.map((level) => make(id, 11, 'in', level));
      expect(own?.shown).toBeUndefined();
      if (own?.kind === 'order' && blank?.kind === 'order' && example?.kind === 'order') {
        expect([own.placed, example.placed]).toEqual([0, own.order.length]);
        expect(blank.placed).toBeGreaterThan(0);
        expect(blank.order.length - blank.placed).toBeGreaterThan(1);
        expect(blank.order).toEqual(own.order);
      } else {
        expect(example?.shown).toEqual(own?.working);
        expect(blank?.shown).toEqual(blank?.working.slice(0, -1));
        expect(own?.working.length).toBeGreaterThan(0);
      }
      expect(example?.part).toBe('example');
      expect(own?.part).toBe('on-your-own');
    });

    it('belongs to a lesson of the course', () => {
      expect(readCourse()).toContain(template.lesson);
    });
  },
);

describe('the templates together', () => {
  const has = <Value>(of: (template: (typeof templates)[number]) => readonly Value[]) =>
    new Set(templates.flatMap(of));

  it('cover every lesson of the course and all six joints, with every kind of question', () => {
    expect([...has(({ lesson }) => [lesson])].sort()).toEqual([...readCourse()].sort());
    expect([...has(({ joints }) => joints)].sort()).toEqual(
      ['corner', 'edge', 'frame', 'leg', 'miter', 'tee'].sort(),
    );
    expect([...has(({ kind }) => [kind])].sort()).toEqual(
      ['one', 'several', 'length', 'order', 'fault', 'rule'].sort(),
    );
  });

  it('have ids of their own', () => {
    expect(has(({ id }) => [id]).size).toBe(templates.length);
  });
});

describe('makeQuestion', () => {
  it('names template, revision and seed, and says how to make the question again', () => {
    const question = make('stop-for-a-board', 12, 'mm', 'blank');
    expect(question.identity).toBe('stop-for-a-board@1:12');
    expect(question.made).toEqual({
      ...{ template: 'stop-for-a-board', revision: 1, seed: 12, system: 'mm', level: 'blank' },
    });
  });

  it('takes every seed of 32 bits', () => {
    expect(faultsIn(make('read-the-rule', 0, 'in'))).toEqual([]);
    expect(faultsIn(make('read-the-rule', LARGEST_SEED, 'in'))).toEqual([]);
  });

  test.each([-1, 1.5, NaN, LARGEST_SEED + 1])('refuses the seed %s', (seed) => {
    expect(() => make('read-the-rule', seed, 'in')).toThrow(RangeError);
  });

  it('refuses a template, a level and a mistake that there is not', () => {
    expect(() => make('no-such-template', 1, 'in')).toThrow(/no-such-template/);
    expect(() => make('read-the-rule', 1, 'in', 'hard' as Level)).toThrow(/hard/);
    expect(() =>
      makeQuestion('read-the-rule', 1, { system: 'in', level: 'own', misconceptions: new Map() }),
    ).toThrow(/misconceptions\.yaml/);
  });
});
