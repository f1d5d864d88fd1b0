import { TOLERANCE } from '../length/mm.ts';
import type { Board, Severity } from '../joint/types.ts';
import { type Sentence, say } from '../working/sentence.ts';
import type { BitGroup } from './drillList.ts';
import { type PlannedPiece, jointsInWords } from './planPiece.ts';
import type { Sizes } from './changePiece.ts';

/** A change that would mend a piece, for `withSizes`. */
export interface Mend {
  /** Such as 'Top is 3/4 in thick'. */
  readonly says: Sentence;
  /** Place of a joint that has the board, from 0. */
  readonly at: number;
  readonly side: 'a' | 'b';
  readonly sizes: Partial<Sizes>;
}

/** Something to know about a piece as a whole, beside what each joint's own plan says. */
export interface PieceCaution {
  readonly severity: Severity;
  readonly message: Sentence;
  /** Changes to choose from; none where there is nothing to set on this page. */
  readonly mends: readonly Mend[];
}

/** Two stops nearer than this are easily taken for one another, mm: from memory. */
const EASILY_MISTAKEN = 25.4 / 32;

const SIZES = [
  ['thickness', 'thick'],
  ['width', 'wide'],
  ['length', 'long'],
] as const;

function differing({ joints }: PlannedPiece): readonly PieceCaution[] {
  const seen = new Map<string, { board: Board; where: string }>();
  const found: PieceCaution[] = [];
  for (const [at, joint] of joints.entries()) {
    for (const side of ['a', 'b'] as const) {
      const name = side === 'a' ? joint.label.boardA : joint.label.boardB;
      if (name === '') continue;
      const here = { board: joint.plan.spec[side], where: jointsInWords(joint.numbers) };
      const first = seen.get(name);
      if (first === undefined) seen.set(name, here);
      else {
        for (const [size, word] of SIZES) {
          const [before, now] = [first.board[size], here.board[size]];
          if (Math.abs(now - before) <= TOLERANCE) continue;
          found.push({
            severity: 'caution',
            message: say`${name} is ${before} ${word} in ${first.where}, but ${now} in ${here.where}. It is one board: measure it.`,
            mends: [before, now].map((value) => ({
              says: say`${name} is ${value} ${word}`,
              at,
              side,
              sizes: { [size]: value },
            })),
          });
        }
      }
    }
  }
  return found;
}

function closeStops(bits: readonly BitGroup[]): readonly PieceCaution[] {
  return bits.flatMap(({ diameter, bushings }) =>
    bushings.flatMap(({ settings }) =>
      settings.slice(1).flatMap(({ stop }, i): PieceCaution[] => {
        const before = settings[i]!.stop;
        return stop - before > EASILY_MISTAKEN
          ? []
          : [
              {
                severity: 'note',
                message: say`On the ${diameter} bit the stops ${before} and ${stop} are easily mistaken for each other. Measure, and try each in an offcut.`,
                mends: [],
              },
            ];
      }),
    ),
  );
}

/** What is the matter with a piece as a whole: joints that can't be made, boards that disagree, stops that look alike. */
export function pieceCautions(
  piece: PlannedPiece,
  bits: readonly BitGroup[],
): readonly PieceCaution[] {
  const notMade = piece.joints
    .filter(({ made }) => !made)
    .map(({ label, numbers }): PieceCaution => {
      const words = jointsInWords(numbers);
      const name = label.name === '' ? words : `${label.name} (${words})`;
      return {
        severity: 'error',
        message: say`${name} can’t be made as set, so no list has it. What would mend it is said with the joint.`,
        mends: [],
      };
    });
  return [...notMade, ...differing(piece), ...closeStops(bits)];
}
