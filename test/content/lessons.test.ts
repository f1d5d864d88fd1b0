import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import { filesIn, questions, textOf } from '../practice/contentFiles.ts';

const lessons = filesIn('content/lessons', '.mdx').map((file) => ({
  file,
  id: file.replace(/^.*\/|\.mdx$/g, ''),
  text: textOf(file),
}));

/** A lesson's prose: without its head, its components and what is in their properties. */
function proseOf(text: string): string {
  return text.replace(/^---[\s\S]*?\n---\n/, '').replace(/<[A-Z][\s\S]*?>/g, ' ');
}

describe.each(lessons)('$file', ({ id, text }) => {
  const own = questions.filter(({ identity }) => identity.startsWith(`${id}/`));

  it('types no length that a component should give', () => {
    const lengths = proseOf(text).match(/.{0,30}(?:\d\/\d|\d\s?(?:mm|in|inch|inches)\b).{0,20}/g);
    expect(lengths ?? []).toEqual([]);
  });

  it('asks for a prediction, then shows, works out, warns, checks and goes to the bench', () => {
    const parts = [
      '<Prediction',
      'Figure',
      '<Step',
      '<Question',
      '<Caution',
      '<SelfCheck',
      '<ShopTask',
    ];
    const places = parts.map((part) => text.indexOf(part));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(text).toContain('<ForInstructor>');
  });

  it('shows every question that it has, and has at least six in its self-check', () => {
    expect(own.filter(({ part }) => part === 'self-check').length).toBeGreaterThanOrEqual(6);
    for (const { identity, part } of own) {
      if (part === 'self-check') continue;
      const name = identity.replace(/^.*\/|@.*$/g, '');
      const component = part === 'prediction' ? 'Prediction' : 'Question';
      expect(text).toContain(`<${component} id="${name}" />`);
    }
  });

  it('defers to the manual where it tells someone to drill', () => {
    expect(text).toMatch(/<Caution>[\s\S]*?manual[\s\S]*?<\/Caution>/);
  });

  it('keeps numbers inside their sentences: no component of a line begins a paragraph', () => {
    expect(text).not.toMatch(/[\w,]\n\n<(?:PlanNumber|Length|Term)\b/);
  });
});

test('the glossary has a sentence for every word, and every word is used', () => {
  const glossary = parse(textOf('content/glossary.yaml')) as Record<string, { says: string }>;
  for (const [id, { says }] of Object.entries(glossary)) {
    expect(says, id).toMatch(/\.$/);
    expect(
      lessons.some(({ text }) => text.includes(`<Term id="${id}">`)),
      id,
    ).toBe(true);
  }
});
