import { lessThan, mm, atMost } from '../length/mm.ts';
import {
  difference,
  fixedLength,
  greatest,
  least,
  quantity,
  quotient,
  sum,
} from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import { type Sentence, say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import type { Pin } from './types.ts';

/** What both members share when the pin's length is split between them. */
export interface SplitTerms {
  readonly pin: Pin;
  readonly limit: { readonly a: WorkingStep; readonly b: WorkingStep };
  readonly tip: WorkingStep;
  readonly leave: WorkingStep;
  readonly allowance: WorkingStep;
}

/** Why a pin can't be split between two members, and what would mend it. */
export interface SplitFault {
  readonly code: 'pin-too-long' | 'too-little-hold';
  readonly message: Sentence;
  readonly remedy: Sentence;
}

/** One member's share of the pin. */
export interface Share {
  readonly most: WorkingStep;
  readonly engagement: WorkingStep;
  readonly holeDepth: WorkingStep;
  readonly woodLeft: WorkingStep;
}

export interface Split {
  readonly a: Share;
  readonly b: Share;
  readonly fault: SplitFault | null;
}

function reckonMost(side: 'a' | 'b', terms: SplitTerms): WorkingStep {
  const room = difference(
    taken(terms.limit[side]),
    taken(terms.leave),
    taken(terms.tip),
    taken(terms.allowance),
  );
  const letter = side.toUpperCase();
  const step = reckon({
    id: `${side}.most`,
    label: `Most of the pin that ${letter} can hold`,
    symbol: `E_${letter}`,
    formula: room,
    source: 'geometry',
  });
  if (step.result >= 0) return step;
  return reckon({
    ...step,
    formula: greatest(fixedLength(0), room),
    rule: 'nothing is left for the pin',
  });
}

function reckonHole(
  side: 'a' | 'b',
  engagement: WorkingStep,
  terms: SplitTerms,
): Pick<Share, 'holeDepth' | 'woodLeft'> {
  const letter = side.toUpperCase();
  const holeDepth = reckon({
    id: `${side}.holeDepth`,
    label: `Depth of the hole in ${letter}, at full diameter`,
    symbol: `h_${letter}`,
    formula: sum(taken(engagement), taken(terms.allowance)),
    source: 'geometry',
  });
  const woodLeft = reckon({
    id: `${side}.woodLeft`,
    label: `Wood left in ${letter} beyond the bit's point`,
    symbol: `w_${letter}`,
    formula: difference(taken(terms.limit[side]), taken(holeDepth), taken(terms.tip)),
    source: 'geometry',
  });
  return { holeDepth, woodLeft };
}

function faultOf(split: Pick<Split, 'a' | 'b'>, pin: Pin): SplitFault | null {
  const { a, b } = split;
  if (!atMost(b.engagement.result, b.most.result)) {
    const together = mm(a.most.result + b.most.result);
    return {
      code: 'pin-too-long',
      message: say`The pin is ${pin.length} long; A can hold ${a.most.result} of it and B ${b.most.result}, ${together} together: it is ${pin.length - together} too long.`,
      remedy: say`Take a shorter pin, a thicker board B, or a bit with a shorter point.`,
    };
  }
  for (const [letter, share] of [
    ['B', b],
    ['A', a],
  ] as const) {
    if (lessThan(share.engagement.result, pin.diameter)) {
      return {
        code: 'too-little-hold',
        message: say`Board ${letter} would hold only ${share.engagement.result} of the pin, less than its diameter of ${pin.diameter} by ${pin.diameter - share.engagement.result}.`,
        remedy: lessThan(share.most.result, pin.diameter)
          ? say`Take a thinner pin, a thicker board ${letter}, or a bit with a shorter point.`
          : say`Take a longer pin.`,
      };
    }
  }
  return null;
}

/**
 * Splits a pin between a member B and a member A: half to B or as much as B can take, the rest
 * to A; what A can't take goes back to B. The two engagements always make the pin's length.
 */
export function splitPin(terms: SplitTerms): Split {
  const { pin } = terms;
  const mostA = reckonMost('a', terms);
  const mostB = reckonMost('b', terms);
  const pinLength = quantity('L', pin.length);
  const half = quotient(pinLength, 2);
  const toB = least(half, taken(mostB));
  const stepB = {
    id: 'b.engagement',
    label: 'Length of pin that B holds',
    symbol: 'e_B',
    source: 'geometry',
  } as const;
  const stepA = {
    id: 'a.engagement',
    label: 'Length of pin that A holds',
    symbol: 'e_A',
    source: 'geometry',
  } as const;

  let engagementB = reckon({
    ...stepB,
    formula: toB,
    rule: atMost(pin.length / 2, mostB.result) ? 'half of the pin' : 'as much as B can hold',
  });
  let engagementA = reckon({
    ...stepA,
    formula: difference(pinLength, taken(engagementB)),
    rule: 'the rest of the pin',
  });
  if (!atMost(engagementA.result, mostA.result)) {
    engagementA = reckon({ ...stepA, formula: taken(mostA), rule: 'as much as A can hold' });
    engagementB = reckon({
      ...stepB,
      formula: difference(pinLength, taken(engagementA)),
      rule: 'the rest of the pin',
    });
  }
  const a = { most: mostA, engagement: engagementA, ...reckonHole('a', engagementA, terms) };
  const b = { most: mostB, engagement: engagementB, ...reckonHole('b', engagementB, terms) };
  return { a, b, fault: faultOf({ a, b }, pin) };
}
