const LAYERS = 128;
/** Where the lowest layer's tail begins, and the area that every layer has. */
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;

/** Width of each layer, from the lowest (which stands for the tail as well) to the top, 0. */
const width = new Float64Array(LAYERS + 1);
/** The same for one of 2³¹ places. */
const step = new Float64Array(LAYERS);
/** How many of the places from the middle of each layer lie wholly under the curve. */
const sure = new Int32Array(LAYERS);

width[0] = AREA / Math.exp(-0.5 * TAIL * TAIL);
width[1] = TAIL;
for (let i = 2; i < LAYERS; i++) {
  const below = width[i - 1] as number;
  width[i] = Math.sqrt(-2 * Math.log(AREA / below + Math.exp(-0.5 * below * below)));
}
for (let i = 0; i < LAYERS; i++) {
  step[i] = (width[i] as number) * 2 ** -31;
  sure[i] = Math.ceil(((width[i + 1] as number) / (width[i] as number)) * 2 ** 31);
}

/**
 * A stream of normal deviates, mean 0 and standard deviation 1. Streams of one seed and different
 * numbers have nothing to do with each other.
 *
 * By the ziggurat: the bell is covered with layers of one area; a point in a layer nearly always
 * lies under the curve, and only then is no logarithm needed. The layer is picked by other bits
 * than the place in it.
 *
 * Source: Marsaglia and Tsang 2000, as mended by Doornik 2005 (from memory; the tests hold it
 * against the normal distribution of another library). Bits by sfc32, from the public-domain
 * PractRand: an average period of 2¹²⁷, and never under 2³² (read in its documentation).
 */
export class NormalStream {
  // Numbers from the start, or engines keep them in boxes.
  #a = 0;
  #b = 0;
  #c = 0;
  #count = 1;

  /** Both are cut to whole numbers of 32 bits. */
  constructor(seed: number, number: number) {
    this.#b = seed | 0;
    this.#c = number | 0;
    for (let round = 0; round < 12; round++) this.#bits();
  }

  /** Fills a list with the next deviates. */
  fill(into: Float64Array): void {
    // The steps of #bits on locals, for this is what closingOdds waits for.
    let a = this.#a;
    let b = this.#b;
    let c = this.#c;
    let count = this.#count;
    for (let i = 0; i < into.length; i++) {
      const bits = (a + b + count) | 0;
      count = (count + 1) | 0;
      a = b ^ (b >>> 9);
      b = (c + (c << 3)) | 0;
      c = (((c << 21) | (c >>> 11)) + bits) | 0;
      const layer = bits >>> 25;
      const place = bits << 7;
      if (Math.abs(place) < (sure[layer] as number)) {
        into[i] = place * (step[layer] as number);
        continue;
      }
      this.#a = a;
      this.#b = b;
      this.#c = c;
      this.#count = count;
      into[i] = this.#from(bits);
      a = this.#a;
      b = this.#b;
      c = this.#c;
      count = this.#count;
    }
    this.#a = a;
    this.#b = b;
    this.#c = c;
    this.#count = count;
  }

  #bits(): number {
    const bits = (this.#a + this.#b + this.#count) | 0;
    this.#count = (this.#count + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + bits) | 0;
    return bits;
  }

  /** A number over 0 and up to 1. */
  #share(): number {
    return ((this.#bits() >>> 0) + 1) * 2 ** -32;
  }

  /** The deviate that begins with these bits. */
  #from(bits: number): number {
    for (;;) {
      const layer = bits >>> 25;
      // The other 25 bits, with a sign.
      const place = bits << 7;
      const x = place * (step[layer] as number);
      if (Math.abs(place) < (sure[layer] as number)) return x;
      if (layer === 0) return place < 0 ? -this.#tail() : this.#tail();
      const bottom = Math.exp(-0.5 * ((width[layer] as number) ** 2 - x * x));
      const top = Math.exp(-0.5 * ((width[layer + 1] as number) ** 2 - x * x));
      if (top + this.#share() * (bottom - top) < 1) return x;
      bits = this.#bits();
    }
  }

  #tail(): number {
    for (;;) {
      const beyond = -Math.log(this.#share()) / TAIL;
      const height = -Math.log(this.#share());
      if (2 * height >= beyond * beyond) return TAIL + beyond;
    }
  }
}
