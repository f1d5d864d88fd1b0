import { type Mm, atMost, lessThan, mm } from '../length/mm.ts';
import {
  difference,
  fixedLength,
  greatest,
  least,
  product,
  quantity,
  quotient,
  roundUp,
  sum,
} from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import { say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import { type Finding, finding } from './finding.ts';
import { defaults } from './defaults.ts';
import type { JointKind, JointSpec, LayoutRule } from './types.ts';

/** More pins than this in one joint is a slip of the keyboard. */
const MOST_PINS = 200;

/** A row of pins along the joint line. */
export interface Row {
  /** From A's reference end (miter: from the heel), mm. */
  readonly positions: readonly Mm[];
  readonly rule: Required<LayoutRule>;
  readonly cautions: readonly Finding[];
  readonly working: readonly WorkingStep[];
}

/** Least distance between pins, where the user sets none, mm. */
export function defaultMinPitch(kind: JointKind, system: JointSpec['system'], bit: Mm): Mm {
  return kind === 'frame' || kind === 'miter' || kind === 'leg'
    ? mm(2 * bit)
    : defaults[system].minPitch;
}

/** Spacing as set, with what was not set filled in, but for the margin. */
export function spacingRule(spec: JointSpec, bit: Mm): Omit<Required<LayoutRule>, 'endMargin'> {
  const usual = defaults[spec.system];
  return {
    minPitch: spec.layout?.minPitch ?? defaultMinPitch(spec.kind, spec.system, bit),
    maxPitch: spec.layout?.maxPitch ?? usual.maxPitch,
    graduation: spec.layout?.graduation ?? usual.graduation,
  };
}

/** Spreads pins evenly over a span that starts at the first pin. */
export function spreadPins(
  spec: JointSpec,
  rule: Required<LayoutRule>,
  first: WorkingStep,
  span: WorkingStep,
  bit: Mm,
): Row {
  const cautions: Finding[] = [];
  let { maxPitch } = rule;
  if (lessThan(maxPitch, rule.minPitch)) {
    cautions.push(
      finding(
        'spacing-crossed',
        'caution',
        say`The widest spacing, ${maxPitch}, is less than the closest, ${rule.minPitch}: the closest serves for both.`,
        say`Set the widest spacing to ${rule.minPitch} or more.`,
      ),
    );
    maxPitch = rule.minPitch;
  }
  let count = reckon({
    id: 'layout.count',
    label: 'Number of pins',
    symbol: 'n',
    formula: greatest(2, sum(roundUp(quotient(taken(span), quantity('P', maxPitch))), 1)),
    unit: 'count',
    source: spec.layout?.maxPitch === undefined ? 'shop-practice' : 'setting',
    rule: 'no two neighbors farther apart than the widest spacing, and never fewer than two',
  });
  if (!(count.result <= MOST_PINS)) {
    cautions.push(
      finding(
        'too-many-pins',
        'error',
        say`A spacing of ${maxPitch} would need more than ${String(MOST_PINS)} pins.`,
        say`Set a wider spacing.`,
      ),
    );
    count = reckon({
      ...count,
      formula: least(quantity('most', MOST_PINS, 'count'), count.formula),
    });
  }
  const pitch = reckon({
    id: 'layout.pitch',
    label: 'Spacing of the pins, center to center',
    symbol: 'pitch',
    formula: quotient(taken(span), difference(taken(count), 1)),
    source: 'geometry',
  });
  if (lessThan(pitch.result, bit)) {
    cautions.push(
      finding(
        'holes-overlap',
        'error',
        say`The holes would run into each other: ${pitch.result} from center to center, with a ${bit} bit.`,
        say`Set a wider spacing, a smaller end margin, or take a thinner pin.`,
      ),
    );
  } else if (lessThan(pitch.result, rule.minPitch)) {
    cautions.push(
      finding(
        'spacing-close',
        'caution',
        say`The pins stand ${pitch.result} apart, closer than the ${rule.minPitch} that is set as the least.`,
        say`Set a wider spacing.`,
      ),
    );
  }
  const positions = Array.from({ length: count.result }, (_, k) =>
    mm(first.result + k * pitch.result),
  );
  return { positions, rule, cautions, working: [count, pitch] };
}

/**
 * Places a row of pins along a joint line: the same margin at both ends and equal spacing; for
 * a leg over what the stagger of the second row leaves. Too short for two, one in the middle.
 *
 * @param line length of the joint line
 * @param bit diameter of the bit, mm
 */
export function spacePins(spec: JointSpec, line: WorkingStep, bit: Mm): Row {
  const usual = defaults[spec.system];
  const rest = spacingRule(spec, bit);
  const stagger = spec.kind === 'leg' ? (spec.stagger ?? 0) : 0;
  const free = stagger > 0 ? difference(taken(line), quantity('stagger', stagger)) : taken(line);
  const freeLength = line.result - stagger;
  const step = { id: 'layout.margin', label: 'End of the joint to the first pin', symbol: 'm' };

  let margin =
    spec.layout?.endMargin === undefined
      ? reckon({
          ...step,
          formula: least(
            fixedLength(usual.endMargin),
            greatest(product(1.5, quantity('D', bit)), quotient(taken(line), 4)),
          ),
          source: 'shop-practice',
        })
      : reckon({ ...step, formula: fixedLength(spec.layout.endMargin), source: 'setting' });
  const cautions: Finding[] = [];
  if (lessThan(freeLength - 2 * margin.result, rest.minPitch)) {
    const shrunk = reckon({
      ...step,
      formula: greatest(
        quantity('D', bit),
        quotient(difference(free, quantity('least pitch', rest.minPitch)), 2),
      ),
      source: 'shop-practice',
      rule: 'made smaller, so that two pins keep the least spacing',
    });
    if (spec.layout?.endMargin !== undefined && lessThan(shrunk.result, margin.result)) {
      cautions.push(
        finding(
          'margin-reduced',
          'note',
          say`An end margin of ${margin.result} leaves no room for two pins, so ${shrunk.result} serves.`,
          say`Set a smaller margin, or a smaller least spacing.`,
        ),
      );
    }
    margin = shrunk;
  }
  const rule = { ...rest, endMargin: mm(margin.result) };

  if (lessThan(freeLength - 2 * margin.result, rest.minPitch)) {
    const middle = reckon({
      id: 'layout.margin',
      label: 'End of the joint to the only pin',
      symbol: 'm',
      formula: quotient(free, 2),
      source: 'geometry',
      rule: 'too short for two pins: one in the middle',
    });
    cautions.push(
      finding(
        'single-pin',
        'caution',
        say`The joint is ${freeLength} long: too short for two pins ${rest.minPitch} apart. With one pin the boards can turn on it.`,
        say`Take a thinner pin or a longer joint, or keep the boards from turning while the glue sets.`,
      ),
    );
    return {
      positions: [mm(Math.max(0, middle.result))],
      rule: { ...rule, endMargin: mm(Math.max(0, middle.result)) },
      cautions,
      working: [middle],
    };
  }
  const span = reckon({
    id: 'layout.span',
    label: 'First pin to last pin',
    symbol: 's',
    formula: difference(free, product(2, taken(margin))),
    source: 'geometry',
  });
  const row = spreadPins(spec, rule, margin, span, bit);
  return {
    ...row,
    cautions: [...cautions, ...row.cautions],
    working: [margin, span, ...row.working],
  };
}

/**
 * A position as it is marked with a rule: the nearest graduation, a tie going to the even one.
 * @param position and `graduation` in mm
 * @param most the farthest that a mark may stand, mm: where the nearest lies beyond it, the last
 *   graduation before it serves
 */
export function toMark(position: Mm, graduation: Mm, most = mm(Infinity)): Mm {
  const steps = position / graduation;
  const below = Math.floor(steps);
  const rest = steps - below;
  const tie = atMost(Math.abs(rest - 0.5), 0);
  const nearest = tie ? below + (below % 2) : Math.round(steps);
  const mark = mm(Math.round(nearest * graduation * 1e9) / 1e9);
  if (atMost(mark, most)) return mark;
  return mm(Math.round(Math.floor(most / graduation + 1e-9) * graduation * 1e9) / 1e9);
}
