import { dayOf, nameOf, stateInWords } from '../../practice/progress/inWords.ts';
import { lastLesson, lessonState } from '../../practice/progress/lessonState.ts';
import { signOffBoxes } from '../lesson/shop-task/signOffBoxes.ts';
import { log } from './log.ts';

/**
 * Fills in the line of LessonProgress.astro and the boxes of the tasks in the shop, and keeps that
 * the lesson was opened and finished.
 */
export async function showLessonProgress(): Promise<void> {
  const line = document.querySelector<HTMLElement>('.lesson-progress');
  // A learning system's package keeps no log: the learning system does.
  if (!line || document.documentElement.dataset['package'] !== undefined) return;
  const lesson = line.dataset['lesson']!;
  const questions = line.dataset['questions']!.split(' ').filter(Boolean);
  const part = (name: string) => line.querySelector<HTMLElement>(`[data-${name}]`)!;
  const showBoxes = signOffBoxes(lesson);

  const show = () => {
    const state = lessonState(log.events, lesson, questions);
    const name = nameOf(log.events);
    part('state').dataset['state'] = state.state;
    part('says').textContent =
      `Self-check: ${stateInWords(state, questions.length)}` +
      (state.signedOff ? `. Signed off ${dayOf(state.signedOff.at)}` : '');
    part('learner').textContent = name && `${name} · `;
    showBoxes(state, name);
    const noted = log.events.some((event) => event.kind === 'finished' && event.lesson === lesson);
    // Kept as a fact of its own: a question that is added or changed later doesn't take it away.
    if (state.state === 'finished' && !noted) void log.append({ kind: 'finished', lesson });
  };

  await log.open();
  // A reload of the lesson at which the reader is anyway tells nothing new.
  if (lastLesson(log.events) !== lesson) void log.append({ kind: 'opened', lesson });
  log.listen(show);
  show();
}
