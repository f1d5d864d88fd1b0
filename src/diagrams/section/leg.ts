import type { JointPlan } from '../../core/joint/types.ts';
import { reading } from '../drafting/reading.ts';
import { boreOf, dowelOf, pose } from './bore.ts';
import { pinText, woodLeftText } from './measures.ts';
import { ROW_NAMES } from './rowNames.ts';
import type { Body, Measure, SectionShapes } from './shapes.ts';

const CLEAR = 8;

/** True where the cut through the first apron's pin also meets a pin of the second. */
function rowsMeet(plan: JointPlan): boolean {
  const height = plan.positions[0] ?? 0;
  return plan.secondRow.some((other) => Math.abs(other - height) < plan.spec.bit.diameter / 2);
}

/**
 * A leg with its two aprons from above, cut along a pin of apron A, in mm: x runs along that pin
 * with the joint at 0, y inward from A's outer face. The second apron comes from below; where its
 * pins lie at another height they are dashed.
 */
export function legSection(plan: JointPlan, apart: number): SectionShapes {
  const { spec, a, b, pin } = plan;
  const side = spec.b.thickness;
  const t = spec.a.thickness;
  const { setback } = spec;
  const length = pin?.length ?? 0;
  const away = apart * (length + 2 * CLEAR);
  const pinAway = apart * (b.engagement + CLEAR);
  const axisY = plan.holes[0]?.acrossA ?? t / 2;
  const near = side - setback;
  const axisX = near - axisY;
  const reach = a.holeDepth + spec.bit.tip;
  const shown = reach + Math.max(8, t * 0.5);
  const shownSecond = reach + Math.max(14, t * 0.7);
  const hiddenRow = !rowsMeet(plan);

  const bodies: Body[] = [
    {
      member: 'b',
      outline: [
        { x: 0, y: -setback },
        { x: side, y: -setback },
        { x: side, y: near },
        { x: 0, y: near },
      ],
      breaks: [],
      grain: 'end',
      angle: 45,
      letter: {
        text: 'B',
        at: {
          x: side - Math.min(setback + t, side) * 0.22,
          y: -setback + Math.min(setback + t, side) * 0.22,
        },
      },
    },
    {
      member: 'a',
      outline: [
        { x: -away, y: 0 },
        { x: -away, y: t },
        { x: -away - shown, y: t },
        { x: -away - shown, y: 0 },
      ],
      breaks: [2],
      grain: 'long',
      angle: 0,
      letter: { text: 'A', at: { x: -away - (reach + shown) / 2, y: axisY } },
    },
    {
      member: 'second',
      outline: [
        { x: near, y: near + away },
        { x: near, y: near + away + shownSecond },
        { x: near - t, y: near + away + shownSecond },
        { x: near - t, y: near + away },
      ],
      breaks: [1],
      grain: 'long',
      angle: 90,
      letter: { text: 'A2', at: { x: axisX, y: near + away + (reach + shownSecond) / 2 } },
    },
  ];

  const bores = [
    boreOf(plan, 'a', pose({ x: -away, y: axisY }, 180), (p) =>
      Math.min(p.x + away + a.limit, p.y, t - p.y),
    ),
    boreOf(plan, 'b', pose({ x: 0, y: axisY }, 0), (p) =>
      Math.min(b.limit - p.x, side - p.x, p.y + setback, near - p.y),
    ),
    boreOf(
      plan,
      'b',
      pose({ x: axisX, y: near }, -90),
      (p) => Math.min(p.y - near + b.limit, p.y + setback, p.x, side - p.x),
      hiddenRow,
    ),
    boreOf(
      plan,
      'second',
      pose({ x: axisX, y: near + away }, 90),
      (p) => Math.min(near + away + a.limit - p.y, near - p.x, p.x - near + t),
      hiddenRow,
    ),
  ].filter((bore) => bore !== null);
  const hasPins = pin !== null && pin.diameter > 0 && pin.length > 0;
  const dowels = hasPins
    ? [
        dowelOf(
          pin.diameter,
          pose({ x: -pinAway, y: axisY }, 0),
          -a.engagement,
          pin.length - a.engagement,
        ),
        dowelOf(
          pin.diameter,
          pose({ x: axisX, y: near + pinAway }, 90),
          -b.engagement,
          pin.length - b.engagement,
          hiddenRow,
        ),
      ]
    : [];

  const measures: Measure[] = [];
  const row = (measure: Omit<Measure, 'text'>) => {
    if (measure.value > 0) {
      measures.push({ text: reading((show) => show(measure.value)), ...measure });
    }
  };
  const radius = (pin?.diameter ?? 0) / 2;
  const bit = spec.bit.diameter / 2;
  const legTop = { x: 0, y: -setback };
  if (hasPins && apart === 0) {
    row({
      id: 'a.engagement',
      value: a.engagement,
      from: { x: -a.engagement, y: axisY - radius },
      to: legTop,
      side: 'above',
      tier: 0,
      outside: 'before',
    });
    row({
      id: 'b.engagement',
      value: b.engagement,
      from: legTop,
      to: { x: b.engagement, y: axisY - radius },
      side: 'above',
      tier: 0,
      outside: 'after',
    });
  }
  // Apart, the pin's engagements make room for its length.
  const lower = apart > 0 ? 0 : 1;
  if (hasPins && apart > 0) {
    measures.push({
      id: 'pin',
      value: pin.length,
      text: pinText(pin),
      from: { x: -pinAway - a.engagement, y: axisY - radius },
      to: { x: -pinAway + b.engagement, y: axisY - radius },
      side: 'above',
      tier: 2,
      outside: 'over',
    });
  }
  row({
    id: 'a.holeDepth',
    value: a.holeDepth,
    from: { x: -away - a.holeDepth, y: axisY - bit },
    to: apart === 0 ? legTop : { x: -away, y: 0 },
    side: 'above',
    tier: lower,
    outside: 'before',
  });
  row({
    id: 'b.holeDepth',
    value: b.holeDepth,
    from: legTop,
    to: { x: b.holeDepth, y: axisY - bit },
    side: 'above',
    tier: lower,
    outside: 'after',
  });
  if (a.holeDepth > 0) {
    measures.push({
      id: 'a.woodLeft',
      value: a.woodLeft,
      text: woodLeftText(a.woodLeft),
      from: { x: -away - shown, y: 0 },
      to: { x: -away - reach, y: axisY },
      side: 'above',
      tier: lower + 1,
      outside: 'before',
      openAt: 'from',
    });
  }
  if (b.holeDepth > 0) {
    const point = { x: b.holeDepth + spec.bit.tip, y: axisY };
    const limit = { x: b.limit, y: b.limit < side ? near - b.holeDepth : -setback };
    const [from, to] = point.x <= limit.x ? [point, limit] : [limit, point];
    measures.push({
      id: 'b.woodLeft',
      value: b.woodLeft,
      text: woodLeftText(b.woodLeft),
      from,
      to,
      side: 'above',
      tier: lower + 1,
      outside: 'after',
      ...(b.woodLeft < 0 && { caution: true }),
    });
  }
  row({
    id: 'a.thickness',
    value: t,
    from: { x: -away - shown, y: 0 },
    to: { x: -away - shown, y: t },
    side: 'left',
    tier: 0,
    outside: 'before',
  });
  row({
    id: 'b.thickness',
    value: side,
    from: { x: side, y: -setback },
    to: { x: side, y: near },
    side: 'right',
    tier: 0,
    outside: 'after',
  });

  return {
    bodies,
    bores,
    dowels,
    axes: hasPins
      ? [
          [
            { x: -away - reach, y: axisY },
            { x: b.holeDepth + spec.bit.tip, y: axisY },
          ],
          [
            { x: axisX, y: near - b.holeDepth - spec.bit.tip },
            { x: axisX, y: near + away + reach },
          ],
        ]
      : [],
    measures,
    steps:
      apart > 0 || setback < 1e-6
        ? []
        : [
            {
              id: 'setback',
              value: setback,
              text: reading((show) => show(setback)),
              x: 0,
              from: -setback,
              to: 0,
            },
          ],
    slanted: [],
    notes:
      hasPins && apart === 0
        ? [
            {
              text: pinText(pin),
              at: { x: 0, y: t },
              dx: -12,
              dy: 30,
              anchor: 'end',
              kind: 'number',
              leader: { x: -a.engagement / 2, y: axisY + radius / 2 },
            },
          ]
        : [],
    rowNames:
      apart > 0
        ? { 'above 0': ROW_NAMES.hole, 'above 1': ROW_NAMES.left, 'above 2': ROW_NAMES.pin }
        : { 'above 0': ROW_NAMES.held, 'above 1': ROW_NAMES.hole, 'above 2': ROW_NAMES.left },
    marks: [
      { kind: 'face', at: { x: -away - (a.engagement + shown) / 2, y: 0 }, turn: 0 },
      { kind: 'face', at: { x: near, y: near + away + (a.engagement + shown) / 2 }, turn: 90 },
    ],
    cautions:
      bores.some((bore) => bore.member === 'b' && bore.through.length > 0) && b.woodLeft < 0
        ? [{ x: b.holeDepth + spec.bit.tip, y: axisY }]
        : [],
  };
}
