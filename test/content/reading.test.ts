/**
 * Lessons read alike: about as long as each other, in short words and sentences. The grade is
 * Flesch and Kincaid's, 0.39 × words a sentence + 11.8 × syllables a word − 15.59 (Kincaid,
 * Fishburne, Rogers, Chissom, 1975, Research Branch Report 8-75 of the United States Navy).
 */
import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { filesIn, textOf } from '../practice/contentFiles.ts';

/** The most that a lesson may ask of its reader; between the two lengths lies a lesson's prose. */
const HARDEST = 4;
const SHORTEST = 850;
const LONGEST = 1450;

interface Reading {
  readonly lesson: string;
  readonly words: number;
  readonly grade: number;
}

/** The text that is read one after the other: no heads, drawings, tables or links' addresses. */
function sentencesOf(mdx: string): readonly string[] {
  return mdx
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(/<(?:PlanNumber|Length)\b[^>]*\/>/g, 'one inch')
    .replace(/<Term\b[^>]*>|<\/Term>/g, '')
    .replace(/<[^>]*>/g, '\n\n')
    .replace(/^\s*(?:#|\|).*$/gm, '\n')
    .replace(/^\s*(?:[-*]|\d+\.)\s+/gm, '\n\n')
    .replace(/\]\([^)]*\)/g, ']')
    .split(/\n\s*\n|(?<=[.?!][”’'")*]*)\s+/)
    .map((sentence) => sentence.replace(/[^\p{L}\p{N}’' -]/gu, ' ').trim())
    .filter((sentence) => sentence.split(/\s+/).length > 1);
}

function readingOf(lesson: string, mdx: string): Reading {
  const sentences = sentencesOf(mdx);
  const words = sentences.flatMap((sentence) => sentence.split(/\s+/));
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return {
    lesson,
    words: words.length,
    grade: 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59,
  };
}

const readings = filesIn('content/lessons', '.mdx').map((file) =>
  readingOf(file.replace(/^.*\/|\.mdx$/g, ''), textOf(file)),
);

test.each(readings)('$lesson is as long and as easy as the others', ({ lesson, words, grade }) => {
  process.stdout.write(`\n  ${lesson.padEnd(44)} ${words} words, grade ${grade.toFixed(1)}\n`);
  expect(grade).toBeLessThan(HARDEST);
  expect(words).toBeGreaterThan(SHORTEST);
  expect(words).toBeLessThan(LONGEST);
});

test('the grade of a known text is what its authors’ formula gives', () => {
  // 6 words in one sentence, 6 syllables: 0.39 × 6 + 11.8 × 1 − 15.59.
  expect(readingOf('', 'The cat sat on the mat.').grade).toBeCloseTo(-1.45, 9);
  const hard = readingOf('', 'Instrumentation necessitates configuration. It is hard.');
  expect(hard.words).toBe(6);
  expect(hard.grade).toBeGreaterThan(15);
});
