import { packEnclose } from 'd3-hierarchy';
import { randomLcg, randomNormal } from 'd3-random';

/**
 * The plain way to the odds of equal plays without turning, as the measure to beat: an error on
 * each axis for each of a pin's two holes, and d3-hierarchy's smallest circle about what is
 * between them.
 */
export function plainOdds(
  pins: number,
  radialPlay: number,
  sigma: number,
  trials: number,
  seed: number,
): number {
  const error = randomNormal.source(randomLcg(seed))(0, sigma);
  let fits = 0;
  for (let trial = 0; trial < trials; trial++) {
    const offsets = Array.from({ length: pins }, () => ({
      x: error() - error(),
      y: error() - error(),
      r: 0,
    }));
    if (packEnclose(offsets).r <= radialPlay) fits++;
  }
  return fits / trials;
}
