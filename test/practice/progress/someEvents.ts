import fc from 'fast-check';
import type { Deed, ProgressEvent } from '../../../src/practice/progress/events.ts';

/** The learner of an event that names none. */
export const LEARNER = 'a'.repeat(24);

/** Events one minute apart, with ids that tell their places: '…0', '…1'. */
export function eventsOf(
  deeds: readonly (Deed & { readonly learner?: string })[],
): readonly ProgressEvent[] {
  return deeds.map((deed, i) => ({
    version: 1,
    id: i.toString(16).padStart(24, '0'),
    learner: LEARNER,
    at: Date.UTC(2026, 10, 2, 9, i),
    calc: 1,
    bank: 1,
    ...deed,
  }));
}

/** An answer to a question of one of several. */
export function answer(question: string, right: boolean, mistakes: readonly string[] = []) {
  return {
    kind: 'answer',
    question,
    given: { kind: 'one', choices: ['half'] },
    right,
    mistakes,
  } as const;
}

/** An answer to a made question. */
export function madeAnswer(
  template: string,
  seed: number,
  right: boolean,
  level: 'example' | 'blank' | 'own' = 'own',
) {
  return {
    ...answer(`${template}@1:${seed}`, right),
    made: { template, revision: 1, seed, system: 'in', level },
  } as const;
}

const hexId = fc.stringMatching(/^[\da-f]{24}$/);
const name = fc.stringMatching(/^[a-z][a-z\d-]{0,30}$/);
const choiceIds = fc.array(fc.string({ minLength: 1, maxLength: 20 }), { maxLength: 6 });

const given = fc.oneof(
  fc.record({ kind: fc.constantFrom('one', 'several', 'fault'), choices: choiceIds }),
  fc.record({ kind: fc.constant('order'), steps: choiceIds }),
  fc.record({
    kind: fc.constantFrom('length', 'rule'),
    text: fc.string({ maxLength: 40 }),
    unit: fc.constantFrom('in', 'mm'),
  }),
);

const made = fc.record({
  template: name,
  revision: fc.integer({ min: 1, max: 9 }),
  seed: fc.integer({ min: 0, max: 2 ** 32 - 1 }),
  system: fc.constantFrom('in', 'mm'),
  level: fc.constantFrom('example', 'blank', 'own'),
});

const marked = { given, right: fc.boolean(), mistakes: fc.array(name, { maxLength: 3 }) };

const deed = fc.oneof(
  fc
    .tuple(name, name, fc.record(marked))
    .map(([lesson, id, rest]) => ({ kind: 'answer', question: `${lesson}/${id}@1`, ...rest })),
  fc.tuple(made, fc.record(marked)).map(([from, rest]) => ({
    kind: 'answer',
    question: `${from.template}@${from.revision}:${from.seed}`,
    made: from,
    ...rest,
  })),
  fc.record({ kind: fc.constantFrom('opened', 'finished'), lesson: name }),
  fc.record({
    kind: fc.constant('sign-off'),
    lesson: name,
    bench: fc.constantFrom('', 'Bench 3'),
    seen: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('name'), name: fc.constantFrom('Bench 3', 'Bench 12') }),
);

/** Any event that the workbook keeps. */
export const anyEvent = fc
  .tuple(
    fc.record({
      version: fc.constant(1),
      id: hexId,
      learner: hexId,
      at: fc.integer({ min: 0, max: Date.UTC(2026, 11, 1) }),
      calc: fc.integer({ min: 1, max: 9 }),
      bank: fc.integer({ min: 1, max: 9 }),
    }),
    deed,
  )
  .map(([happened, done]) => ({ ...happened, ...done }) as unknown as ProgressEvent);

/** Events of which no two have the same id. */
export const anyEvents = fc.uniqueArray(anyEvent, { selector: ({ id }) => id, maxLength: 12 });
