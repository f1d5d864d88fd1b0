import { type Unit, spoken } from '../drafting/reading.ts';
import type { BehindShapes } from './geometry.ts';

const BEHIND = {
  waste: 'a waste board on the bench',
  bench: 'the bench itself',
  hand: 'a hand, which must not be there',
} as const;

/** Where the point ends in sentences: its values, and what moves it. */
export function describeBehind(shapes: BehindShapes, unit: Unit): string {
  const { end, thickness, mark, collar, corner } = shapes;
  const say = spoken(unit);
  const behind = BEHIND[shapes.waste ? 'waste' : shapes.overBench ? 'bench' : 'hand'];
  const slip = mark > collar ? `, and the collar has slipped by ${say(mark - collar)}` : '';
  const point =
    end.beyond > 0
      ? `The bit's point is through the far face by ${say(end.beyond)}, in the ${end.ends === 'waste' ? 'waste board' : end.ends}.`
      : `The bit's point ends ${say(Math.max(0, end.woodLeft))} short of the far face.`;
  return `Board B, ${say(thickness)} thick, clamped down and drilled in its face; behind it is ${behind}. The stop is ${say(corner - mark)}${slip}. The hole is ${say(end.depth)} deep at full diameter. ${point} A longer stop, a collar that slips or a thinner board moves the point on.`;
}
