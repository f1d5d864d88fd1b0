import { ShiftFinder } from './shift.ts';

/** How two boards settle when their pins are pushed home. */
export interface Settled {
  /** Shift of board A along and across the joint from where it was meant to be, mm. */
  readonly along: number;
  readonly across: number;
  /** Turn of board A in the plane of the joint, radians; across grows by `turn` times the distance along. */
  readonly turn: number;
  /** How far the worst pin stays outside its play, mm; 0 or less where every pin goes in. */
  readonly miss: number;
}

/** Slopes flatter than this, in mm per radian and mm of row, are taken for the bottom. */
const FLAT = 1e-10;
/** A turn known to this many mm at the end of the row is known well enough. */
const NARROW = 1e-10;
const MOST_STEPS = 200;

/**
 * Finds the shift and the turn (t, θ) that serve the worst pin of a row best: the least greatest
 * of |e_j − t − θ (0, x_j)| − r_j, with e_j how far B's hole lies from A's, r_j the pin's play in
 * both holes together and x_j its place along the row. Of equal answers, the one with the least
 * turn.
 *
 * At a given turn the best shift is a smallest circle (`ShiftFinder`). Its miss is a convex
 * function of the turn, whose slope is known from the pins that hold it; so the turn is
 * bracketed and closed in on, by the secant of the slopes where the bottom is round and by
 * where the tangents meet where it is a corner.
 *
 * One object serves many rows of the same positions and plays: `closingOdds` asks 10,000 times.
 * Positions, offsets and plays are in mm, the plays 0 or more.
 */
export class PlayCircles {
  readonly #count: number;
  /** Positions from the row's middle, so that a turn does not drag the row along. */
  readonly #x: Float64Array;
  readonly #middle: number;
  readonly #reach: number;
  readonly #play: Float64Array;
  readonly #mayTurn: boolean;
  /** The tightest pin. */
  readonly #tightest: number;
  readonly #spread: number;
  readonly #px: Float64Array;
  readonly #py: Float64Array;
  readonly #finder: ShiftFinder;

  constructor(positions: readonly number[], play: readonly number[], mayTurn: boolean) {
    const count = positions.length;
    const low = Math.min(...positions);
    const high = Math.max(...positions);
    this.#count = count;
    this.#middle = (low + high) / 2;
    this.#reach = (high - low) / 2;
    this.#x = Float64Array.from(positions, (x) => x - this.#middle);
    this.#play = Float64Array.from(play);
    this.#mayTurn = mayTurn && this.#reach > 0;
    this.#tightest = play.reduce((least, r, j) => (r < (play[least] as number) ? j : least), 0);
    this.#spread = this.#x.reduce((total, x) => total + x * x, 0);
    this.#px = new Float64Array(count);
    this.#py = new Float64Array(count);
    this.#finder = new ShiftFinder(this.#px, this.#py, this.#play);
  }

  /**
   * Settles one row. Past `limit` the exact answer does not matter: the search may stop as soon
   * as the miss is sure to exceed it, and then returns a lower bound of the miss.
   */
  settle(along: ArrayLike<number>, across: ArrayLike<number>, limit = Infinity): Settled {
    const finder = this.#finder;
    for (let j = 0; j < this.#count; j++) this.#px[j] = along[j] as number;
    finder.reset();
    if (!this.#mayTurn) {
      for (let j = 0; j < this.#count; j++) this.#py[j] = across[j] as number;
      finder.find(limit);
      return { along: finder.x, across: finder.y, turn: 0, miss: finder.miss };
    }
    return this.#aroundTightest(along, across) ?? this.#searchTurn(across, limit);
  }

  /**
   * Where every other pin leaves the tightest one alone in the middle of its play, a whole range
   * of turns is as good; the least of them, or undefined where there is no such turn.
   */
  #aroundTightest(along: ArrayLike<number>, across: ArrayLike<number>): Settled | undefined {
    const k = this.#tightest;
    let from = -Infinity;
    let to = Infinity;
    for (let j = 0; j < this.#count; j++) {
      if (j === k) continue;
      const spare = (this.#play[j] as number) - (this.#play[k] as number);
      const off = (along[j] as number) - (along[k] as number);
      if (Math.abs(off) > spare) return undefined;
      const half = Math.sqrt(spare * spare - off * off);
      const rise = (across[j] as number) - (across[k] as number);
      const run = (this.#x[j] as number) - (this.#x[k] as number);
      if (run === 0) {
        if (Math.abs(rise) > half) return undefined;
        continue;
      }
      const one = (rise - half) / run;
      const other = (rise + half) / run;
      from = Math.max(from, Math.min(one, other));
      to = Math.min(to, Math.max(one, other));
    }
    if (from > to) return undefined;
    const turn = Math.min(Math.max(0, from), to);
    return {
      along: along[k] as number,
      across: (across[k] as number) - turn * ((this.#x[k] as number) + this.#middle),
      turn,
      miss: -(this.#play[k] as number),
    };
  }

  #searchTurn(across: ArrayLike<number>, limit: number): Settled {
    const finder = this.#finder;
    const flat = FLAT * this.#reach;
    const narrow = NARROW / this.#reach;

    // Turning toward the slopes between pins brings every two pins nearer each other, so the
    // best turn lies between the least and the greatest of those slopes.
    let low = Infinity;
    let high = -Infinity;
    let leaning = 0;
    for (let j = 0; j < this.#count; j++) {
      leaning += (across[j] as number) * (this.#x[j] as number);
      for (let k = 0; k < j; k++) {
        const run = (this.#x[j] as number) - (this.#x[k] as number);
        if (run === 0) continue;
        const slope = ((across[j] as number) - (across[k] as number)) / run;
        if (slope < low) low = slope;
        if (slope > high) high = slope;
      }
    }

    // The best so far on either side of the bottom, once looked at.
    let lowMiss = NaN;
    let lowSlope = NaN;
    let highMiss = NaN;
    let highSlope = NaN;
    let turn = Math.min(Math.max(leaning / this.#spread, low), high);
    let stride = 0.1 * (high - low) || 0;
    let bestTurn = turn;
    let bestX = 0;
    let bestY = 0;
    let bestMiss = Infinity;
    for (let step = 0; step < MOST_STEPS; step++) {
      for (let j = 0; j < this.#count; j++) {
        this.#py[j] = (across[j] as number) - turn * (this.#x[j] as number);
      }
      finder.find(Infinity);
      const miss = finder.miss;
      if (miss < bestMiss) {
        bestMiss = miss;
        bestTurn = turn;
        bestX = finder.x;
        bestY = finder.y;
      }
      const slope = this.#slope();
      if (Math.abs(slope) <= flat) break;
      if (slope < 0) {
        low = turn;
        lowMiss = miss;
        lowSlope = slope;
      } else {
        high = turn;
        highMiss = miss;
        highSlope = slope;
      }
      if (high - low <= narrow) break;

      const bracketed = lowSlope < 0 && highSlope > 0;
      let next = NaN;
      let floor = -Infinity;
      if (bracketed) {
        // Where the tangents meet: no turn can do better than the miss there.
        const meet =
          (highMiss - lowMiss + lowSlope * low - highSlope * high) / (lowSlope - highSlope);
        floor = lowMiss + lowSlope * (meet - low);
        next = step % 2 === 0 ? meet : (low * highSlope - high * lowSlope) / (highSlope - lowSlope);
      } else if (slope < 0) {
        floor = lowMiss + lowSlope * (high - low);
        next = turn + stride;
        stride *= 4;
      } else {
        floor = highMiss + highSlope * (low - high);
        next = turn - stride;
        stride *= 4;
      }
      if (floor > limit) return { along: 0, across: 0, turn: 0, miss: floor };
      if (finder.held === 2) next = this.#levelTurn(across);
      if (!(next > low && next < high)) {
        next = bracketed ? (low + high) / 2 : slope < 0 ? high : low;
        if (next === turn) break;
      }
      turn = next;
    }
    return {
      along: bestX,
      across: bestY - bestTurn * this.#middle,
      turn: bestTurn,
      miss: bestMiss,
    };
  }

  /** The turn that puts the two holders level. */
  #levelTurn(across: ArrayLike<number>): number {
    const i = this.#finder.holders[0] as number;
    const j = this.#finder.holders[1] as number;
    return (
      ((across[j] as number) - (across[i] as number)) /
      ((this.#x[j] as number) - (this.#x[i] as number))
    );
  }

  /** How the miss grows with the turn, mm per radian: the holders' pulls, weighed so that they balance. */
  #slope(): number {
    const { held, holders } = this.#finder;
    if (held === 1) return 0;
    const i = holders[0] as number;
    const j = holders[1] as number;
    const xi = this.#x[i] as number;
    const xj = this.#x[j] as number;
    const iy = this.#pullAcross(i);
    if (held === 2) return (-iy * (xi - xj)) / 2;
    const k = holders[2] as number;
    const xk = this.#x[k] as number;
    const ix = this.#pullAlong(i);
    const jx = this.#pullAlong(j);
    const jy = this.#pullAcross(j);
    const kx = this.#pullAlong(k);
    const ky = this.#pullAcross(k);
    const wi = jx * ky - jy * kx;
    const wj = kx * iy - ky * ix;
    const wk = ix * jy - iy * jx;
    return -(wi * iy * xi + wj * jy * xj + wk * ky * xk) / (wi + wj + wk);
  }

  #pullAlong(j: number): number {
    const { x, miss } = this.#finder;
    return ((this.#px[j] as number) - x) / (miss + (this.#play[j] as number));
  }

  #pullAcross(j: number): number {
    const { y, miss } = this.#finder;
    return ((this.#py[j] as number) - y) / (miss + (this.#play[j] as number));
  }
}
