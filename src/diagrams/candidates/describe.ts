import { type Unit, spoken } from '../drafting/reading.ts';
import { type Candidates, verdictText } from './geometry.ts';

/** The pins in stock in sentences: what became of each, and what the rules allow. */
export function describeCandidates(shapes: Candidates, unit: Unit): string {
  const { thickness, candidates, rule, grain } = shapes;
  const say = spoken(unit);
  const side = grain === 'end' ? 'end' : 'edge';
  const each = candidates.map((candidate) => {
    const beside = candidate.beside > 0 ? `, ${say(candidate.beside)} of wood on either side` : '';
    return `A pin ${say(candidate.diameter)} across${beside}: ${verdictText(candidate)}`;
  });
  const by = rule === 'ratio' ? 'by a third to a half of the thickness' : 'by the shop table';
  return `Pins in the ${side} of a board ${say(thickness)} thick, chosen ${by}. ${each.join('. ')}. A third of the thickness is ${say(thickness / 3)} and half of it ${say(thickness / 2)}. A thicker board takes a thicker pin.`;
}
