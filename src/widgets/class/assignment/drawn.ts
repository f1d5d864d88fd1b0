import type { Question } from '../../../practice/questions/types.ts';
import { drawQuestion } from '../../lesson/self-check/drawQuestion.ts';
import type { QuestionDrawing } from '../../lesson/self-check/questionDrawing.ts';

/** A question with its drawing, if it asks about one. */
export interface DrawnQuestion {
  readonly question: Question;
  readonly drawing: QuestionDrawing | undefined;
}

export function drawn(question: Question): DrawnQuestion {
  return { question, drawing: drawQuestion(question) };
}
