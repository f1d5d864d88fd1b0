import type { LengthUnit } from '../core/index.ts';

function shown(): LengthUnit {
  const onPage =
    typeof document === 'undefined' ? undefined : document.documentElement.dataset['unit'];
  return onPage === 'mm' ? 'mm' : 'in';
}

/**
 * The reader's unit, one for all islands on a page: read `units.current` in markup or a
 * `$derived`, and it follows. The page's head script (`public/settings.js`) owns the setting; this
 * keeps in step with it.
 */
class Units {
  #current = $state<LengthUnit>(shown());

  constructor() {
    if (typeof document === 'undefined') return;
    document.addEventListener('unit-chosen', () => {
      this.#current = shown();
    });
  }

  get current(): LengthUnit {
    return this.#current;
  }

  /** The reader chose: shown everywhere, and remembered. */
  set(unit: LengthUnit): void {
    this.#choose(unit, true);
  }

  /** A link or an assignment asks for a unit: shown everywhere, but not remembered. */
  show(unit: LengthUnit): void {
    this.#choose(unit, false);
  }

  #choose(unit: LengthUnit, keep: boolean): void {
    this.#current = unit;
    document.dispatchEvent(new CustomEvent('choose-unit', { detail: { unit, keep } }));
  }
}

export const units = new Units();
