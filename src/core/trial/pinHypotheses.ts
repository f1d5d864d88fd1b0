import { diameterOfPin, fitBands, unmeasuredPinUndersize } from '../fit/fit.ts';
import { lessThan, mm } from '../length/mm.ts';
import { type Readings, nearlyAll } from '../tools/readings.ts';
import { lookAlike } from './classicMistakes.ts';
import type { BenchSetup } from './drill.ts';
import { type Hypothesis, change, depthErrors, members, suppose } from './hypothesis.ts';
import type { Signs } from './signs.ts';

/** The narrower of the two boards' holes, mm: a pin has to go into both. */
export function narrowerHole({ a, b }: BenchSetup): number {
  return Math.min(a.bit.diameter, b.bit.diameter);
}

/** Whether the thickest of the pins as measured do not go into their holes. */
export function areThick(setup: BenchSetup, pins: Readings): boolean {
  return lessThan(mm(narrowerHole(setup)), nearlyAll(pins).most);
}

/** Whether the thinnest of the pins as measured rattle in their holes. */
export function areThin(setup: BenchSetup, pins: Readings): boolean {
  return lessThan(fitBands.goodTo, mm(narrowerHole(setup) - nearlyAll(pins).least));
}

/** Pins and bits that are not what they were taken for. */
export function pinHypotheses(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  pins?: Readings,
): readonly Hypothesis[] {
  const tooLong = depthErrors(seen, expected).filter((error) => Math.abs(error) > 0.01);
  const { pin } = setup;
  return [
    ...mixedSystems(setup, pins),
    ...otherThickness(setup, pins),
    ...tooLong
      .filter((error) => pin.length - error > 0)
      .map((error) =>
        suppose('other-length', 0.4, members, error, {
          ...setup,
          pin: { ...pin, length: mm(pin.length - error) },
        }),
      ),
  ];
}

/** The bit, or the pin, is of the size in the other system that looks like its own. */
function mixedSystems(setup: BenchSetup, pins?: Readings): readonly Hypothesis[] {
  const { pin } = setup;
  const bits = members.reduce((wrong, member) => {
    const { diameter, tip } = setup[member].bit;
    const size = lookAlike(diameter);
    return change(wrong, member, { bit: { diameter: size, tip: mm((tip * size) / diameter) } });
  }, setup);
  const otherPin = { diameter: lookAlike(pin.diameter), length: pin.length };
  const off = (name: number) =>
    pins === undefined ? 0 : Math.abs(pins.mean + unmeasuredPinUndersize - name);
  // Readings that come nearer to the pin's own name speak against another pin; where they explain
  // the fit by themselves, they speak for the bit.
  const asNamed = off(otherPin.diameter) > off(pin.diameter);
  const bitsAreRight = pins !== undefined && (areThick(setup, pins) || areThin(setup, pins));
  const { diameter } = setup.a.bit;
  return [
    suppose('mixed-systems', bitsAreRight ? 0.2 : 0, members, bits.a.bit.diameter - diameter, bits),
    suppose('mixed-systems', asNamed ? 0.5 : 0, members, otherPin.diameter - pin.diameter, {
      ...setup,
      pin: otherPin,
    }),
  ];
}

/** Pins swollen or thin: as much as they measure, or as much as it takes where they weren't measured. */
function otherThickness(setup: BenchSetup, pins?: Readings): readonly Hypothesis[] {
  const { pin } = setup;
  const hole = narrowerHole(setup);
  const expected = diameterOfPin(pin);
  const measured = pins && nearlyAll(pins);
  const rarity = (bearsOut: boolean) => (pins === undefined ? 0.1 : bearsOut ? 0.02 : 0.5);
  const thick = pins !== undefined && areThick(setup, pins);
  const thin = pins !== undefined && areThin(setup, pins);
  const most = thick
    ? measured!.most
    : mm(Math.max(hole + 0.05, expected + unmeasuredPinUndersize));
  const least = thin ? measured!.least : mm(Math.min(hole - 0.3, expected));
  return [
    suppose('pin-swollen', rarity(thick), members, most - expected, {
      ...setup,
      pin: { ...pin, measured: most },
    }),
    ...(least > 0
      ? [
          suppose('pin-thin', rarity(thin), members, expected - least, {
            ...setup,
            pin: { ...pin, measured: least },
          }),
        ]
      : []),
  ];
}
