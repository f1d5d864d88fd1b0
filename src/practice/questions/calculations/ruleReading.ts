import {
  type Expression,
  difference,
  product,
  quantity,
  quotient,
  sum,
} from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { calculation, count, length, optional, setting } from './calculation.ts';

/** A board on a rule: read by the last number and the marks past it, in the rule's own unit. */
export const ruleReadingOf = calculation(
  {
    rule: setting((entry) => entry.oneOf(['inches', 'millimeters'])),
    /** From one of the smallest marks to the next. */
    division: setting(length),
    /** What the last number before the board's end stands for. */
    number: setting(length),
    marks: setting(count),
    /** Where on the rule the board starts, if not at its end. */
    start: optional(length),
  },
  ({ rule: unit, division, number, marks, start = 0 }) => {
    const step = (id: string, label: string, formula: Expression) =>
      reckon({ id, label, symbol: id, formula, unit, source: 'geometry' });
    const past = step(
      'past',
      "From the last number to the board's end",
      product(quantity('marks', marks, 'count'), quantity('division', division, unit)),
    );
    const line = step(
      'line',
      'What the rule shows',
      sum(quantity('number', number, unit), taken(past)),
    );
    const board = step(
      'board',
      'Length of the board',
      difference(taken(line), quantity('start', start, unit)),
    );
    const half = step('half', 'Half of the board', quotient(taken(board), 2));
    return {
      ...named(
        [
          ['division', 'division', division, unit],
          ['number', 'number', number, unit],
          ['marks', 'marks', marks, 'count'],
          ['start', 'start', start, unit],
        ],
        [past, line, board, half],
      ),
      errors: [],
    };
  },
);
