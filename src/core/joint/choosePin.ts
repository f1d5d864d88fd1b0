import { TOLERANCE, lessThan, mm } from '../length/mm.ts';
import { allowedDiameters } from '../stock/diameterRules.ts';
import { stockPins } from '../stock/pins.ts';
import { type Sentence, say } from '../working/sentence.ts';
import { type Finding, finding } from './finding.ts';
import { type FittedPin, fitPin, fits } from './fitPin.ts';
import type { ConsideredPin, JointSpec, Pin } from './types.ts';

/** The pin chosen from stock, what became of the others, and what to say of the choice. */
export interface PinChoice {
  /** Null only where there is no stock at all. */
  readonly chosen: FittedPin | null;
  readonly considered: readonly ConsideredPin[];
  readonly cautions: readonly Finding[];
}

/** Thickness that decides the pin: of the board drilled in its edge or end, the thinner of two. */
export function decidingThickness(spec: JointSpec): number {
  return spec.kind === 'edge' || spec.kind === 'frame' || spec.kind === 'miter'
    ? Math.min(spec.a.thickness, spec.b.thickness)
    : spec.a.thickness;
}

function cautioned(fitted: FittedPin): boolean {
  return fitted.cautions.some((each) => each.severity === 'caution');
}

/** Without a caution first; then the thicker; then the better length; then the longer. */
function byPreference(one: FittedPin, other: FittedPin): number {
  const near = (x: number): number => (Math.abs(x) <= TOLERANCE ? 0 : x);
  return (
    Number(cautioned(one)) - Number(cautioned(other)) ||
    near(other.pin.diameter - one.pin.diameter) ||
    near(one.lengthMiss - other.lengthMiss) ||
    other.pin.length - one.pin.length
  );
}

/** Why a pin that fits was passed over for the chosen one. */
function whyNot(fitted: FittedPin, chosen: FittedPin): Sentence {
  const warning = fitted.cautions.find((each) => each.severity === 'caution');
  if (warning && !cautioned(chosen)) return [...say`Fits, but: `, ...warning.message];
  if (lessThan(fitted.pin.diameter, chosen.pin.diameter)) {
    return say`Fits, but a ${chosen.pin.diameter} pin fits too and holds more.`;
  }
  return say`Fits, but its length misses what both boards can use by ${fitted.lengthMiss}; the chosen one by ${chosen.lengthMiss}.`;
}

function whyRejected(fitted: FittedPin): Sentence {
  return fitted.cautions.find((each) => each.severity === 'error')?.message ?? say`Does not fit.`;
}

/** Chooses a pin from stock by the spec's rule. */
export function choosePin(spec: JointSpec): PinChoice {
  const stock = spec.stock ?? stockPins(spec.system);
  const thickness = mm(decidingThickness(spec));
  const rule = allowedDiameters(thickness, spec.diameterRule ?? 'shop-table', spec.system);
  const cautions: Finding[] = [];
  if (rule.outsideTable) {
    cautions.push(
      finding(
        'outside-table',
        'caution',
        say`The shop table has no row for a board ${thickness} thick, so the pin is chosen by 1/3 to 1/2 of the thickness.`,
        say`Try the joint in offcuts first.`,
      ),
    );
  }
  const allowed = stock.filter(rule.allows).map((pin) => fitPin(spec, pin));
  const fitting = allowed.filter(fits).sort(byPreference);
  const smaller =
    fitting.length > 0
      ? []
      : stock
          .filter((pin) => lessThan(pin.diameter, rule.least) && !rule.allows(pin))
          .map((pin) => fitPin(spec, pin));
  const smallerFitting = smaller.filter(fits).sort(byPreference);
  let chosen = fitting[0] ?? smallerFitting[0] ?? null;
  if (chosen !== null && fitting.length === 0) {
    cautions.push(
      finding(
        'under-size',
        'caution',
        rule.most > rule.least
          ? say`No pin of the usual ${rule.least} to ${rule.most} fits; a thinner one is planned.`
          : say`No pin of the usual ${rule.least} fits; a thinner one is planned.`,
        say`A thicker board, a bit with a shorter point, or a shorter pin of the usual diameter would do better.`,
      ),
    );
  }
  if (chosen === null) {
    // Show the thinnest, shortest pin that was tried, so that the drawing says what is in the way.
    const tried =
      allowed.length > 0 || smaller.length > 0
        ? [...allowed, ...smaller]
        : stock.map((pin) => fitPin(spec, pin));
    chosen =
      tried.sort(
        (one, other) => one.pin.diameter - other.pin.diameter || one.pin.length - other.pin.length,
      )[0] ?? null;
    cautions.push(
      finding(
        'no-pin-fits',
        'error',
        stock.length === 0
          ? say`There is no pin in stock to choose from.`
          : say`No pin in stock fits this joint.`,
        stock.length === 0
          ? say`Enter the pins that you have.`
          : say`Enter a pin of your own, or change the boards; the list of pins says what is in the way of each.`,
      ),
    );
  }

  const fittedByPin = new Map<Pin, FittedPin>(
    [...allowed, ...smaller].map((fitted) => [fitted.pin, fitted]),
  );
  const considered = stock.map((pin): ConsideredPin => {
    const fitted = fittedByPin.get(pin);
    if (fitted === undefined) {
      const side = lessThan(pin.diameter, rule.least) ? 'thin' : 'thick';
      return {
        pin,
        verdict: 'rejected',
        reason:
          rule.most > rule.least
            ? say`Too ${side}: a board ${thickness} thick takes ${rule.least} to ${rule.most}.`
            : say`Too ${side}: a board ${thickness} thick takes ${rule.least}.`,
      };
    }
    if (!fits(fitted)) return { pin, verdict: 'rejected', reason: whyRejected(fitted) };
    if (fitted === chosen) {
      return {
        pin,
        verdict: 'chosen',
        reason: say`The thickest that fits, in the length nearest to what both boards can use.`,
      };
    }
    return { pin, verdict: 'fits', reason: whyNot(fitted, chosen ?? fitted) };
  });
  return { chosen, considered, cautions };
}
