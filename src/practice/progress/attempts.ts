import { type AnswerEvent, type ProgressEvent, partsOf } from './events.ts';

/** What became of a question: every answer to it, the first one first. */
export interface Attempts {
  /** Its identity, with its revision and seed. */
  readonly question: string;
  readonly answers: readonly AnswerEvent[];
}

/**
 * Every question that was answered, in the order of the first answers.
 * @param events of one learner, in the order in which they happened
 */
export function attemptsOf(events: readonly ProgressEvent[]): readonly Attempts[] {
  const found = new Map<string, AnswerEvent[]>();
  for (const event of events) {
    if (event.kind !== 'answer') continue;
    const answers = found.get(event.question);
    if (answers) answers.push(event);
    else found.set(event.question, [event]);
  }
  return [...found].map(([question, answers]) => ({ question, answers }));
}

/** How a learner does with the questions of one template. */
export interface Accuracy {
  /** How many of its questions were answered. */
  readonly asked: number;
  /** How many of them were right at the first try. */
  readonly right: number;
  /** Whether the first try was right, for each of the questions, the latest first. */
  readonly lately: readonly boolean[];
}

/**
 * How a learner does, by template, in the questions that were asked without help. What is right
 * only at the second try has been explained before.
 * @param events of one learner, in the order in which they happened
 */
export function accuracyOf(events: readonly ProgressEvent[]): ReadonlyMap<string, Accuracy> {
  const found = new Map<string, Accuracy>();
  for (const { question, answers } of attemptsOf(events)) {
    const [first] = answers;
    const template = first?.made?.level === 'own' ? partsOf(question)?.id : undefined;
    if (!first || template === undefined) continue;
    const { asked, right, lately } = found.get(template) ?? { asked: 0, right: 0, lately: [] };
    found.set(template, {
      asked: asked + 1,
      right: right + (first.right ? 1 : 0),
      lately: [first.right, ...lately],
    });
  }
  return found;
}
