import { mm } from '../length/mm.ts';
import { type Hypothesis, members } from './hypothesis.ts';
import type { Signs } from './signs.ts';

/** Causes in the wood: chips under a pin, an end that is not square, a board that is cupped or hollow. */
export function woodHypotheses(seen: Signs, expected: Required<Signs>): readonly Hypothesis[] {
  const found: Hypothesis[] = [];
  const { opening, openInMiddle } = seen;
  if (opening !== undefined) {
    const widest = mm(Math.max(opening.start, opening.end));
    if (widest > 0) {
      // Chips fill a hole by a few millimeters; a depth gauge, once it is cleared, finds it sound.
      found.push({
        code: 'chips',
        members,
        size: mm(widest + expected.endRoom),
        rarity: 0.2 + Math.max(0, widest - 2) / 4,
        signs: {
          ...expected,
          opening,
          ...(seen.rocks !== undefined && { rocks: seen.rocks }),
        },
      });
      // Out of square, it is open at one end more than at the other.
      if (opening.start !== opening.end) {
        found.push({
          code: 'out-of-square',
          members,
          size: mm(Math.abs(opening.start - opening.end)),
          rarity: 0.1,
          signs: {
            ...expected,
            opening:
              opening.start > opening.end
                ? { start: opening.start, end: mm(0) }
                : { start: mm(0), end: opening.end },
          },
        });
      }
    }
  }
  if (openInMiddle === true || seen.rocks === true) {
    found.push({
      code: 'cupped',
      members,
      size: mm(opening === undefined ? 0 : Math.max(opening.start, opening.end)),
      rarity: 0.1,
      signs: {
        ...expected,
        openInMiddle: openInMiddle ?? false,
        rocks: seen.rocks ?? false,
        ...(opening && { opening }),
      },
    });
  }
  return found;
}
