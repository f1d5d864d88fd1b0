import { nameOf, stateInWords } from '../../practice/progress/inWords.ts';
import { type LessonState, lastLesson, lessonState } from '../../practice/progress/lessonState.ts';
import { log } from './log.ts';

interface Entry {
  readonly id: string;
  readonly questions: readonly string[];
  /** Where its state is said. */
  readonly place: HTMLElement;
  readonly link: HTMLAnchorElement;
  readonly number: string;
}

/** Says on the contents page how far the reader is with each lesson, and where to go on. */
export async function showContents(): Promise<void> {
  const entries = [...document.querySelectorAll<HTMLElement>('.entry[data-lesson]')].map(entryOf);
  const goOn = document.querySelector<HTMLElement>('.go-on');
  if (!goOn) return;

  const show = () => {
    const states = entries.map((entry) => {
      const state = lessonState(log.events, entry.id, entry.questions);
      say(entry.place, state, entry.questions.length);
      return { entry, state };
    });

    const last = states.findIndex(({ entry }) => entry.id === lastLesson(log.events));
    const open = ({ state }: { state: LessonState }) => state.state !== 'finished';
    const here = states[last];
    // Where the reader stopped; from a finished lesson, to the next that isn't.
    const next =
      here && open(here) ? here : (states.slice(last + 1).find(open) ?? states.find(open));
    const name = nameOf(log.events);
    const heading = goOn.querySelector('h2')!;
    const link = goOn.querySelector('a')!;
    const says = goOn.querySelector('[data-says]')!;
    heading.textContent = !here
      ? `Begin here${name && `, ${name}`}`
      : next
        ? `Go on where you stopped${name && `, ${name}`}`
        : `Everything is finished${name && `, ${name}`}`;
    const { entry, state } = next ?? here ?? states[0]!;
    link.href = entry.link.href;
    link.textContent = `${entry.number} ${entry.link.textContent}`;
    says.textContent = !here
      ? 'The lessons build on each other.'
      : !next
        ? 'Go through any lesson again.'
        : next === here
          ? `${stateInWords(state, entry.questions.length)}.`
          : `${here.entry.number} ${here.entry.link.textContent} is finished.`;
  };

  await log.open();
  log.listen(show);
  show();
}

function entryOf(element: HTMLElement): Entry {
  return {
    id: element.dataset['lesson']!,
    questions: (element.dataset['questions'] ?? '').split(' ').filter(Boolean),
    place: element.querySelector<HTMLElement>('[data-state]')!,
    link: element.querySelector('a')!,
    number: element.querySelector('.entry-number')!.textContent,
  };
}

function say(place: HTMLElement, state: LessonState, questions: number): void {
  const sign = document.createElement('span');
  sign.className = 'lesson-sign';
  sign.dataset['state'] = state.state;
  sign.ariaHidden = 'true';
  const signedOff = state.signedOff ? ', signed off' : '';
  place.replaceChildren(sign, `${stateInWords(state, questions)}${signedOff}`);
  place.hidden = false;
}
