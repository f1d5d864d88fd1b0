import { describe, expect, test } from 'vitest';
import { checkGroups } from '../../../src/checks/index.ts';
import { type SourceId, sources } from '../../../src/core/index.ts';
import { checksOf, otherSources, sourcesOf } from '../../../src/pages/sources/_restingOn.ts';
import { uses } from '../../../src/pages/sources/_uses.ts';
import { numbersOf } from '../../../src/practice/questions/numbersOf.ts';
import { filesIn, setups, textOf } from '../../practice/contentFiles.ts';

const workings = new Map([...setups].map(([name, setup]) => [name, numbersOf(setup).working]));
const ids = Object.keys(sources) as SourceId[];
const lessons = filesIn('content/lessons', '.mdx').map((file) => ({
  id: file.replace(/^.*\/|\.mdx$/g, ''),
  text: textOf(file),
}));

describe('what rests on a source', () => {
  test('a lesson rests on the sources of the workings that it names, and on no others', () => {
    const [corner, edge] = ['stand-corner', 'stand-top'].map((name) =>
      sourcesOf({ id: 'one', text: `<Step setup="${name}" of="a.stop" />` }, workings),
    );
    expect([...corner!]).toContain('from-memory');
    expect([...corner!]).not.toContain('wood-handbook');
    expect([...edge!]).toContain('shop-practice');
    expect(sourcesOf({ id: 'one', text: 'No setup at all: stand-corne.' }, workings).size).toBe(0);
  });

  test('every source is used: by a lesson, a page or a check', () => {
    for (const id of ids) {
      const resting = lessons.filter((lesson) => sourcesOf(lesson, workings).has(id));
      const { lessons: named = [], pages = [], inChecks } = uses[id];
      const count =
        resting.length + named.length + pages.length + checksOf(inChecks, checkGroups).length;
      expect(count, id).toBeGreaterThan(0);
    }
  });

  test('names only lessons that exist, and checks that have such a source', () => {
    for (const id of ids) {
      for (const lesson of uses[id].lessons ?? []) {
        expect(lessons.map((each) => each.id)).toContain(lesson);
      }
      if (uses[id].inChecks !== undefined) {
        expect(checksOf(uses[id].inChecks, checkGroups), id).not.toEqual([]);
      }
    }
  });

  test('the checks cite nothing that the page leaves out', () => {
    const named = ids.flatMap((id) => uses[id].inChecks ?? []);
    const others = otherSources(named, checkGroups);
    for (const { source } of checkGroups.flatMap(({ rows }) => rows)) {
      const listed =
        named.some((name) => source.includes(name)) || others.some(({ title }) => title === source);
      expect(listed, source).toBe(true);
    }
    expect(others.map(({ title }) => title)).toContain('EN 205:2016, thin glue line');
    expect(others.every(({ groups }) => groups.length > 0)).toBe(true);
  });
});
