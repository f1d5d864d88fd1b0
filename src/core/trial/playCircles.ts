import { TOLERANCE } from '../length/mm.ts';
import { ShiftFinder } from './shift.ts';

/** A slope flatter than this, for each mm of the row, is taken for the bottom. */
const FLAT = 1e-8;
/** A turn known to this many mm at the end of the row is known well enough. */
const NARROW = 1e-9;
/** A miss within this of the least that is possible is the least, mm. */
const CLOSE = 1e-14;
const MOST_STEPS = 200;

/**
 * Finds the shift and the turn (t, θ) that serve the worst pin of a row best: the least greatest
 * of |e_j − t − θ (0, x_j)| − r_j, with e_j how far B's hole lies from A's, r_j the pin's play in
 * both holes together and x_j its place along the row. Of equal answers, the one with the least
 * turn.
 *
 * At a given turn the best shift is a smallest circle (`ShiftFinder`). Its miss is a convex
 * function of the turn, whose slope and curvature are known from the pins that hold it. So the
 * turn is bracketed and closed in on: by Newton's step where the bottom is round, and by where
 * the tangents of both sides meet where it is a corner.
 *
 * One object serves many rows of the same positions and plays: `closingOdds` asks 10,000 times.
 * Positions, offsets and plays are in mm, the plays 0 or more.
 */
export class PlayCircles {
  /** Shift of board A along and across the joint from where it was meant to be, mm. */
  along = 0;
  across = 0;
  /** Turn of board A in the plane of the joint, radians; across grows by it for each mm along. */
  turn = 0;
  /** How far the worst pin stays outside its play, mm; 0 or less where every pin goes in. */
  miss = 0;

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
  /** How the miss changes with the turn, mm per radian, and how that changes. */
  #slope = 0;
  #curvature = 0;

  constructor(positions: readonly number[], play: readonly number[], mayTurn: boolean) {
    const count = positions.length;
    const low = Math.min(...positions);
    const high = Math.max(...positions);
    this.#count = count;
    this.#middle = (low + high) / 2;
    this.#reach = (high - low) / 2;
    this.#x = Float64Array.from(positions, (x) => x - this.#middle);
    this.#play = Float64Array.from(play);
    this.#mayTurn = mayTurn && this.#reach > TOLERANCE;
    this.#tightest = play.reduce((least, r, j) => (r < (play[least] as number) ? j : least), 0);
    this.#spread = this.#x.reduce((total, x) => total + x * x, 0);
    this.#px = new Float64Array(count);
    this.#py = new Float64Array(count);
    this.#finder = new ShiftFinder(this.#px, this.#py, this.#play);
  }

  /**
   * Settles one row: the answer stands in `along`, `across`, `turn` and `miss`. Past `limit` the
   * exact answer does not matter: the search may stop as soon as the miss is sure to exceed it,
   * and `miss` is then only a lower bound.
   */
  settle(along: ArrayLike<number>, across: ArrayLike<number>, limit = Infinity): void {
    const finder = this.#finder;
    for (let j = 0; j < this.#count; j++) this.#px[j] = along[j] as number;
    finder.reset();
    if (!this.#mayTurn) {
      for (let j = 0; j < this.#count; j++) this.#py[j] = across[j] as number;
      finder.find(limit);
      this.#keep(finder.x, finder.y, 0, finder.miss);
      return;
    }
    // Turning does nothing for errors along the row.
    const least = this.#missAlong(along);
    if (least > limit) this.miss = least;
    else if (!this.#aroundTightest(along, across)) this.#searchTurn(across, limit);
  }

  /** How far the worst pin stays outside its play, were there no errors but those along the row. */
  #missAlong(along: ArrayLike<number>): number {
    let low = -Infinity;
    let high = Infinity;
    for (let j = 0; j < this.#count; j++) {
      const off = along[j] as number;
      const play = this.#play[j] as number;
      if (off - play > low) low = off - play;
      if (off + play < high) high = off + play;
    }
    return (low - high) / 2;
  }

  /**
   * Where every other pin leaves the tightest one alone in the middle of its play, a whole range
   * of turns is as good: takes the least of them. False where there is no such turn.
   */
  #aroundTightest(along: ArrayLike<number>, across: ArrayLike<number>): boolean {
    const k = this.#tightest;
    let from = -Infinity;
    let to = Infinity;
    for (let j = 0; j < this.#count; j++) {
      if (j === k) continue;
      const spare = (this.#play[j] as number) - (this.#play[k] as number);
      const off = (along[j] as number) - (along[k] as number);
      if (Math.abs(off) > spare) return false;
      const half = Math.sqrt(spare * spare - off * off);
      const rise = (across[j] as number) - (across[k] as number);
      const run = (this.#x[j] as number) - (this.#x[k] as number);
      if (Math.abs(run) <= TOLERANCE) {
        if (Math.abs(rise) > half) return false;
        continue;
      }
      const one = (rise - half) / run;
      const other = (rise + half) / run;
      from = Math.max(from, Math.min(one, other));
      to = Math.min(to, Math.max(one, other));
    }
    if (from > to) return false;
    const turn = Math.min(Math.max(0, from), to);
    const atTightest = (across[k] as number) - turn * (this.#x[k] as number);
    this.#keep(along[k] as number, atTightest, turn, -(this.#play[k] as number));
    return true;
  }

  #searchTurn(across: ArrayLike<number>, limit: number): void {
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
        // A turn does nothing for two pins at one place.
        if (Math.abs(run) <= TOLERANCE) continue;
        const slope = ((across[j] as number) - (across[k] as number)) / run;
        if (slope < low) low = slope;
        if (slope > high) high = slope;
      }
    }

    // What is known on either side of the bottom, once looked at.
    let lowMiss = NaN;
    let lowSlope = NaN;
    let highMiss = NaN;
    let highSlope = NaN;
    let turn = Math.min(Math.max(leaning / this.#spread, low), high);
    let steepness = Infinity;
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
      this.#weigh();
      const slope = this.#slope;
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

      // No turn can do better than the tangents allow.
      const bracketed = lowSlope < 0 && highSlope > 0;
      let meet = slope < 0 ? high : low;
      if (bracketed) {
        meet = (highMiss - lowMiss + lowSlope * low - highSlope * high) / (lowSlope - highSlope);
      }
      const floor = miss + slope * (meet - turn);
      if (floor > limit) {
        this.miss = floor;
        return;
      }
      if (bestMiss - floor <= CLOSE) break;

      // Newton's step, while the slope shrinks well; every eighth step halves the bracket, in case
      // the others only nibble at it.
      let next = meet;
      if (finder.held === 2) next = this.#levelTurn(across);
      else if (Math.abs(slope) < 0.5 * steepness) next = turn - slope / this.#curvature;
      steepness = Math.abs(slope);
      if (!(next > low && next < high)) next = meet;
      if (step % 8 === 7 || !(next > low && next < high)) next = (low + high) / 2;
      turn = next;
    }
    this.#keep(bestX, bestY, bestTurn, bestMiss);
  }

  /** Keeps an answer; `across` is given at the middle of the row. */
  #keep(along: number, across: number, turn: number, miss: number): void {
    this.along = along;
    this.across = across - turn * this.#middle;
    this.turn = turn;
    this.miss = miss;
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

  /**
   * Reckons how the miss changes with the turn at the shift found. Each holder pulls the shift
   * straight at its point; weighed by what they must for the pulls to balance, their parts across,
   * times their places along the row, are the slope. Where three holders turn about the shift as
   * it moves, they swing past it sideways: that makes the curvature. Two are dealt with by
   * `#levelTurn`; one alone keeps the shift in the middle of its circle whatever the turn.
   */
  #weigh(): void {
    const { held, holders, x, y, miss } = this.#finder;
    this.#slope = 0;
    this.#curvature = 0;
    if (held === 1) return;
    const i = holders[0] as number;
    const j = holders[1] as number;
    const xi = this.#x[i] as number;
    const xj = this.#x[j] as number;
    const reachI = miss + (this.#play[i] as number);
    const iy = ((this.#py[i] as number) - y) / reachI;
    if (held === 2) {
      this.#slope = (-iy * (xi - xj)) / 2;
      return;
    }
    const k = holders[2] as number;
    const xk = this.#x[k] as number;
    const reachJ = miss + (this.#play[j] as number);
    const reachK = miss + (this.#play[k] as number);
    const ix = ((this.#px[i] as number) - x) / reachI;
    const jx = ((this.#px[j] as number) - x) / reachJ;
    const jy = ((this.#py[j] as number) - y) / reachJ;
    const kx = ((this.#px[k] as number) - x) / reachK;
    const ky = ((this.#py[k] as number) - y) / reachK;
    const wi = jx * ky - jy * kx;
    const wj = kx * iy - ky * ix;
    const wk = ix * jy - iy * jx;
    const all = wi + wj + wk;
    const slope = -(wi * iy * xi + wj * jy * xj + wk * ky * xk) / all;
    this.#slope = slope;

    // How the shift moves with the turn: u·τ = −slope − u_y x for each holder's pull u.
    const bi = -slope - iy * xi;
    const bj = -slope - jy * xj;
    const bk = -slope - ky * xk;
    const xx = ix * ix + jx * jx + kx * kx;
    const xy = ix * iy + jx * jy + kx * ky;
    const yy = iy * iy + jy * jy + ky * ky;
    const bx = ix * bi + jx * bj + kx * bk;
    const by = iy * bi + jy * bj + ky * bk;
    const square = xx * yy - xy * xy;
    const tx = (yy * bx - xy * by) / square;
    const ty = (xx * by - xy * bx) / square;
    const si = ix * (ty + xi) - iy * tx;
    const sj = jx * (ty + xj) - jy * tx;
    const sk = kx * (ty + xk) - ky * tx;
    this.#curvature =
      ((wi * si * si) / reachI + (wj * sj * sj) / reachJ + (wk * sk * sk) / reachK) / all;
  }
}
