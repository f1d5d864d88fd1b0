import {
  type LetteredDepth,
  arrangeDrilledDepths,
  describeDrilledDepths,
} from '../../../diagrams/fault/drilledDepths.ts';
import { BALLOON_LETTERS } from '../../../diagrams/fault/balloon.ts';
import {
  type LetteredHole,
  arrangeMarkedRow,
  describeMarkedRow,
} from '../../../diagrams/fault/markedRow.ts';
import { arrangeRule } from '../../../diagrams/rule/arrange.ts';
import { describeRule } from '../../../diagrams/rule/describe.ts';
import { benchSetup } from '../../../practice/questions/drawnSetup.ts';
import type { FaultQuestion, Question, RuleQuestion } from '../../../practice/questions/types.ts';
import type { QuestionDrawing } from './questionDrawing.ts';

function drawFault({ drawing, choices }: FaultQuestion): QuestionDrawing {
  const setup = benchSetup(drawing.setup);
  const lettered = choices.map(({ id, at }, i) => ({ id, at, letter: BALLOON_LETTERS[i]! }));
  const inRow = drawing.view === 'row';
  const { sheet, spots } = inRow
    ? arrangeMarkedRow(
        setup,
        lettered.flatMap(({ at, letter }): LetteredHole[] =>
          at.part === 'hole' ? [{ ...at, letter }] : [],
        ),
      )
    : arrangeDrilledDepths(
        setup,
        lettered.flatMap(({ at, letter }): LetteredDepth[] =>
          at.part === 'depth' ? [{ ...at, letter }] : [],
        ),
      );
  return {
    title: inRow
      ? 'Both boards with their holes as marked, seen on the faces that meet'
      : 'Both boards drilled, cut along a hole in each',
    description: inRow ? describeMarkedRow(setup) : describeDrilledDepths(setup),
    sheets: [sheet],
    spots: Object.fromEntries(
      lettered.flatMap(({ id, letter }) => {
        const spot = spots.find((each) => each.letter === letter);
        return spot ? [[id, spot]] : [];
      }),
    ),
  };
}

function drawRule({ rule }: RuleQuestion): QuestionDrawing {
  return {
    title: 'A rule with a line across its edge',
    description: describeRule(rule, false),
    sheets: [arrangeRule(rule, 300), arrangeRule(rule, 600)],
    spots: {},
  };
}

/** The drawing that a question asks about; undefined where it needs none. */
export function drawQuestion(question: Question): QuestionDrawing | undefined {
  if (question.kind === 'fault') return drawFault(question);
  return question.kind === 'rule' ? drawRule(question) : undefined;
}
