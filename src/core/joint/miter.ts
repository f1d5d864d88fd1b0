import { type Mm, atMost, lessThan, mm } from '../length/mm.ts';
import {
  difference,
  fixedLength,
  greatest,
  product,
  quantity,
  quotient,
  root,
  sum,
} from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import { say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import type { Row } from './spacing.ts';
import { spacingRule, spreadPins } from './spacing.ts';
import type { Split, SplitFault } from './split.ts';
import type { JointSpec, Pin } from './types.ts';

/** What a miter's pins are reckoned from. */
export interface MiterTerms {
  readonly spec: JointSpec;
  readonly pin: Pin;
  readonly bit: Mm;
  readonly line: WorkingStep;
  readonly tip: WorkingStep;
  readonly leave: WorkingStep;
  readonly allowance: WorkingStep;
}

export interface Miter {
  readonly row: Row;
  readonly split: Split;
  readonly limit: { readonly a: WorkingStep; readonly b: WorkingStep };
  /** Steps that both members share, before those of each. */
  readonly working: readonly WorkingStep[];
}

/**
 * Pins in a miter: square to the cut, half in each member. Toward the toe the wood along a
 * hole grows short, so the toe decides how far out the last pin may stand.
 */
export function planMiter(terms: MiterTerms): Miter {
  const { spec, pin, bit, line, tip, leave, allowance } = terms;
  const rest = spacingRule(spec, bit);
  const margin =
    spec.layout?.endMargin === undefined
      ? reckon({
          id: 'layout.margin',
          label: 'Heel to the first pin',
          symbol: 'm',
          formula: product(1.5, quantity('D', bit)),
          source: 'shop-practice',
        })
      : reckon({
          id: 'layout.margin',
          label: 'Heel to the first pin',
          symbol: 'm',
          formula: fixedLength(spec.layout.endMargin),
          source: 'setting',
        });
  const rule = { ...rest, endMargin: mm(margin.result) };
  const corner = reckon({
    id: 'miter.corner',
    label: "Where the bit's tip comes nearest the outer edge",
    symbol: 'u',
    formula: greatest(quotient(quantity('D', bit), 2), taken(tip)),
    source: 'geometry',
    rule:
      tip.result > bit / 2
        ? 'the point comes nearest'
        : 'the corner of the full diameter comes nearest',
  });
  const spare = product(root(2), taken(leave));
  const most = reckon({
    id: 'miter.most',
    label: 'Most of the pin that each member can hold',
    symbol: 'E',
    formula: difference(
      taken(line),
      taken(margin),
      quantity('least pitch', rest.minPitch),
      taken(corner),
      spare,
      taken(allowance),
    ),
    source: 'geometry',
    rule: 'with two pins as close to the heel as they may stand',
  });
  const engagement = (side: 'a' | 'b'): WorkingStep =>
    reckon({
      id: `${side}.engagement`,
      label: `Length of pin that ${side.toUpperCase()} holds`,
      symbol: `e_${side.toUpperCase()}`,
      formula: quotient(quantity('L', pin.length), 2),
      source: 'geometry',
      rule: 'half of the pin: both members are alike',
    });
  const holeDepth = (side: 'a' | 'b', of: WorkingStep): WorkingStep =>
    reckon({
      id: `${side}.holeDepth`,
      label: `Depth of the hole in ${side.toUpperCase()}, at full diameter`,
      symbol: `h_${side.toUpperCase()}`,
      formula: sum(taken(of), taken(allowance)),
      source: 'geometry',
    });
  const engagementA = engagement('a');
  const engagementB = engagement('b');
  const depthA = holeDepth('a', engagementA);
  const depthB = holeDepth('b', engagementB);

  const last = reckon({
    id: 'miter.last',
    label: 'Heel to the farthest place for a pin',
    symbol: 'p_n',
    formula: difference(taken(line), sum(taken(depthA), taken(corner), spare)),
    source: 'geometry',
  });
  const fault = faultOf(terms, most, engagementA);
  const span = reckon({
    id: 'layout.span',
    label: 'First pin to last pin',
    symbol: 's',
    // Where two pins don't fit, they are shown as close as they may stand, with an error.
    formula:
      fault === null
        ? difference(taken(last), taken(margin))
        : quantity('least pitch', rest.minPitch),
    source: 'geometry',
  });
  const row = spreadPins(spec, rule, margin, span, bit);

  const farthest = mm(Math.max(...row.positions));
  const limit = (side: 'a' | 'b'): WorkingStep =>
    reckon({
      id: `${side}.limit`,
      label: `Wood along the last hole in ${side.toUpperCase()}`,
      symbol: 'q',
      formula: difference(taken(line), quantity('p_n', farthest)),
      source: 'geometry',
      rule: 'from the cut to the outer edge, as long as from the pin to the toe',
    });
  const woodLeft = (side: 'a' | 'b', toEdge: WorkingStep, depth: WorkingStep): WorkingStep =>
    reckon({
      id: `${side}.woodLeft`,
      label: `Wood left in ${side.toUpperCase()}, square to its outer edge`,
      symbol: `w_${side.toUpperCase()}`,
      formula: quotient(difference(taken(toEdge), taken(depth), taken(corner)), root(2)),
      source: 'geometry',
    });
  const limitA = limit('a');
  const limitB = limit('b');
  return {
    row: { ...row, working: [last, span, ...row.working] },
    limit: { a: limitA, b: limitB },
    split: {
      a: {
        most,
        engagement: engagementA,
        holeDepth: depthA,
        woodLeft: woodLeft('a', limitA, depthA),
      },
      b: {
        most,
        engagement: engagementB,
        holeDepth: depthB,
        woodLeft: woodLeft('b', limitB, depthB),
      },
      fault,
    },
    working: [margin, corner],
  };
}

function faultOf(
  { pin }: MiterTerms,
  most: WorkingStep,
  engagement: WorkingStep,
): SplitFault | null {
  if (!atMost(engagement.result, most.result)) {
    return {
      code: 'pin-too-long',
      message: say`Half of a ${pin.length} pin is ${engagement.result}; with two pins a member can hold ${Math.max(0, most.result)}: the pin is ${2 * (engagement.result - Math.max(0, most.result))} too long for this width.`,
      remedy: say`Take a shorter or thinner pin, or wider members.`,
    };
  }
  if (lessThan(engagement.result, pin.diameter)) {
    return {
      code: 'too-little-hold',
      message: say`Each member would hold only ${engagement.result} of the pin, less than its diameter of ${pin.diameter} by ${pin.diameter - engagement.result}.`,
      remedy: say`Take a longer pin.`,
    };
  }
  return null;
}
