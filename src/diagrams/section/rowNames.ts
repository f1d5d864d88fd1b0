import type { SectionShapes } from './shapes.ts';

/** What the rows of dimensions are called, on a phone and on a wider sheet. */
export const ROW_NAMES = {
  held: { short: 'held', long: 'held by each' },
  pin: { short: 'pin', long: 'pin' },
  hole: { short: 'hole', long: 'hole depth' },
  left: { short: 'wood left', long: 'wood left' },
  boardB: { short: 'board B', long: 'thickness of B' },
} as const satisfies SectionShapes['rowNames'];
