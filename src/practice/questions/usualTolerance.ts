import type { System } from '../../core/joint/types.ts';
import { type Mm, mm } from '../../core/length/mm.ts';

/** How far off a typed length may be, where a question doesn't say: a shop step. */
export const USUAL_TOLERANCE: Readonly<Record<System, Mm>> = { in: mm(25.4 / 64), mm: mm(0.5) };
