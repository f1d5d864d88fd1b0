import { expect, it } from 'vitest';
import { canAsk } from '../../../src/class/assignment/canAsk.ts';
import { mm } from '../../../src/core/length/mm.ts';

it('asks everything of any shop’s boards, and only what makes sense of one thickness', () => {
  expect(canAsk('height-of-the-shelf', 'in', {})).toBe(true);
  expect(canAsk('height-of-the-shelf', 'in', { thicknesses: [mm(19.05)] })).toBe(false);
  expect(canAsk('stop-for-a-board', 'in', { thicknesses: [mm(19.05)] })).toBe(true);
});

it('asks nothing about a joint that the class leaves out', () => {
  expect(canAsk('setback-of-the-apron', 'mm', { joints: ['edge'] })).toBe(false);
  expect(canAsk('read-the-rule', 'mm', { joints: ['edge'] })).toBe(true);
});

it('knows its templates', () => {
  expect(() => canAsk('no-such-thing', 'in', {})).toThrow(RangeError);
});
