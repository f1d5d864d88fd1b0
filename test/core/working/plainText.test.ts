import { expect, test } from 'vitest';
import { inches, mm } from '../../../src/core/length/mm.ts';
import { plainText, spokenText } from '../../../src/core/working/plainText.ts';
import { say } from '../../../src/core/working/sentence.ts';

test('a sentence is written with signs and said with words', () => {
  const sentence = say`Of ${inches(1.5)}, ${mm(12.21)} in B.`;
  expect(plainText(sentence, 'in')).toBe('Of 1 1/2 in, ≈31/64 in in B.');
  expect(spokenText(sentence, 'in')).toBe('Of 1 1/2 inches, about 31/64 inch in B.');
  expect(spokenText(sentence, 'mm')).toBe('Of 38.1 millimeters, about 12.2 millimeters in B.');
});

test('what is no ordinary length is said as it is written', () => {
  const measure = [{ in: '3.9 thousandths', mm: '100 µm' }] as const;
  expect(spokenText(measure, 'in')).toBe('3.9 thousandths');
  expect(spokenText(measure, 'mm')).toBe('100 µm');
});
