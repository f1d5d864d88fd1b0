import { diameterOfPin } from '../../../core/fit/fit.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import { difference, product, quantity, quotient, sum } from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import type { WorkingStep } from '../../../core/working/types.ts';
import { named } from '../numbers.ts';
import { calculation, joint, length, optional, setting } from './calculation.ts';

/**
 * Whether three pins agree, along the row alone: by hand, from how far the second and the third
 * hole lie from the first in either board.
 */
export const agreementOf = calculation(
  {
    joint: setting(joint),
    /** The pins by caliper; else they are taken a little under their name. */
    measured: optional(length),
    /** From the first hole to the second it is so much farther in B than in A. */
    secondFarther: setting(length),
    /** From the first hole to the third it is so much less far in B than in A. */
    thirdNearer: setting(length),
    /** How far the guide drills off the middle of the board. */
    guideOff: setting(length),
  },
  ({ joint: spec, measured, secondFarther, thirdNearer, guideOff }) => {
    const plan = planJoint(spec);
    const hole = plan.spec.bit.diameter;
    const pin = diameterOfPin({
      diameter: plan.pin?.diameter ?? hole,
      ...(measured !== undefined && { measured }),
    });
    const toASide = quotient(
      difference(quantity('D', hole, 'fine'), quantity('d', pin, 'fine')),
      2,
    );
    const step = (id: string, label: string, symbol: string, formula: WorkingStep['formula']) =>
      reckon({ id, label, symbol, formula, unit: 'fine', source: 'geometry' });
    const play = step(
      'play',
      'Play of a pin to any side, both holes together',
      'r',
      sum(toASide, toASide),
    );
    const room = step(
      'room',
      'The most that two pins may disagree',
      'room',
      product(2, taken(play)),
    );
    const second = step(
      'second',
      'Pins 1 and 2 disagree by',
      'u_12',
      quantity('farther', secondFarther, 'fine'),
    );
    const third = step(
      'third',
      'Pins 1 and 3 disagree by',
      'u_13',
      quantity('nearer', thirdNearer, 'fine'),
    );
    const apart = step(
      'apart',
      'Pins 2 and 3 disagree by',
      'u_23',
      sum(taken(second), taken(third)),
    );
    const short = step(
      'short',
      'What they lack to go in',
      'lack',
      difference(taken(apart), taken(room)),
    );
    // Boards of one thickness, A drilled from its marked face and B from the other.
    const middle = quotient(quantity('t', plan.spec.a.thickness), 2);
    const off = quantity('off', guideOff);
    const place = (id: string, label: string, symbol: string, formula: WorkingStep['formula']) =>
      reckon({ id, label, symbol, formula, source: 'geometry' });
    const inA = place('inA', 'From the marked face to the holes of A', 'y_A', sum(middle, off));
    const inB = place(
      'inB',
      'From the marked face to the holes of B',
      'y_B',
      difference(middle, off),
    );
    const proud = place(
      'proud',
      'Step between the faces with one board turned over',
      'step',
      difference(taken(inA), taken(inB)),
    );
    return {
      ...named(
        [
          ['hole', 'D', hole],
          ['pin', 'd', pin],
          ['guideOff', 'off', guideOff],
          ['clearance', 'clearance', hole - pin, 'fine'],
        ],
        [play, room, second, third, apart, short, inA, inB, proud],
      ),
      errors: [],
    };
  },
);
