import type { LengthUnit } from './parseLength.ts';
import { type Mm, mm } from './mm.ts';

/** Size of a shop step: of an inch where inches are read, of a millimeter where they are. */
export interface StepSize {
  readonly in: number;
  readonly mm: number;
}

/**
 * The lengths that a slider stops at: whole multiples of the reader's step within a range.
 * They are counted by index, so that no length is ever rounded by the slider itself.
 */
export class ShopSteps {
  readonly #size: number;
  /** Index of the first step within the range. */
  readonly first: number;
  /** Index of the last step within the range. */
  readonly last: number;

  /** @param least and `most` in mm: the range that the slider covers */
  constructor(step: StepSize, unit: LengthUnit, least: Mm, most: Mm) {
    this.#size = unit === 'in' ? step.in * 25.4 : step.mm;
    this.first = Math.ceil(least / this.#size - 1e-6);
    this.last = Math.max(this.first, Math.floor(most / this.#size + 1e-6));
  }

  /** The length of a step, mm. */
  at(index: number): Mm {
    return mm(Math.round(index * this.#size * 1e6) / 1e6);
  }

  /** The step nearest to a length, within the range. */
  nearest(length: Mm): number {
    return this.#within(Math.round(length / this.#size));
  }

  /** The next step above (`way` 1) or below (`way` −1) a length, which may lie between two. */
  next(length: Mm, way: 1 | -1): number {
    const index = length / this.#size;
    return this.#within(way > 0 ? Math.floor(index + 1e-6) + 1 : Math.ceil(index - 1e-6) - 1);
  }

  #within(index: number): number {
    return Math.min(this.last, Math.max(this.first, index));
  }
}
