import type { SourceId } from '../../core/working/sources.ts';

/** What the calculator takes from a source. */
export interface Use {
  readonly says: string;
  /** The source's name as the checks write it, in part. */
  readonly inChecks?: string;
  /** Lessons whose figures rest on it, besides those whose workings name it. */
  readonly lessons?: readonly string[];
  /** Pages that rest on it, besides lessons. */
  readonly pages?: readonly Page[];
}

export interface Page {
  readonly title: string;
  readonly path: `/${string}`;
}

const BENCH: Page = { title: 'Bench', path: '/bench/' };
const TRIAL: Page = { title: 'Trial run', path: '/trial/' };
const MEASURE: Page = { title: 'Measure and correct', path: '/measure/' };

const MOISTURE = 'moisture-and-seasons';
const STRENGTH = 'how-strong-and-when-not-to-use-dowels';
const FIT = 'clearance-and-the-glue-line';
const GLUE = 'glue-trapped-air-and-the-end-gap';
const ERRORS = 'errors-odds-and-the-dry-fit';

/** What each source gives to the calculator, in the order of `sources`. */
export const uses: Readonly<Record<SourceId, Use>> = {
  geometry: {
    says: 'All that follows from the shape alone: the length of a point, the split of a pin, stops, places along and across, play, gaps and steps. Whoever draws the joint gets the same numbers.',
    inChecks: 'Worked by hand',
    lessons: [ERRORS, FIT, GLUE],
    pages: [BENCH, TRIAL, MEASURE],
  },
  setting: {
    says: 'What you enter yourself. The calculator takes it as it is.',
    pages: [BENCH, TRIAL, MEASURE],
  },
  'shop-practice': {
    says: 'Habits that many shops share and nobody signs: the dowel for the board in inches, free depth past the pin, margins and spacings of a row, pressure that spreads at 45° under a clamp, the order of work.',
    inChecks: 'Common practice',
    pages: [BENCH],
  },
  'from-memory': {
    says: 'Values that nobody looked up. They stand in a table of their own below, so that you can put your own in their place.',
    lessons: [FIT, GLUE, ERRORS],
    pages: [BENCH, TRIAL, MEASURE],
  },
  'school-shop-texts': {
    says: 'The other habit for free depth, less of it in each hole. It serves where you choose it.',
    inChecks: 'school-shop texts',
    pages: [BENCH],
  },
  'is-3845': {
    says: 'A pin of a third to a half of the thickness, where the shop table has no row; two to two and a half diameters of it in each board.',
    inChecks: 'IS 3845',
    pages: [BENCH],
  },
  'trade-school': {
    says: 'Another rule for the dowel, for its spacing and for the stock, beside what the calculator does.',
    inChecks: 'trade-school',
  },
  hoadley: {
    says: 'The clearance at which a pin held best, and that one too large is scraped dry.',
    inChecks: 'Fine Woodworking 21',
    lessons: [FIT],
  },
  'hoadley-second-hand': {
    says: 'About one and a half diameters in each board are enough for the glue. Below that the plan says so.',
    inChecks: 'quoted by others',
    pages: [BENCH],
  },
  'wood-handbook': {
    says: 'The moisture that wood comes to in air, how far wood moves for each percent of it, and the strength of woods that comparisons stand on.',
    inChecks: 'Wood Handbook',
    lessons: [MOISTURE, STRENGTH],
    pages: [BENCH],
  },
  'pull-of-a-pin': {
    says: 'How the pull of a pin changes with its size, its depth, its clearance and its wood. For comparing, never for rating.',
    lessons: [STRENGTH],
  },
  'case-corner': {
    says: 'How a corner of particleboard with one pin changes with the diameter and the depth. For comparing, never for rating.',
    inChecks: 'Zhang and Eckelman',
    lessons: [STRENGTH],
  },
  'two-pin-frame': {
    says: 'Which of two pins in a frame works harder. For comparing, never for rating.',
    lessons: [STRENGTH],
  },
  'softwood-standard': {
    says: 'What a softwood board measures, by the name that it is sold under.',
    inChecks: 'Softwood Lumber Standard',
    pages: [BENCH],
  },
  'hardwood-tables': {
    says: 'What a hardwood board measures, by its name in quarters.',
    inChecks: 'Hardwood thickness tables',
    pages: [BENCH],
  },
};
