import type { Species } from '../../../core/moisture/species.ts';

/** What a figure needs to know of a wood that moves with the seasons, and how far that is known. */
export type MovingSpecies = Pick<Species, 'name' | 'radial' | 'tangential' | 'standing' | 'source'>;
