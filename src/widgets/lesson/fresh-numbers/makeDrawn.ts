import { type MakeOptions, makeQuestion } from '../../../practice/made/index.ts';
import type { Question } from '../../../practice/questions/types.ts';
import { drawQuestion } from '../self-check/drawQuestion.ts';
import type { QuestionDrawing } from '../self-check/questionDrawing.ts';

/** A question with its drawing, if it asks about one. */
export interface DrawnQuestion {
  readonly question: Question;
  readonly drawing: QuestionDrawing | undefined;
}

/**
 * Makes a question and its drawing. The calculator, all templates and all drawings come with this
 * file, so pages import it when they are asked for a question.
 * @throws RangeError for a template or a seed that there is not
 */
export function makeDrawn(template: string, seed: number, options: MakeOptions): DrawnQuestion {
  const question = makeQuestion(template, seed, options);
  return { question, drawing: drawQuestion(question) };
}
