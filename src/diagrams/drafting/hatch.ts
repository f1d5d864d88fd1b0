import type { Hatch } from './ink.ts';

/** One tile of section lines, to be repeated and turned. */
export interface HatchTile {
  readonly width: number;
  readonly height: number;
  readonly d: string;
}

/** Even lines, 9 px apart: cut across the fibers. */
const END_GRAIN: HatchTile = { width: 9, height: 9, d: 'M0,4.5H9' };

/** Lines with the fibers, uneven and broken off as the grain is. */
const LONG_GRAIN: HatchTile = {
  width: 176,
  height: 42,
  d: 'M0,3.5H96M118,3.5H176M22,10.5H150M0,16.5H60M84,16.5H176M0,24.5H34M52,24.5H160M12,30.5H104M128,30.5H176M0,37.5H74M98,37.5H142M158,37.5H176',
};

/**
 * Section lines that tell end grain from long grain: even slanted lines where the cut crosses
 * the fibers, lines along the fibers where it follows them. Neighbors in a joint slant opposite
 * ways (ISO 128-50).
 */
export function hatchTile(grain: Hatch['grain']): HatchTile {
  return grain === 'end' ? END_GRAIN : LONG_GRAIN;
}
