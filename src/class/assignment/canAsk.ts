import type { System } from '../../core/joint/types.ts';
import { NoFairDraft } from '../../practice/made/index.ts';
import { draftOf } from '../../practice/made/makeQuestion.ts';
import type { Limits } from '../../practice/questions/types.ts';
import { suits, templateOf } from './assignment.ts';

/** So many seeds are tried: where one of them finds something fair to ask, nearly all do. */
const SEEDS = 3;

/**
 * True where a template finds something fair to ask about what a class has. A single thickness of
 * board, say, leaves nothing to ask where two boards must differ.
 * @throws RangeError where there is no such template
 */
export function canAsk(id: string, system: System, limits: Limits): boolean {
  const template = templateOf(id);
  if (!template) throw new RangeError(`no template '${id}'`);
  if (!suits(template, limits)) return false;
  for (let seed = 1; seed <= SEEDS; seed++) {
    try {
      draftOf(template, seed, system, limits);
    } catch (error) {
      if (error instanceof NoFairDraft) return false;
      throw error;
    }
  }
  return true;
}
