import type { JointPlan, Pin } from '../../core/joint/types.ts';
import { type Reading, reading } from '../drafting/reading.ts';
import type { Measure } from './shapes.ts';

/** A pin by its diameter and length: 'Ø3/8 × 1 1/2'. */
export function pinText(pin: Pin): Reading {
  return reading((length) => `Ø${length(pin.diameter)}\u00a0×\u00a0${length(pin.length)}`);
}

/** Wood left behind a hole, or how far the bit came through. */
export function woodLeftText(woodLeft: number): Reading {
  return woodLeft < 0
    ? reading((length) => `${length(-woodLeft)} through`)
    : reading((length) => length(woodLeft));
}

/** Where the lines of a joint's two members lie, in mm. */
export interface MemberLines {
  readonly axisY: number;
  readonly jointTop: number;
  readonly bottomA: number;
  readonly bottomB: number;
  /** How far B is moved from home. */
  readonly shiftB: number;
  readonly home: boolean;
  readonly farA: { readonly at: number; readonly whole: boolean };
  readonly limitB: number;
  readonly showLeftB: boolean;
  readonly farB: { readonly at: number; readonly whole: boolean } | null;
}

/** Pin held, hole depth and wood left of both members, in mm. */
export function memberMeasures(plan: JointPlan, lines: MemberLines): Measure[] {
  const { a, b, spec } = plan;
  const { axisY, shiftB } = lines;
  const pinRadius = (plan.pin?.diameter ?? 0) / 2;
  const radius = spec.bit.diameter / 2;
  const out: Measure[] = [];
  const add = (measure: Omit<Measure, 'text'> & { text?: Reading }) => {
    if (measure.value > 0 || measure.text !== undefined) {
      out.push({ text: reading((length) => length(measure.value)), ...measure });
    }
  };
  if (lines.home) {
    const joint = { x: 0, y: lines.jointTop };
    add({
      id: 'a.engagement',
      value: a.engagement,
      from: { x: -a.engagement, y: axisY - pinRadius },
      to: joint,
      side: 'above',
      tier: 0,
      outside: 'before',
    });
    add({
      id: 'b.engagement',
      value: b.engagement,
      from: joint,
      to: { x: b.engagement, y: axisY - pinRadius },
      side: 'above',
      tier: 0,
      outside: 'after',
    });
  }
  add({
    id: 'a.holeDepth',
    value: a.holeDepth,
    from: { x: -a.holeDepth, y: axisY + radius },
    to: { x: 0, y: lines.home ? Math.max(lines.bottomA, lines.bottomB) : lines.bottomA },
    side: 'below',
    tier: 0,
    outside: 'before',
  });
  add({
    id: 'b.holeDepth',
    value: b.holeDepth,
    from: { x: shiftB, y: lines.home ? Math.max(lines.bottomA, lines.bottomB) : lines.bottomB },
    to: { x: shiftB + b.holeDepth, y: axisY + radius },
    side: 'below',
    tier: 0,
    outside: 'after',
  });
  const tipA = -(a.holeDepth + spec.bit.tip);
  if (a.holeDepth > 0) {
    const far = { x: -(lines.farA.whole ? a.limit : lines.farA.at), y: lines.bottomA };
    const point = { x: tipA, y: axisY };
    const [from, to] = far.x <= tipA ? [far, point] : [point, far];
    add({
      id: 'a.woodLeft',
      value: a.woodLeft,
      text: woodLeftText(a.woodLeft),
      from,
      to,
      side: 'below',
      tier: 1,
      outside: 'before',
      ...(!lines.farA.whole && { openAt: 'from' as const }),
      ...(a.woodLeft < 0 && { caution: true }),
    });
  }
  const tipB = shiftB + b.holeDepth + spec.bit.tip;
  if (b.holeDepth > 0) {
    const whole = lines.farB?.whole ?? true;
    const far = { x: shiftB + (whole ? lines.limitB : lines.farB!.at), y: lines.bottomB };
    const point = { x: tipB, y: axisY };
    const [from, to] = tipB <= far.x ? [point, far] : [far, point];
    add({
      id: 'b.woodLeft',
      value: b.woodLeft,
      text: woodLeftText(b.woodLeft),
      from,
      to,
      side: 'below',
      tier: 1,
      outside: 'after',
      ...(!whole && { openAt: 'to' as const }),
      ...(b.woodLeft < 0 && { caution: true }),
    });
  }
  return out;
}
