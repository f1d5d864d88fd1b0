import type { System } from '../../core/joint/types.ts';
import { partsOf } from '../progress/events.ts';
import { LEVELS, type Level, type Question } from '../questions/types.ts';

/** One question, as a link names it. */
export type LinkedQuestion =
  | {
      readonly kind: 'made';
      readonly template: string;
      readonly seed: number;
      readonly system: System;
      readonly level: Level;
    }
  | { readonly kind: 'lesson'; readonly lesson: string; readonly id: string };

/** Seeds are whole numbers of 32 bits. */
const LARGEST_SEED = 0xffff_ffff;

/**
 * The fragment of a link to a question: `#try=stop-for-a-board:7`, and where they are not the usual
 * ones `;system=mm` and `;level=blank`; `#try=setting-the-stop/set-it` for a question of a lesson.
 * A class's limits don't travel: whoever follows the link may not be of the class.
 */
export function questionLink({ identity, made }: Question): string {
  if (!made) {
    const parts = partsOf(identity);
    return `#try=${parts?.lesson}/${parts?.id}`;
  }
  const { template, seed, system, level } = made;
  const others = [
    ...(system === 'in' ? [] : [`system=${system}`]),
    ...(level === 'own' ? [] : [`level=${level}`]),
  ];
  return `#${[`try=${template}:${seed}`, ...others].join(';')}`;
}

/**
 * Reads the fragment of a link.
 * @returns null where it is not about a question, or a sentence where it can't be read
 */
export function readQuestionLink(fragment: string): LinkedQuestion | string | null {
  const fields = new Map(
    fragment
      .replace(/^#/, '')
      .split(';')
      .map((field) => {
        const [name = '', ...value] = field.split('=');
        return [name, value.join('=')] as const;
      }),
  );
  const named = fields.get('try');
  if (named === undefined) return null;
  const [, lesson, id] = /^([a-z\d-]+)\/([a-z\d-]+)$/.exec(named) ?? [];
  if (lesson !== undefined && id !== undefined) return { kind: 'lesson', lesson, id };
  const [, template, digits] = /^([a-z\d-]+):(\d{1,10})$/.exec(named) ?? [];
  const seed = Number(digits);
  if (template === undefined || !(seed <= LARGEST_SEED)) {
    return 'This link names no question: after ‘try=’ there should be a name, a colon and a number.';
  }
  const system = fields.get('system') ?? 'in';
  const level = LEVELS.find((each) => each === (fields.get('level') ?? 'own'));
  if ((system !== 'in' && system !== 'mm') || !level) {
    return 'This link asks for a unit or a level that there is not.';
  }
  return { kind: 'made', template, seed, system, level };
}
