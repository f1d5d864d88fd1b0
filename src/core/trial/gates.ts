/** A gap this small between the gates is none, mm. */
const NOISE = 1e-9;
const MOST_STEPS = 60;

/**
 * Whether some shift and turn put every pin in and leave both ends flush.
 *
 * Once the shift along the joint is settled, each pin leaves the board a gate: so much room
 * across, at its place along the row. The two ends are gates as well, as wide as the flush
 * tolerance allows. The joint can be made flush where a straight line, the board's face, goes
 * through every gate (a level one where the board can't turn). By how much the gates shut the
 * best line out is a convex function of the shift along; so is, for one shift, how far the
 * lowest top lies under the highest bottom, of the line's slope. Both are closed in on by where
 * tangents meet, and left as soon as the answer is sure.
 *
 * One object serves many rows of the same positions; lengths in mm.
 */
/** A shift along and across, mm, and a turn, radians. */
interface Settled {
  readonly along: number;
  readonly across: number;
  readonly turn: number;
}

export class Gates {
  readonly #pins: number;
  /** Where each gate stands along the row: the pins, then the two ends. */
  readonly #x: Float64Array;
  readonly #play: Float64Array;
  readonly #mayTurn: boolean;
  readonly #length: number;
  readonly #flush: number;
  readonly #top: Float64Array;
  readonly #bottom: Float64Array;
  /** How fast each gate narrows as the shift along grows: d(half width). */
  readonly #narrowing: Float64Array;
  /** What the last look at the gates gave. */
  #shut = 0;
  #slope = 0;

  /** Plays as wide as they may be taken, tolerance included. */
  constructor(
    positions: readonly number[],
    play: readonly number[],
    length: number,
    flush: number,
    mayTurn: boolean,
  ) {
    const pins = positions.length;
    this.#pins = pins;
    this.#x = Float64Array.from([...positions, 0, length]);
    this.#play = Float64Array.from(play);
    this.#mayTurn = mayTurn;
    this.#length = length;
    this.#flush = flush;
    this.#top = new Float64Array(pins + 2).fill(flush);
    this.#bottom = new Float64Array(pins + 2).fill(-flush);
    this.#narrowing = new Float64Array(pins + 2);
  }

  /** `settled` is a shift and a turn at which every pin goes in. */
  canBeFlush(along: ArrayLike<number>, across: ArrayLike<number>, settled: Settled): boolean {
    if (this.#justLeveled(along, across, settled)) return true;
    let low = -Infinity;
    let high = Infinity;
    for (let j = 0; j < this.#pins; j++) {
      low = Math.max(low, (along[j] as number) - (this.#play[j] as number));
      high = Math.min(high, (along[j] as number) + (this.#play[j] as number));
    }
    let lowShut = NaN;
    let lowSlope = NaN;
    let highShut = NaN;
    let highSlope = NaN;
    let shift = settled.along;
    for (let step = 0; step < MOST_STEPS; step++) {
      this.#look(along, across, shift);
      if (this.#shut <= NOISE) return true;
      const slope = this.#slope;
      if (slope === 0) return false;
      if (slope < 0) {
        low = shift;
        lowShut = this.#shut;
        lowSlope = slope;
      } else {
        high = shift;
        highShut = this.#shut;
        highSlope = slope;
      }
      // No shift this side of the tangent's root serves.
      let next = shift - this.#shut / slope;
      if (lowSlope < 0 && highSlope > 0) {
        const meet =
          (highShut - lowShut + lowSlope * low - highSlope * high) / (lowSlope - highSlope);
        if (lowShut + lowSlope * (meet - low) > NOISE) return false;
        next = meet;
      }
      if (!(next > low && next < high)) return false;
      shift = next;
    }
    return false;
  }

  /** Whether every pin still goes in where the ends are pushed from where they settled to just flush. */
  #justLeveled(along: ArrayLike<number>, across: ArrayLike<number>, settled: Settled): boolean {
    const flush = this.#flush;
    const start = Math.min(Math.max(settled.across, -flush), flush);
    const atEnd = settled.across + settled.turn * this.#length;
    const end = Math.min(Math.max(atEnd, -flush), flush);
    const turn = (end - start) / this.#length;
    for (let j = 0; j < this.#pins; j++) {
      const dx = (along[j] as number) - settled.along;
      const dy = (across[j] as number) - start - turn * (this.#x[j] as number);
      const play = this.#play[j] as number;
      if (dx * dx + dy * dy > play * play) return false;
    }
    return true;
  }

  /** Looks through the gates at one shift along: how far they shut the best line out, and its slope. */
  #look(along: ArrayLike<number>, across: ArrayLike<number>, shift: number): void {
    for (let j = 0; j < this.#pins; j++) {
      const off = (along[j] as number) - shift;
      const play = this.#play[j] as number;
      const half = Math.sqrt(Math.max(0, play * play - off * off));
      this.#top[j] = (across[j] as number) + half;
      this.#bottom[j] = (across[j] as number) - half;
      // A gate about to close changes ever faster; a bound keeps the arithmetic finite.
      this.#narrowing[j] = off / Math.max(half, 1e-9);
    }
    this.#level(0);
    if (!this.#mayTurn || this.#shut <= NOISE) return;
    this.#tilt();
  }

  #lowestTop = 0;
  #highestBottom = 0;

  /** The gates as a line of one slope meets them. */
  #level(turn: number): void {
    let top = Infinity;
    let bottom = -Infinity;
    for (let j = 0; j < this.#x.length; j++) {
      const rise = turn * (this.#x[j] as number);
      const t = (this.#top[j] as number) - rise;
      if (t < top) {
        top = t;
        this.#lowestTop = j;
      }
      const b = (this.#bottom[j] as number) - rise;
      if (b > bottom) {
        bottom = b;
        this.#highestBottom = j;
      }
    }
    this.#shut = bottom - top;
    this.#slope = this.#widening();
  }

  /** How fast the two gates that meet close on each other as the shift along grows. */
  #widening(): number {
    return -(
      (this.#narrowing[this.#lowestTop] as number) +
      (this.#narrowing[this.#highestBottom] as number)
    );
  }

  /** Tilts the line, from level, to where the gates shut it out least. */
  #tilt(): void {
    let lowTurn = NaN;
    let lowShut = NaN;
    let lowSlope = NaN;
    let lowWidening = NaN;
    let highTurn = NaN;
    let highShut = NaN;
    let highSlope = NaN;
    let highWidening = NaN;
    let turn = 0;
    for (let step = 0; step < MOST_STEPS; step++) {
      const slope = (this.#x[this.#lowestTop] as number) - (this.#x[this.#highestBottom] as number);
      if (slope === 0) return;
      if (slope < 0) {
        lowTurn = turn;
        lowShut = this.#shut;
        lowSlope = slope;
        lowWidening = this.#slope;
      } else {
        highTurn = turn;
        highShut = this.#shut;
        highSlope = slope;
        highWidening = this.#slope;
      }
      if (lowSlope < 0 && highSlope > 0) {
        const meet =
          (highShut - lowShut + lowSlope * lowTurn - highSlope * highTurn) / (lowSlope - highSlope);
        const floor = lowShut + lowSlope * (meet - lowTurn);
        this.#level(meet);
        if (this.#shut <= Math.max(NOISE, floor + NOISE)) {
          // Between two corners the bottom is flat along the turn: weigh the two sides so.
          const share = highSlope / (highSlope - lowSlope);
          this.#slope = share * lowWidening + (1 - share) * highWidening;
          return;
        }
        turn = meet;
      } else {
        turn -= this.#shut / slope;
        this.#level(turn);
        if (this.#shut <= NOISE) return;
      }
    }
  }
}
