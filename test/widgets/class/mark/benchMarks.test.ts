import { describe, expect, it } from 'vitest';
import {
  judged,
  readBenchMarks,
  writeBenchMarks,
} from '../../../../src/widgets/class/mark/benchMarks.ts';

describe('assessments at the bench', () => {
  it('are changed and taken back without a trace, whatever way the name is spelled', () => {
    const none = readBenchMarks(undefined);
    const one = judged(judged(none, 'Bench 7', 'gap', 2), 'BENCH  7', 'step', 0);
    expect([...one]).toEqual([['bench 7', { gap: 2, step: 0 }]]);
    expect([...judged(one, 'bench 7', 'gap', undefined)]).toEqual([['bench 7', { step: 0 }]]);
    expect([...none]).toEqual([]);
  });

  it('come back from what was kept', () => {
    const all = judged(readBenchMarks(null), 'Bench 7', 'gap', 3);
    expect(readBenchMarks(JSON.parse(JSON.stringify(writeBenchMarks(all))))).toEqual(all);
  });

  it.each([
    [null],
    ['text'],
    [[1, 2]],
    [{ 'bench 7': null }],
    [{ 'bench 7': { gap: 4, step: -1, wood: '3', other: 2 } }],
  ])('take nothing odd from what was kept: %j', (kept) => {
    for (const marks of readBenchMarks(kept).values()) expect(marks).toEqual({});
  });
});
