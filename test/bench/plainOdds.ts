import { packEnclose } from 'd3-hierarchy';
import { randomLcg, randomNormal } from 'd3-random';

/**
 * The plain way to the odds of equal plays without turning, as the measure to beat: a normal
 * deviate for each axis of each pin, and d3-hierarchy's smallest circle about them all.
 */
export function plainOdds(
  pins: number,
  radialPlay: number,
  sigma: number,
  trials: number,
  seed: number,
): number {
  const draw = randomNormal.source(randomLcg(seed))(0, Math.SQRT2 * sigma);
  let fits = 0;
  for (let trial = 0; trial < trials; trial++) {
    const points = Array.from({ length: pins }, () => ({ x: draw(), y: draw(), r: 0 }));
    if (packEnclose(points).r <= radialPlay) fits++;
  }
  return fits / trials;
}
