import { mm } from '../../../core/length/mm.ts';
import { product, quantity, sum } from '../../../core/working/expression.ts';
import { taken } from '../../../core/working/reckon.ts';
import type { DrawnRule } from '../../questions/types.ts';
import { geometry, numbersFrom } from '../numbersFrom.ts';
import type { Template } from '../template.ts';

const DIVISIONS = {
  in: [16, 16, 32, 32, 64].map((denominator) => ({
    unit: 'in',
    denominator,
  })) as readonly DrawnRule['division'][],
  mm: [
    { unit: 'mm', step: 1 },
    { unit: 'mm', step: 0.5 },
  ] as readonly DrawnRule['division'][],
} as const;

/** Numbered marks of a rule: every inch, every 10 mm. */
const NUMBERED = { in: 25.4, mm: 10 } as const;

/** Where does the line cross the rule? */
export const readTheRule: Template = {
  id: 'read-the-rule',
  revision: 1,
  lesson: 'reading-a-rule',
  joints: [],
  kind: 'rule',
  misconceptions: ['misread-the-divisions', 'counted-from-the-next', 'one-number-off'],
  draft(draws, system) {
    const division = draws.pick(DIVISIONS[system]);
    const numbered = NUMBERED[system];
    const perNumber = division.unit === 'in' ? division.denominator : 10 / division.step;
    // An odd mark: one that really needs the finest divisions.
    const marks = 2 * draws.whole(0, perNumber / 2 - 1) + 1;
    const whole = draws.whole(1, system === 'in' ? 10 : 25);
    const one = numbered / perNumber;
    const step = quantity('division', one);
    const past = geometry('past', 'From the last number to the line', 'past', product(marks, step));
    const number = quantity('number', whole * numbered);
    const line = geometry(
      'line',
      'From the end of the rule to the line',
      'line',
      sum(number, taken(past)),
    );
    const numbers = numbersFrom(
      system,
      [
        ['number', 'number', whole * numbered],
        ['next', 'next', numbered],
        ['division', 'division', one],
        ['marks', 'marks', marks, 'count'],
      ],
      [past, line],
    );
    return {
      kind: 'rule',
      numbers,
      tolerance: mm(one / 4),
      rule: {
        division,
        from: mm((whole - 1) * numbered),
        to: mm((whole + 2) * numbered),
        line: mm(line.result),
      },
      situation: `The smallest marks of this rule are {division} apart.`,
      ask: `What does it read at the line, in ${system === 'in' ? 'inches' : 'millimeters'}?`,
      answer: 'line',
      why: 'The last number before the line stands for {number}. The line is {marks} small marks beyond it: {past}.',
      hint: 'Find the last number before the line. Then count the small marks from there to the line.',
      mistakes: [
        {
          misconception: 'misread-the-divisions',
          of: 'number + 2 * past',
          why: 'You counted the marks well, but each is worth {division}, not twice that.',
        },
        {
          misconception: 'counted-from-the-next',
          of: 'number + next - past',
          why: 'You counted the marks from the number beyond the line. Count from the number before it.',
        },
        {
          misconception: 'one-number-off',
          of: 'line + next',
          why: 'The marks are right, but the last number before the line is {number}.',
        },
      ],
    };
  },
};
