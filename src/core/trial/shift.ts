/** Agreement asked of the arithmetic, mm: far below any length that matters. */
const NOISE = 1e-11;

/**
 * Finds where to shift a board so that the worst pin is as well off as it can be.
 *
 * Pin j asks for a shift inside its play circle, of radius r_j about the point p_j; a shift t
 * misses it by |p_j − t| − r_j (negative: it lies inside by that much). The shift wanted has the
 * least greatest miss. It is held in place by at most three pins, which touch their circles
 * swollen by the miss: a smallest enclosing circle with weights. The search goes from one such
 * set of pins to the next, always taking in the pin that is missed worst; the miss can only
 * grow, so it ends.
 *
 * Written for the loop of `closingOdds`: nothing is allocated while it searches, and the pins
 * that held the last answer are tried first.
 */
export class ShiftFinder {
  /** The shift found. */
  x = 0;
  y = 0;
  /** Its greatest miss; a lower bound of it where the search was cut short. */
  miss = 0;
  /** The pins that hold it, of which the first `held` count. */
  readonly holders = new Int32Array(3);
  held = 0;

  readonly #px: Float64Array;
  readonly #py: Float64Array;
  readonly #play: ArrayLike<number>;
  /** Where the candidate under trial lies. */
  #cx = 0;
  #cy = 0;
  #cmiss = 0;
  /** Pins out of which the next holders are picked. */
  readonly #pool = new Int32Array(4);

  /** The finder looks at the points where they are: change them in place, then call `find`. */
  constructor(px: Float64Array, py: Float64Array, play: ArrayLike<number>) {
    this.#px = px;
    this.#py = py;
    this.#play = play;
  }

  /** Forgets the last holders: for points that have nothing to do with the last ones. */
  reset(): void {
    this.held = 0;
  }

  /** Finds the best shift; stops once the miss is sure to exceed `limit`. */
  find(limit: number): void {
    if (this.held === 0) {
      this.#startFromWidest(limit);
    } else {
      for (let i = 0; i < this.held; i++) this.#pool[i] = this.holders[i] as number;
      this.#pick(this.held, -1);
    }
    const rounds = 20 + 4 * this.#px.length;
    for (let round = 0; round < rounds && this.miss <= limit; round++) {
      const worst = this.#worst();
      if (worst < 0) return;
      if (this.held === 2 && this.#takeThird(worst)) continue;
      // The pool is the holders and the newcomer, which is sure to be a holder now.
      this.#pool[0] = worst;
      for (let i = 0; i < this.held; i++) this.#pool[i + 1] = this.holders[i] as number;
      this.#pick(this.held + 1, worst);
    }
  }

  /**
   * Starts from two pins that lie far apart: the farthest from the first, and the farthest from
   * that one. Where the first two alone are past the limit, they will do.
   */
  #startFromWidest(limit: number): void {
    const i = this.#farthestFrom(0);
    if (this.#two(0, i) && this.#cmiss > limit) return this.#keep(2, 0, i, 0);
    const j = this.#farthestFrom(i);
    if (this.#two(i, j)) return this.#keep(2, i, j, 0);
    const tighter = (this.#play[i] as number) < (this.#play[j] as number) ? i : j;
    this.#one(tighter);
    this.#keep(1, tighter, 0, 0);
  }

  /** The pin whose point lies farthest from pin i's. */
  #farthestFrom(i: number): number {
    const px = this.#px;
    const py = this.#py;
    const x = px[i] as number;
    const y = py[i] as number;
    let farthest = i;
    let most = 0;
    for (let j = 0; j < px.length; j++) {
      const dx = (px[j] as number) - x;
      const dy = (py[j] as number) - y;
      const square = dx * dx + dy * dy;
      if (square <= most) continue;
      most = square;
      farthest = j;
    }
    return farthest;
  }

  /** The pin that the present shift misses worst, or −1 where none is worse than the holders. */
  #worst(): number {
    const px = this.#px;
    const py = this.#py;
    const play = this.#play;
    let worst = -1;
    let most = this.miss + NOISE;
    for (let j = 0; j < px.length; j++) {
      const dx = (px[j] as number) - this.x;
      const dy = (py[j] as number) - this.y;
      const reach = most + (play[j] as number);
      const square = dx * dx + dy * dy;
      if (reach >= 0 && square <= reach * reach) continue;
      most = Math.sqrt(square) - (play[j] as number);
      worst = j;
    }
    return worst;
  }

  /**
   * Takes in a pin that two holders miss. Nearly every search comes by here, so it goes without
   * the pool: the newcomer holds with the one, or the other, or both. False where it may hold alone.
   */
  #takeThird(k: number): boolean {
    const i = this.holders[0] as number;
    const j = this.holders[1] as number;
    const play = this.#play[k] as number;
    if (play < (this.#play[i] as number) && play < (this.#play[j] as number)) return false;
    if (this.#two(i, k) && this.#missOf(j) <= this.#cmiss + NOISE) this.#keep(2, i, k, 0);
    else if (this.#two(j, k) && this.#missOf(i) <= this.#cmiss + NOISE) this.#keep(2, j, k, 0);
    else if (this.#three(i, j, k)) this.#keep(3, i, j, k);
    else return false;
    return true;
  }

  /** Picks, out of the first `size` pins of the pool, those that hold the best shift for them all. */
  #pick(size: number, newcomer: number): void {
    const pool = this.#pool;
    const starts = newcomer < 0 ? size : 1;
    for (let a = 0; a < starts; a++) {
      const i = pool[a] as number;
      this.#one(i);
      if (this.#serves(size, i, i, i)) return this.#keep(1, i, 0, 0);
    }
    for (let a = 0; a < starts; a++) {
      for (let b = a + 1; b < size; b++) {
        const i = pool[a] as number;
        const j = pool[b] as number;
        if (this.#two(i, j) && this.#serves(size, i, j, j)) return this.#keep(2, i, j, 0);
      }
    }
    // Of three pins it may be two that really hold: such a trio serves too, but misses by more.
    let least = Infinity;
    for (let a = 0; a < starts; a++) {
      for (let b = a + 1; b < size; b++) {
        for (let c = b + 1; c < size; c++) {
          const i = pool[a] as number;
          const j = pool[b] as number;
          const k = pool[c] as number;
          if (this.#three(i, j, k) && this.#cmiss < least && this.#serves(size, i, j, k)) {
            least = this.#cmiss;
            this.#keep(3, i, j, k);
          }
        }
      }
    }
    if (least === Infinity) this.#settleForLeast(size);
  }

  /** Whether the candidate, held by i1, i2 and i3, misses none of the pool by more than them. */
  #serves(size: number, i1: number, i2: number, i3: number): boolean {
    const miss = this.#cmiss + NOISE;
    for (let a = 0; a < size; a++) {
      const j = this.#pool[a] as number;
      if (j === i1 || j === i2 || j === i3) continue;
      const dx = (this.#px[j] as number) - this.#cx;
      const dy = (this.#py[j] as number) - this.#cy;
      const reach = miss + (this.#play[j] as number);
      if (reach < 0 || dx * dx + dy * dy > reach * reach) return false;
    }
    return true;
  }

  /** Where rounding leaves no candidate that serves all, the one that misses least. */
  #settleForLeast(size: number): void {
    const pool = this.#pool;
    let least = Infinity;
    const weigh = (held: number, i: number, j: number, k: number): void => {
      let miss = -Infinity;
      for (let a = 0; a < size; a++) miss = Math.max(miss, this.#missOf(pool[a] as number));
      if (miss >= least) return;
      least = miss;
      this.#cmiss = miss;
      this.#keep(held, i, j, k);
    };
    for (let a = 0; a < size; a++) {
      const i = pool[a] as number;
      this.#one(i);
      weigh(1, i, 0, 0);
      for (let b = a + 1; b < size; b++) {
        const j = pool[b] as number;
        if (this.#two(i, j)) weigh(2, i, j, 0);
        for (let c = b + 1; c < size; c++) {
          const k = pool[c] as number;
          if (this.#three(i, j, k)) weigh(3, i, j, k);
        }
      }
    }
  }

  #keep(held: number, i: number, j: number, k: number): void {
    this.x = this.#cx;
    this.y = this.#cy;
    this.miss = this.#cmiss;
    this.held = held;
    this.holders[0] = i;
    this.holders[1] = j;
    this.holders[2] = k;
  }

  #missOf(j: number): number {
    const dx = (this.#px[j] as number) - this.#cx;
    const dy = (this.#py[j] as number) - this.#cy;
    return Math.sqrt(dx * dx + dy * dy) - (this.#play[j] as number);
  }

  /** The shift that serves pin i best: the middle of its circle. */
  #one(i: number): void {
    this.#cx = this.#px[i] as number;
    this.#cy = this.#py[i] as number;
    this.#cmiss = -(this.#play[i] as number);
  }

  /** The shift on the line between two pins that misses both alike; false where one circle holds the other. */
  #two(i: number, j: number): boolean {
    const xi = this.#px[i] as number;
    const yi = this.#py[i] as number;
    const dx = (this.#px[j] as number) - xi;
    const dy = (this.#py[j] as number) - yi;
    const ri = this.#play[i] as number;
    const rj = this.#play[j] as number;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance <= Math.abs(ri - rj)) return false;
    this.#cmiss = (distance - ri - rj) / 2;
    const share = (this.#cmiss + ri) / distance;
    this.#cx = xi + dx * share;
    this.#cy = yi + dy * share;
    return true;
  }

  /**
   * The shift that misses three pins alike. From pin i, with a and b the ways to j and k and ρ the
   * distance to the shift, a·t = (a² − δ_j²)/2 − δ_j ρ, the same with b, and |t| = ρ: two lines
   * and a quadratic. False where the three lie in line or nothing misses them alike.
   */
  #three(i: number, j: number, k: number): boolean {
    const xi = this.#px[i] as number;
    const yi = this.#py[i] as number;
    const ri = this.#play[i] as number;
    const ax = (this.#px[j] as number) - xi;
    const ay = (this.#py[j] as number) - yi;
    const bx = (this.#px[k] as number) - xi;
    const by = (this.#py[k] as number) - yi;
    const dj = (this.#play[j] as number) - ri;
    const dk = (this.#play[k] as number) - ri;
    const cross = ax * by - ay * bx;
    if (cross === 0) return false;
    if (dj === 0 && dk === 0) {
      // Equal plays: the middle of the circle through all three.
      const half = 0.5 / cross;
      const aa = (ax * ax + ay * ay) * half;
      const bb = (bx * bx + by * by) * half;
      const mx = aa * by - bb * ay;
      const my = bb * ax - aa * bx;
      this.#cx = xi + mx;
      this.#cy = yi + my;
      this.#cmiss = Math.sqrt(mx * mx + my * my) - ri;
      return true;
    }
    const a0 = (ax * ax + ay * ay - dj * dj) / 2;
    const b0 = (bx * bx + by * by - dk * dk) / 2;
    // t = m + n ρ
    const mx = (a0 * by - b0 * ay) / cross;
    const my = (b0 * ax - a0 * bx) / cross;
    const nx = (dk * ay - dj * by) / cross;
    const ny = (dj * bx - dk * ax) / cross;
    const rho = leastRoot(
      nx * nx + ny * ny - 1,
      mx * nx + my * ny,
      mx * mx + my * my,
      Math.max(0, -dj, -dk),
    );
    if (!Number.isFinite(rho)) return false;
    this.#cx = xi + mx + nx * rho;
    this.#cy = yi + my + ny * rho;
    this.#cmiss = rho - ri;
    return true;
  }
}

/** The least root of A ρ² + 2 B ρ + C = 0 that is `from` or more; NaN where there is none. */
function leastRoot(A: number, B: number, C: number, from: number): number {
  const inside = B * B - A * C;
  if (inside < 0) return NaN;
  // Both forms of the root, so that neither loses its digits to a difference.
  const q = -(B + Math.sign(B || 1) * Math.sqrt(inside));
  const one = q / A;
  const other = C / q;
  const low = Math.min(one, other);
  const high = Math.max(one, other);
  if (low >= from) return low;
  return high >= from ? high : NaN;
}
