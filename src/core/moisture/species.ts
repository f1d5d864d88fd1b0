/**
 * How far a species' coefficients of movement can be trusted: `read` in the table itself,
 * `second-hand` where someone else quotes it, `worked out` from the shrinkage that was read
 * (Wood Handbook Table 4-3) by C = S/(3000 − 20 S), S in percent: the relation that ties the
 * two tables together for single species.
 */
export type SpeciesStanding = 'read' | 'second-hand' | 'worked out';

/** What the calculator knows of a wood. */
export interface Species {
  /** As the tables list it: 'oak, white'. */
  readonly name: string;
  /** Change of size across the rings, per 1 % of moisture; null where it was not found. */
  readonly radial: number | null;
  /** Change of size along the rings, per 1 % of moisture. */
  readonly tangential: number;
  readonly standing: SpeciesStanding;
  /** Where the two coefficients come from. */
  readonly source: string;
  /**
   * Weight of oven-dry wood at its 12 % volume against water; null where it was not read. This and
   * the shear: Wood Handbook, FPL-GTR-190, Table 5-3, read there.
   */
  readonly specificGravity: number | null;
  /** Shear strength along the grain at 12 % moisture, MPa; null where it was not read. */
  readonly shear: number | null;
}

interface CoefficientSource {
  readonly standing: SpeciesStanding;
  readonly source: string;
}

const table13: CoefficientSource = {
  standing: 'read',
  source: 'Wood Handbook, FPL-GTR-190, Table 13-5',
};
const fromShrinkage: CoefficientSource = {
  standing: 'worked out',
  source: 'From the shrinkage in Wood Handbook, FPL-GTR-190, Table 4-3, by C = S/(3000 − 20 S)',
};
const tradeChart: CoefficientSource = {
  standing: 'second-hand',
  source: 'A trade chart that cites the Wood Handbook',
};
const studyNotes: CoefficientSource = {
  standing: 'second-hand',
  source: 'Translated study notes that cite the Wood Handbook',
};

function row(
  name: string,
  radial: number | null,
  tangential: number,
  { standing, source }: CoefficientSource,
  specificGravity: number | null,
  shear: number | null,
): Species {
  return { name, radial, tangential, standing, source, specificGravity, shear };
}

const table: readonly Species[] = [
  row('alder, red', 0.00151, 0.00256, table13, 0.41, 7.4),
  row('ash, white', 0.00169, 0.00274, table13, 0.6, 13.2),
  row('aspen, quaking', 0.00119, 0.00234, table13, 0.38, 5.9),
  row('basswood, American', 0.0023, 0.0033, table13, 0.37, 6.8),
  row('beech, American', 0.0019, 0.00431, table13, 0.64, 13.9),
  row('birch, paper', 0.00219, 0.00304, table13, 0.55, 8.3),
  row('birch, sweet', 0.00256, 0.00338, table13, 0.65, 15.4),
  row('birch, yellow', 0.00256, 0.00338, table13, 0.62, 13.0),
  row('butternut', 0.00116, 0.00223, table13, null, null),
  row('cedar, western redcedar', 0.00081, 0.00172, fromShrinkage, 0.32, 6.8),
  row('cherry, black', 0.00126, 0.00248, table13, 0.5, 11.7),
  row('Douglas-fir', null, 0.00267, tradeChart, null, null),
  row('Douglas-fir, coast', 0.00165, 0.00267, fromShrinkage, 0.48, 7.8),
  row('fir, white', 0.00112, 0.00245, table13, null, null),
  row('hickory, pecan', 0.00169, 0.00315, table13, null, null),
  row('hickory, true', 0.00259, 0.00411, table13, null, null),
  row('mahogany (Honduran)', 0.00172, 0.00238, studyNotes, null, null),
  row('maple, red (soft)', 0.00137, 0.00289, table13, 0.54, 12.8),
  row('maple, silver (soft)', 0.00102, 0.00252, table13, 0.47, 10.2),
  row('maple, sugar (hard)', 0.00165, 0.00353, table13, 0.63, 16.1),
  row('oak, northern red', 0.00137, 0.00304, fromShrinkage, 0.63, 12.3),
  row('oak, white', 0.00194, 0.00376, fromShrinkage, 0.68, 13.8),
  row('pine, eastern white', 0.00071, 0.00212, studyNotes, 0.35, 6.2),
  row('pine, loblolly', 0.00165, 0.00259, fromShrinkage, 0.51, 9.6),
  row('pine, lodgepole', 0.00148, 0.00234, fromShrinkage, null, null),
  row('pine, longleaf', 0.00176, 0.00263, fromShrinkage, 0.59, 10.4),
  row('pine, shortleaf', 0.00158, 0.00271, fromShrinkage, 0.51, 9.6),
  row('red oak, commercial', 0.00158, 0.00369, table13, null, null),
  row('sweetgum', 0.00183, 0.00365, table13, null, null),
  row('teak', 0.001, 0.00186, studyNotes, null, null),
  row('walnut, black', 0.0019, 0.00274, table13, 0.55, 9.4),
  row('white oak, commercial', 0.0018, 0.00365, table13, null, null),
  row('yellow-poplar', 0.00158, 0.00289, fromShrinkage, 0.42, 8.2),
];

const byName = new Map(table.map((wood) => [wood.name, wood]));

/** Every species that the calculator knows, in the order of the alphabet. */
export const speciesNames: readonly string[] = table.map((wood) => wood.name);

/**
 * The wood of a name in `speciesNames`, or undefined for a name that is not there.
 * @example species('fir, white')?.tangential // 0.00245
 */
export function species(name: string): Species | undefined {
  return byName.get(name);
}
