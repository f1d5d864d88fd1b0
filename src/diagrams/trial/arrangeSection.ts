import { type Dimensions, type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { cautionSign, edgeMark, faceMark } from '../drafting/marks.ts';
import { boxAround } from '../drafting/point.ts';
import { type Unit, shownReading, words } from '../drafting/reading.ts';
import type { Measure } from '../section/shapes.ts';
import { DETAIL_WORDS, SEEN, chooseDetails, drawDetail, markDetail } from './detail.ts';
import { type Place, drawFigure, hatchesOf } from './figure.ts';
import type { TrialSection } from './section.ts';

const ROW = 31;
/** On a phone the name of a row stands over its line, so that the joint has the width. */
const NAME_OVER = 18;
/** A number that stands over its line keeps so much clear of its neighbors in it, px. */
const CLEAR = 4;
const TOP = 70;
const NARROW = 520;
const LARGEST_SCALE = 7;

const NAMES: Record<string, string> = {
  'above 0': 'pin held',
  'below 0': 'hole',
  'below 1': 'wood left',
};

function spanOf(measure: Measure, place: Place, unit: Unit | 'both'): Span {
  const [from, to] = [place(measure.from), place(measure.to)];
  return {
    from: { along: from.x, feature: from.y },
    to: { along: to.x, feature: to.y },
    text: shownReading(measure.text, unit),
    outside: measure.outside,
    ...(measure.caution === true && { caution: true }),
  };
}

function rowHeight(narrow: boolean): number {
  return narrow ? ROW + NAME_OVER : ROW;
}

/** A phone has no room for the wood that is left, only for a point that came through. */
function measuresShown(section: TrialSection, narrow: boolean): readonly Measure[] {
  return section.measures.filter(({ id, caution }) => !narrow || id !== 'b.woodLeft' || caution);
}

/** Height that the rows under the joint take, px. */
function heightBelow(section: TrialSection, narrow: boolean): number {
  const below = measuresShown(section, narrow).filter(({ side }) => side === 'below');
  return Math.max(0, ...below.map(({ tier }) => tier + 1)) * rowHeight(narrow);
}

interface Rows extends Dimensions {
  /** How far the names of the rows run into them, px. */
  readonly crowding: number;
}

function drawRows(
  section: TrialSection,
  scale: number,
  place: Place,
  edges: { readonly top: number; readonly bottom: number; readonly nameX: number },
  narrow: boolean,
  unit: Unit | 'both',
): Rows {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  let crowding = 0;
  for (const [side, tier] of [
    ['above', 0],
    ['below', 0],
    ['below', 1],
  ] as const) {
    // What is too short to be seen is shown in a detail.
    const spans = measuresShown(section, narrow)
      .filter((measure) => measure.side === side && measure.tier === tier)
      .filter((measure) => measure.value * scale >= SEEN || measure.id === 'b.woodLeft')
      .map((measure) => spanOf(measure, place, unit));
    if (spans.length === 0) continue;
    const across =
      side === 'above'
        ? edges.top - 34
        : edges.bottom + (narrow ? 34 : 28) + tier * rowHeight(narrow);
    const row = dimensionRow('x', across, spans);
    const numbers = row.labels.map((label) =>
      label.y < across ? { ...label, y: label.y - CLEAR } : label,
    );
    const name: Label = {
      x: edges.nameX,
      y: narrow ? across - NAME_OVER : across,
      anchor: 'start',
      kind: 'word',
      text: words(
        spans.some((span) => span.caution) && side === 'below'
          ? 'point through'
          : (NAMES[`${side} ${tier}`] ?? ''),
      ),
    };
    const leftmost = Math.min(
      ...spans.map((span) => span.from.along - (span.to.along - span.from.along < 70 ? 26 : 8)),
      ...numbers.map((label) => labelBox(label).left - 8),
    );
    if (!narrow) crowding = Math.max(crowding, labelBox(name).right - leftmost);
    strokes.push(...row.strokes);
    labels.push(...numbers, name);
  }
  return { strokes, labels, crowding };
}

function drawMarks(section: TrialSection, place: Place): Stroke[] {
  return [
    ...section.marks.map(({ kind, at, turn }): Stroke => ({
      pen: 'mark',
      d: kind === 'face' ? faceMark(place(at), turn) : edgeMark(place(at), turn),
    })),
    ...section.cautions.flatMap((at): Stroke[] => {
      const tip = place(at);
      const sign = cautionSign({ x: tip.x + (at.x > 0 ? 22 : -22), y: tip.y });
      return [
        { pen: 'sign', d: sign.plate },
        { pen: 'sign', d: sign.bar },
      ];
    }),
  ];
}

/**
 * Lays the joint out on a sheet `width` px wide, its details beside it or, on a phone, under it.
 * `rest` is the joint as it comes to rest, which sets the scale; `now` is where it stands while
 * it is being pushed together.
 */
export function arrangeTrialSection(
  rest: TrialSection,
  now: TrialSection,
  width: number,
  unit: Unit | 'both',
): Sheet {
  const box = boxAround(rest.bodies.flatMap((body) => body.outline))!;
  const { left, right } = rest.reach;
  const narrow = width < NARROW;
  const radius = narrow ? 68 : 84;
  let column = 0;
  const mmHigh = box.bottom - box.top;
  let [before, after] = [10, 10];
  const attempt = () => {
    const free = Math.max(60, width - column - before - after);
    const scale = Math.min(free / (right - left), LARGEST_SCALE, (narrow ? 260 : 380) / mmHigh);
    const spare = Math.max(0, free - (right - left) * scale) / 2;
    const place: Place = (point) => ({
      x: before + spare + (point.x - left) * scale,
      y: TOP + (point.y - box.top) * scale,
    });
    const edges = { top: TOP, bottom: TOP + mmHigh * scale, nameX: 2 + spare };
    return { scale, place, edges, rows: drawRows(rest, scale, place, edges, narrow, unit) };
  };
  let best = attempt();
  for (let turn = 0; turn < 14; turn++) {
    if (column === 0 && !narrow && chooseDetails(rest.small, best.scale).length > 0) {
      column = 2 * radius + 34;
      best = attempt();
    }
    const boxes = best.rows.labels.map(labelBox);
    const signs = rest.cautions.map((at) => best.place(at).x + 38);
    const overRight = Math.max(0, ...boxes.map((b) => b.right), ...signs) - (width - column - 2);
    const overLeft = Math.max(best.rows.crowding, 2 - Math.min(2, ...boxes.map((b) => b.left)));
    if (overLeft <= 0.5 && overRight <= 0.5) break;
    before += Math.max(0, overLeft);
    after += Math.max(0, overRight);
    best = attempt();
  }
  const { scale, place, edges } = best;
  const chosen = chooseDetails(rest.small, scale);
  const still = now === rest;
  const details = chosen.map((each, i) => {
    const center = narrow
      ? { x: width * (chosen.length === 1 ? 0.5 : 0.25 + 0.5 * i), y: 0 }
      : { x: width - radius - 8, y: 0 };
    const tall = 2 * radius + DETAIL_WORDS;
    const y = narrow
      ? edges.bottom + heightBelow(rest, narrow) + 44 + radius
      : 14 + radius + i * tall;
    return { each, center: { x: center.x, y }, bottom: y + radius + DETAIL_WORDS };
  });
  const steps = rest.small
    .filter(({ fault, from, to }) => fault === 'step' && (to - from) * scale >= SEEN)
    .map(({ from, to, text, at }) => {
      // Over the board that lies lower, where there is air.
      const aside = at.y > 0 ? -1 : 1;
      const joint = place(at).x;
      const lower = place({ x: 0, y: Math.max(from, to) }).y;
      const row = dimensionRow('y', joint + aside * 16, [
        {
          from: { along: place({ x: 0, y: from }).y, feature: joint },
          to: { along: place({ x: 0, y: to }).y, feature: joint },
          text: shownReading(text, unit),
          outside: aside > 0 ? 'after' : 'before',
          caution: true,
        },
      ]);
      // A number taller than the step stands over the lower board, not on it.
      const clear = (label: Label): Label =>
        label.anchor === 'middle' ? label : { ...label, y: Math.min(label.y, lower - 12) };
      return { ...row, labels: row.labels.map(clear) };
    });
  const base = edges.bottom + heightBelow(rest, narrow) + 40;
  const height = Math.ceil(Math.max(base, ...details.map(({ bottom }) => bottom)));
  const shownRows = still ? [best.rows, ...steps] : [];
  return {
    width,
    height,
    hatches: hatchesOf(rest.bodies),
    strokes: [
      ...drawFigure(now, place),
      ...drawMarks(now, place),
      ...shownRows.flatMap(({ strokes }) => strokes),
      ...(still
        ? details.flatMap(({ each, center }) => [
            ...markDetail(each, place, radius, 'over').strokes,
            ...drawDetail(each, rest, scale, center, radius, unit).strokes,
          ])
        : []),
    ],
    labels: [
      ...now.bodies.map(({ letter, member }): Label => ({
        ...place(letter.at),
        anchor: 'middle',
        kind: 'letter',
        text: words(letter.text),
        over: member === 'b' ? 'wood-b' : 'wood-a',
      })),
      ...shownRows.flatMap(({ labels }) => labels),
      ...(still
        ? details.flatMap(({ each, center }) => [
            ...markDetail(each, place, radius, 'over').labels,
            ...drawDetail(each, rest, scale, center, radius, unit).labels,
          ])
        : []),
      {
        x: edges.nameX,
        y: base - 12,
        anchor: 'start',
        kind: 'word',
        text: shownReading({ in: 'inches', mm: 'millimeters' }, unit),
      },
    ],
  };
}
