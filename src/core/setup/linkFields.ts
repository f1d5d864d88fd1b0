import type { BitPoint, System } from '../joint/types.ts';
import { type Mm, inches, mm } from '../length/mm.ts';

/**
 * What version 1 means where a link says nothing. A link made today has to plan the same joint
 * for ever, so these stay as they are even if the calculator's own defaults change.
 */
export const OMITTED: Record<System, { allowance: Mm; bushing: Mm; setback: Mm; point: BitPoint }> =
  {
    in: {
      allowance: inches(1 / 8),
      bushing: inches(1),
      setback: inches(1 / 8),
      point: { kind: 'twist', angle: 118 },
    },
    mm: {
      allowance: mm(3),
      bushing: mm(25),
      setback: mm(3),
      point: { kind: 'twist', angle: 118 },
    },
  };

/** Lengths that stand alone in a link, by their key. `signed` may be negative. */
export const LENGTHS = {
  line: 'length',
  allowance: 'length',
  leave: 'length',
  bit: 'length',
  bushing: 'length',
  standoff: 'length',
  offset: 'signed',
  margin: 'length',
  widest: 'length',
  closest: 'length',
  graduation: 'length',
  overhang: 'length',
  at: 'length',
  reveal: 'signed',
  setback: 'length',
  stagger: 'length',
} as const;

export type LengthKey = keyof typeof LENGTHS;

/** The other keys of a joint. */
export const WORDS = [
  'name',
  'count',
  'a.name',
  'b.name',
  'kind',
  'system',
  'a',
  'b',
  'a.wood',
  'b.wood',
  'drilled',
  'pin',
  'stock',
  'rule',
  'point',
  'centering',
] as const;

/** A species' name as it stands in a link: 'oak, white' is 'oak-white'. */
export function slug(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/-$/, '');
}
