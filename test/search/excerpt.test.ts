import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { excerpt } from '../../src/widgets/search/excerpt.ts';

const words = (text: string, terms: readonly string[]) =>
  excerpt(text, terms)
    .filter(({ hit }) => hit)
    .map(({ text }) => text);

describe('excerpt', () => {
  it('marks whole words, whatever their case', () => {
    expect(words('Collar, collars and COLLAR.', ['collar'])).toEqual(['Collar', 'COLLAR']);
  });

  it('starts near the first hit, between words, and says that there is more', () => {
    const text = `${'before '.repeat(60)}bushing${' after'.repeat(60)}`;
    const cut = excerpt(text, ['bushing'])
      .map(({ text }) => text)
      .join('');
    expect(cut).toMatch(/^… before .*bushing.* after …$/);
    expect(cut.length).toBeLessThan(240);
  });

  it('takes any text and any words, and adds nothing but ellipses', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 400 }),
        fc.array(fc.string({ minLength: 1 })),
        (text, terms) => {
          const shown = excerpt(text, terms)
            .map((piece) => piece.text)
            .join('');
          expect(text).toContain(shown.replace(/^… /, '').replace(/ …$/, ''));
        },
      ),
    );
  });
});
