/**
 * How far a value can be trusted, from strong to weak. Learners see it beside every number.
 * - `geometry`: follows from the shape; anyone can draw it
 * - `read`: read in a copy of the source
 * - `second-hand`: quoted by someone else
 * - `common practice`: a habit of the trade, no source
 * - `from memory`: nobody looked it up
 * - `your setting`: what the user entered
 */
export type Standing =
  'geometry' | 'read' | 'second-hand' | 'common practice' | 'from memory' | 'your setting';

export interface Source {
  /** What it is called where it is cited. */
  readonly title: string;
  readonly standing: Standing;
}

/** Where formulas, rules and values come from. */
export const sources = {
  geometry: { title: 'The shape of the joint', standing: 'geometry' },
  setting: { title: 'Your setting', standing: 'your setting' },
  'shop-practice': { title: 'Common practice, no source', standing: 'common practice' },
  'from-memory': { title: 'From memory, not looked up', standing: 'from memory' },
  'school-shop-texts': {
    title: 'Two school-shop texts of the early 1900s: pin 1/8 in shorter than both holes together',
    standing: 'read',
  },
  'is-3845': { title: 'Summary of IS 3845:1966', standing: 'second-hand' },
  'trade-school': { title: 'German trade-school notes (HOBAAG)', standing: 'read' },
  hoadley: { title: "Hoadley, 'The Dowel Joint', Fine Woodworking 21, 1980", standing: 'read' },
  'hoadley-second-hand': { title: 'Hoadley 1980, quoted by others', standing: 'second-hand' },
  'wood-handbook': {
    title: 'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010)',
    standing: 'read',
  },
  'pull-of-a-pin': {
    title: 'Eckelman 1969, quoted by Chen et al. 2019, BioResources 14(4) 9214',
    standing: 'second-hand',
  },
  'case-corner': {
    title: 'Zhang and Eckelman 1993, Forest Products Journal 43(6) 19–24, the abstract',
    standing: 'read',
  },
  'two-pin-frame': { title: 'Eckelman 1971', standing: 'from memory' },
  'softwood-standard': {
    title: 'American Softwood Lumber Standard, NIST PS 20; some sizes read, the rest from memory',
    standing: 'from memory',
  },
  'hardwood-tables': {
    title: 'Hardwood thickness tables, surfaced two sides; three agree',
    standing: 'read',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
