import { type Mm, lessThan, mm } from '../length/mm.ts';
import { diameterOfPin } from '../fit/fit.ts';
import { SEASON, rowMovement } from '../moisture/rowMovement.ts';
import { species, speciesNames } from '../moisture/species.ts';
import { say } from '../working/sentence.ts';
import { type Finding, finding } from './finding.ts';
import { drilledSide } from './jointLine.ts';
import type { JointSpec, Pin } from './types.ts';

/** The steadiest wood that the tables know. */
const LEAST_COEFFICIENT = Math.min(
  ...speciesNames.map((name) => {
    const wood = species(name);
    return wood?.radial ?? wood?.tangential ?? Infinity;
  }),
);

function tangential(name: string | undefined): number | undefined {
  return name === undefined ? undefined : species(name)?.tangential;
}

const RANGE = `${SEASON.dry} to ${SEASON.damp} %`;

/**
 * Where the row of pins crosses A's grain and B doesn't move with it, the pins hold while the
 * board swells and shrinks. In a frame and a leg B's grain runs along the row; in a corner and
 * a tee joint (drilled in the end) both boards move together unless they are of two species.
 *
 * @param span from the first pin to the last, mm
 * @param bit diameter of the bit, mm
 */
export function crossGrainCautions(
  spec: JointSpec,
  pin: Pin,
  span: Mm,
  bit: Mm,
): readonly Finding[] {
  const crossesB = spec.kind === 'corner' || spec.kind === 'tee';
  const crosses = spec.kind === 'frame' || spec.kind === 'leg' || crossesB;
  if (!crosses || drilledSide(spec) !== 'end' || span === 0) return [];
  const clearance = mm(bit - diameterOfPin(pin));
  const moves = (coefficient: number) => rowMovement({ span, coefficient, clearance, ...SEASON });
  const inA = tangential(spec.a.species);
  const inB = crossesB ? tangential(spec.b.species) : 0;
  if (inA === undefined || inB === undefined) {
    const { change: sure, play } = moves(LEAST_COEFFICIENT);
    if (crossesB || !lessThan(play, sure)) return [];
    return [
      finding(
        'cross-grain-unknown',
        'note',
        say`The row of pins crosses A's grain over ${span}. Even in the steadiest wood of the tables that changes by ${sure} from ${RANGE} moisture, more than the ${play} of play in the holes.`,
        say`Name the wood to see how much. Keep wide rails from being pinned across their whole width.`,
      ),
    ];
  }
  const { change, play } = moves(Math.abs(inA - inB));
  if (!lessThan(play, change)) return [];
  return [
    finding(
      'cross-grain',
      'caution',
      say`The row of pins crosses A's grain over ${span}. From ${RANGE} moisture (flat-sawn) the wood there moves ${change}${crossesB ? ' more in one board than in the other' : ''}; the outer pins have ${play} of play.`,
      say`Bring the outer pins closer together, or glue only one of them and leave the others room to move.`,
    ),
  ];
}
