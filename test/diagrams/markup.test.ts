import { parse } from 'node-html-parser';
import { expect, test } from 'vitest';
import { labelMarkup, strokeMarkup } from '../../src/diagrams/drafting/markup.ts';

const hostile = '"><script>alert(1)</script>&<image href="x" onerror="y">';

test('whatever a label says stays text', () => {
  const label = { x: 1, y: 2, anchor: 'start', kind: 'word' } as const;
  const drawn = parse(labelMarkup([{ ...label, text: { in: hostile, mm: hostile } }], ['in']));
  expect(drawn.querySelectorAll('*').map(({ tagName }) => tagName)).toEqual(['TEXT']);
  expect(drawn.querySelector('text')!.textContent).toBe(hostile);
});

test('a label in both units is written once where they agree, else once for each shown', () => {
  const label = { x: 1, y: 2, anchor: 'start', kind: 'word' } as const;
  const texts = (text: { in: string; mm: string }, shown: readonly ('in' | 'mm')[]) =>
    parse(labelMarkup([{ ...label, text }], shown))
      .querySelectorAll('text')
      .map((each) => [each.classList.contains('in'), each.textContent]);
  expect(texts({ in: 'A', mm: 'A' }, ['in', 'mm'])).toEqual([[false, 'A']]);
  expect(texts({ in: '1/2', mm: '12.7' }, ['in', 'mm'])).toEqual([
    [true, '1/2'],
    [false, '12.7'],
  ]);
  expect(texts({ in: '1/2', mm: '12.7' }, ['mm'])).toEqual([[false, '12.7']]);
});

test('a stroke is drawn with its pen, and over it its hatching', () => {
  const drawn = parse(
    strokeMarkup([{ pen: 'outline', d: hostile, caution: true, hatch: 'a' }], 'c1'),
  ).querySelectorAll('*');
  expect(drawn.map(({ tagName }) => tagName)).toEqual(['PATH', 'PATH']);
  expect(drawn[0]!.getAttribute('class')).toBe('outline warn');
  expect(drawn[1]!.getAttribute('fill')).toBe('url(#c1-a)');
});
