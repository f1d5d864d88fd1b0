import type { Readings } from '../tools/readings.ts';
import type { BenchSetup } from './drill.ts';
import { type Hypothesis, signsOfSetup } from './hypothesis.ts';
import { pinHypotheses } from './pinHypotheses.ts';
import { leanHypotheses, placeHypotheses } from './placeHypotheses.ts';
import type { Signs } from './signs.ts';
import { stopHypotheses } from './stopHypotheses.ts';
import { woodHypotheses } from './woodHypotheses.ts';

/**
 * Everything that may have gone wrong with a setup, each drilled and tried; where a mistake has a
 * size, it is taken from the signs seen.
 *
 * @param setup what the reader meant to drill, with guide and bit as measured
 * @param pins readings of the pins, where they were measured
 */
export function hypothesesFor(
  setup: BenchSetup,
  seen: Signs,
  pins?: Readings,
): readonly Hypothesis[] {
  const expected = signsOfSetup(setup);
  return [
    ...stopHypotheses(setup, seen, expected),
    ...placeHypotheses(setup, seen, expected),
    ...leanHypotheses(setup, seen, expected),
    ...pinHypotheses(setup, seen, expected, pins),
    ...woodHypotheses(seen, expected),
  ];
}
