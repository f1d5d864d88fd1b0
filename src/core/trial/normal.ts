import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

const LAYERS = 128;
/** Where the lowest layer's tail begins, and the area that every layer has. */
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;

/** Width of each layer, from the lowest (which stands for the tail as well) to the top, 0. */
const width = new Float64Array(LAYERS + 1);
/** The share of each layer that lies wholly under the curve. */
const sure = new Float64Array(LAYERS);

width[0] = AREA / Math.exp(-0.5 * TAIL * TAIL);
width[1] = TAIL;
for (let i = 2; i < LAYERS; i++) {
  const below = width[i - 1] as number;
  width[i] = Math.sqrt(-2 * Math.log(AREA / below + Math.exp(-0.5 * below * below)));
}
for (let i = 0; i < LAYERS; i++) sure[i] = (width[i + 1] as number) / (width[i] as number);

/** Makes a number over 0 and up to 1 of a whole number of 32 bits with its sign. */
function share(bits: number): number {
  return ((bits >>> 0) + 1) * 2 ** -32;
}

/**
 * Draws a normal deviate of mean 0 and standard deviation 1 by the ziggurat: the bell is covered
 * with layers of one area; a point in a layer nearly always lies under the curve, and only then
 * is no logarithm needed. The layer is picked by other bits than the place in it.
 *
 * Source: Marsaglia and Tsang 2000, as mended by Doornik 2005 (from memory; the tests hold it
 * against the normal distribution of another library).
 */
export function drawNormal(source: RandomGenerator): number {
  for (;;) {
    const bits = source.next();
    const layer = bits >>> 25;
    // The other 25 bits, with a sign: −1 to 1.
    const place = (bits << 7) * 2 ** -31;
    const x = place * (width[layer] as number);
    if (Math.abs(place) < (sure[layer] as number)) return x;
    if (layer === 0) return place < 0 ? -drawTail(source) : drawTail(source);
    const bottom = Math.exp(-0.5 * ((width[layer] as number) ** 2 - x * x));
    const top = Math.exp(-0.5 * ((width[layer + 1] as number) ** 2 - x * x));
    if (top + share(source.next()) * (bottom - top) < 1) return x;
  }
}

function drawTail(source: RandomGenerator): number {
  for (;;) {
    const beyond = -Math.log(share(source.next())) / TAIL;
    const height = -Math.log(share(source.next()));
    if (2 * height >= beyond * beyond) return TAIL + beyond;
  }
}
