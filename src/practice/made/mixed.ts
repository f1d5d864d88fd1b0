import { Draws } from './draws.ts';

/**
 * Steps in a mixed order that is not their own, but for those that already stand.
 * @param key the same key mixes the same steps alike
 * @param placed how many of the first steps stand
 */
export function mixed<Step>(key: string, steps: readonly Step[], placed: number): readonly Step[] {
  const rest = steps.slice(placed);
  const shuffled = new Draws(`${key}:order`).shuffled(rest);
  const asIs = shuffled.every((step, i) => step === rest[i]);
  const loose = asIs ? [...rest.slice(1), ...rest.slice(0, 1)] : shuffled;
  return [...steps.slice(0, placed), ...loose];
}
