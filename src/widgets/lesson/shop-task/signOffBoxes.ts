import { dayOf } from '../../../practice/progress/inWords.ts';
import type { LessonState } from '../../../practice/progress/lessonState.ts';
import { recordSignOff } from '../../progress/record.ts';

/**
 * Brings the boxes of ShopTask.astro to life: a tick is kept.
 * @returns what shows in them how it stands
 */
export function signOffBoxes(lesson: string): (state: LessonState, learner: string) => void {
  const typed = new Set<HTMLInputElement>();
  const boxes = [...document.querySelectorAll<HTMLElement>('.sign-off')].map((box) => {
    const [bench, seen] = box.querySelectorAll('input') as ArrayLike<HTMLInputElement> as [
      HTMLInputElement,
      HTMLInputElement,
    ];
    bench.addEventListener('input', () => typed.add(bench));
    seen.addEventListener('change', () => recordSignOff(lesson, bench.value, seen.checked));
    return { bench, seen, day: box.querySelector('[data-day]')! };
  });

  return ({ signedOff }, learner) => {
    for (const { bench, seen, day } of boxes) {
      seen.disabled = false;
      seen.checked = bench.disabled = signedOff !== undefined;
      if (signedOff) bench.value = signedOff.bench;
      else if (!typed.has(bench)) bench.value = learner;
      day.textContent = signedOff ? dayOf(signedOff.at) : '';
    }
  };
}
