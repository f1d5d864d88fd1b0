import { diameterOfPin } from '../../../core/fit/fit.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import { mm } from '../../../core/length/mm.ts';
import { closingOdds } from '../../../core/trial/closingOdds.ts';
import { named } from '../numbers.ts';
import { calculation, count, joint, length, optional, setting, yesOrNo } from './calculation.ts';

/** The odds that a row of pins goes in, when every hole is a little off its place. */
export const oddsOf = calculation(
  {
    joint: setting(joint),
    /** How many of the joint's pins go in, from its reference end; all, where it doesn't say. */
    pins: optional(count),
    /** The pins by caliper; else they are taken a little under their name. */
    measured: optional(length),
    sigmaAlong: setting(length),
    sigmaAcross: setting(length),
    /** How far all of B's holes lie off A's across the row. */
    bias: optional(length),
    flushTolerance: setting(length),
    mayTurn: setting(yesOrNo),
    trials: setting(count),
    seed: setting(count),
  },
  ({ joint: spec, pins, measured, bias, seed, ...rest }) => {
    const plan = planJoint(spec);
    const hole = plan.spec.bit.diameter;
    const pin = diameterOfPin({
      diameter: plan.pin?.diameter ?? hole,
      ...(measured !== undefined && { measured }),
    });
    // Half of the clearance in either hole, both holes together.
    const play = mm(Math.max(0, hole - pin));
    const positions = plan.positions.slice(0, pins);
    const found = closingOdds({
      ...rest,
      positions,
      radialPlay: play,
      length: plan.spec.jointLength,
      seed,
      ...(bias !== undefined && { bias: { along: mm(0), across: bias } }),
    });
    return {
      ...named([
        ['pins', 'pins', positions.length, 'count'],
        ['spacing', 'pitch', (plan.positions[1] ?? 0) - (plan.positions[0] ?? 0)],
        ['margin', 'm', plan.positions[0] ?? 0],
        ['play', 'play', play, 'fine'],
        ['clearance', 'clearance', hole - pin, 'fine'],
        ['sigmaAlong', 'σ_along', rest.sigmaAlong, 'fine'],
        ['sigmaAcross', 'σ_across', rest.sigmaAcross, 'fine'],
        ['flushTolerance', 'flush within', rest.flushTolerance, 'fine'],
        ['trials', 'trials', rest.trials, 'count'],
        ['probability', 'odds', found.probability, 'probability'],
        ['low', 'low', found.low, 'probability'],
        ['high', 'high', found.high, 'probability'],
        ['flush', 'flush', found.flush.probability, 'probability'],
        ['flushable', 'flushable', found.flushable.probability, 'probability'],
      ]),
      errors: [],
    };
  },
);
