import { nameOf, stateInWords } from '../../practice/progress/inWords.ts';
import { type LessonState, lastLesson, lessonState } from '../../practice/progress/lessonState.ts';
import { type Reviewable, dueForReview } from '../../practice/review/due.ts';
import { log } from './log.ts';

/** A lesson's line of the contents. */
interface Entry {
  readonly id: string;
  readonly questions: readonly string[];
  readonly reviewed: readonly Reviewable[];
  /** Where its state is said. */
  readonly place: HTMLElement;
  readonly address: string;
  /** '2.2 Splitting the depth'. */
  readonly name: string;
}

interface Standing {
  readonly entry: Entry;
  readonly state: LessonState;
}

/** Says on the contents page how far the reader is with each lesson, where to go on, what is due. */
export async function showContents(): Promise<void> {
  const entries = [...document.querySelectorAll<HTMLElement>('.entry[data-lesson]')].map(entryOf);
  const goOn = document.querySelector<HTMLElement>('.go-on');
  if (!goOn) return;

  const show = () => {
    const standings = entries.map((entry) => ({
      entry,
      state: lessonState(log.events, entry.id, entry.questions),
    }));
    for (const { entry, state } of standings) showState(entry, state);
    showWhere(goOn, standings);
    showDue(goOn, entries);
  };

  await log.open();
  log.listen(show);
  show();
}

function entryOf(element: HTMLElement): Entry {
  const id = element.dataset['lesson']!;
  const list = (name: string) => (element.dataset[name] ?? '').split(' ').filter(Boolean);
  const link = element.querySelector('a')!;
  return {
    id,
    questions: list('questions'),
    reviewed: list('reviewed').map((each) => ({ id: each, lesson: id })),
    place: element.querySelector<HTMLElement>('[data-state]')!,
    address: link.href,
    name: `${element.querySelector('.entry-number')!.textContent} ${link.textContent}`,
  };
}

function showState({ place, questions }: Entry, state: LessonState): void {
  const sign = document.createElement('span');
  sign.className = 'lesson-sign';
  sign.dataset['state'] = state.state;
  sign.ariaHidden = 'true';
  const signedOff = state.signedOff ? ', signed off' : '';
  place.replaceChildren(sign, `${stateInWords(state, questions.length)}${signedOff}`);
  place.hidden = false;
}

/** Where the reader stopped; from a finished lesson on, the next that is not. */
function showWhere(goOn: HTMLElement, standings: readonly Standing[]): void {
  const at = standings.findIndex(({ entry }) => entry.id === lastLesson(log.events));
  const open = ({ state }: Standing) => state.state !== 'finished';
  const here = standings[at];
  const next = [...standings.slice(Math.max(at, 0)), ...standings].find(open);
  const { entry, state } = next ?? here!;
  const [heading, says] = !here
    ? ['Begin here', 'The lessons build on each other.']
    : !next
      ? ['Everything is finished', 'Go through any lesson again.']
      : next === here
        ? ['Go on where you stopped', `${stateInWords(state, entry.questions.length)}.`]
        : ['Go on where you stopped', `${here.entry.name} is finished.`];
  const name = nameOf(log.events);
  goOn.querySelector('h2')!.textContent = name === '' ? heading! : `${heading}, ${name}`;
  goOn.querySelector('[data-says]')!.textContent = says!;
  const link = goOn.querySelector('a')!;
  link.href = entry.address;
  link.textContent = entry.name;
}

function showDue(goOn: HTMLElement, entries: readonly Entry[]): void {
  const known = entries.flatMap(({ reviewed }) => reviewed);
  const due = dueForReview(log.events, Date.now(), known);
  const missed = due.filter((each) => each.missed).length;
  const count = due.length === 1 ? 'One question is due' : `${due.length} questions are due`;
  const which =
    missed === 0
      ? ''
      : missed === due.length
        ? ' that you missed'
        : `, ${missed === 1 ? 'one' : missed} of them missed before`;
  const line = goOn.querySelector<HTMLElement>('[data-due]')!;
  line.hidden = due.length === 0;
  line.querySelector('span')!.textContent = `${count}${which}.`;
}
