import { species, speciesNames } from '../../../core/index.ts';
import type { MovingSpecies } from './movingSpecies.ts';

/**
 * The woods of the tables whose movement is known in both directions, as plain data for a figure.
 * Only wrappers import this: the whole table is heavier than the figure.
 */
export function movingWoods(): readonly MovingSpecies[] {
  return speciesNames.flatMap((name) => {
    const wood = species(name);
    if (!wood || wood.radial === null) return [];
    const { radial, tangential, standing, source } = wood;
    return [{ name, radial, tangential, standing, source }];
  });
}
