import type { Mm } from '../../core/index.ts';
import { type Unit, spoken } from '../drafting/reading.ts';

/** Which way an offset lies, in words. @param offset mm, away from the reference face positive */
export function wayOf(offset: Mm): string {
  if (offset === 0) return 'in the middle';
  return offset > 0
    ? 'away from the face that the guide is on'
    : 'toward the face that the guide is on';
}

/** The drawing of a turn-over test in sentences. */
export function describeTurnOver(apart: Mm | null, offset: Mm | null, unit: Unit): string {
  const start =
    'The edge of a board with two holes side by side. Hole 1 was drilled with the guide on the reference face, hole 2 with the board turned over.';
  if (apart === null || offset === null) {
    return `${start} Hole 1 lies below the middle line and hole 2 as far above it: half the distance between them is how far the guide is off.`;
  }
  if (offset === 0) return `${start} Both lie on the middle line: the guide is not off.`;
  const [distance, half] = [apart, Math.abs(offset)].map(spoken(unit));
  return `${start} They lie ${distance} apart, so each is ${half} off the middle: ${wayOf(offset)}.`;
}
