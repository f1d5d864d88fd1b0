import { formatWorking } from '../../core/length/formatLength.ts';
import { type Mm, mm } from '../../core/length/mm.ts';
import type { Sentence } from '../../core/working/sentence.ts';

/** What an instructor looks at in a joint that a student has made. */
export interface Criterion {
  readonly id: 'gap' | 'step' | 'wood' | 'process';
  readonly name: string;
  /** How it is judged. */
  readonly how: string;
  /** What earns no point, one, two and three. */
  readonly levels: readonly [Sentence, Sentence, Sentence, Sentence];
}

/** Points for what has been judged so far; what is not there yet is left out. */
export type BenchMarks = Readonly<Partial<Record<Criterion['id'], 0 | 1 | 2 | 3>>>;

/** As a feeler is marked: thousandths of an inch, hundredths of a millimeter. */
function feeler(thickness: Mm): Sentence[number] {
  return {
    in: `${formatWorking(thickness, 'in')} in`,
    mm: `${formatWorking(thickness, 'mm')} mm`,
  };
}

const [thin, middle, thick] = [mm(0.1), mm(0.25), mm(0.5)] as const;
const [seen, ledge] = [mm(0.2), mm(0.8)] as const;

/** The assessment at the bench: four things to look at, three points each. */
export const rubric: readonly Criterion[] = [
  {
    id: 'gap',
    name: 'Gap',
    how: 'By feeler along the joint, clamps off; the widest place counts.',
    levels: [
      ['A feeler of ', feeler(thick), ' goes in, or the joint stays open.'],
      ['A feeler of ', feeler(middle), ' goes in.'],
      ['A feeler of ', feeler(thin), ' goes in.'],
      ['No feeler of ', feeler(thin), ' goes in anywhere.'],
    ],
  },
  {
    id: 'step',
    name: 'Step',
    how: 'From face to face across the joint, by straightedge and feeler.',
    levels: [
      ['More than ', feeler(ledge), ', or the wrong faces are flush.'],
      ['Up to ', feeler(ledge), ': it needs planing.'],
      ['Up to ', feeler(seen), ': a scraper takes it off.'],
      ['None that a fingernail finds.'],
    ],
  },
  {
    id: 'wood',
    name: 'Wood left',
    how: 'Behind the holes: look at the far faces, and set a depth gauge in the holes.',
    levels: [
      ['A hole or its point has come through.'],
      ['A bulge or a crack shows on the far face.'],
      ['Nothing shows, but less is left than the plan says.'],
      ['As much is left as the plan says.'],
    ],
  },
  {
    id: 'process',
    name: 'Process',
    how: 'Faces marked, stop checked on scrap, work clamped, dry fit before glue.',
    levels: [
      ['Work had to be stopped.'],
      ['Two steps or more were left out, or one that protects a hand.'],
      ['One step was left out, or came too late.'],
      ['Every step in its place, without being told.'],
    ],
  },
];

/** The most points that a joint can get. */
export const MOST_POINTS = 3 * rubric.length;

/** The points of a joint, once all four have been judged; null before. */
export function pointsOf(marks: BenchMarks): number | null {
  const points = rubric.map(({ id }) => marks[id]);
  return points.reduce<number | null>(
    (sum, each) => (sum === null || each === undefined ? null : sum + each),
    0,
  );
}
