import { breakLine } from '../drafting/breakLine.ts';
import { clipLine } from '../drafting/clip.ts';
import { arrowAt } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { edgeStroke, faceStroke } from '../drafting/marks.ts';
import { closed, open } from '../drafting/path.ts';
import { type Point, boxAround } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import { grainOn } from './grain.ts';
import { type Ellipse, type View, isometric, seenCircle } from './isometric.ts';
import type { Bore, Cue, Dowel, PictorialShapes, Solid } from './shapes.ts';
import { type Place, difference, dot, moved, place, unit } from './space.ts';

const NARROW = 520;
const TALLEST = { narrow: 330, wide: 470 } as const;
const LARGEST_SCALE = 4;
const MARGIN = 8;
/** Lines of grain are no closer than this, in px. */
const GRAIN = 7;
/** One wave of a break line, in px. */
const WAVE = 110;
/** Length of the arrow at what is named, in px. */
const CUE = 26;
/** Section lines on the face of a break: it is no end of the board. */
const CUT = 'cut';

/** How the joint lies on the page. */
interface Frame {
  readonly view: View;
  /** px for a mm along an axis. */
  readonly scale: number;
  readonly at: (where: Place) => Point;
}

const UP = place(0, 0, 1);

function round(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

function cornersOf(solid: Solid, height: number): Place[] {
  return solid.base.map(({ x, y }) => place(x, y, height));
}

/** Unit vector out of a side, to the right of the way along it. */
function outOf(solid: Solid, side: number): Place {
  const from = solid.base[side]!;
  const to = solid.base[(side + 1) % solid.base.length]!;
  return unit(place(to.y - from.y, from.x - to.x, 0));
}

/** A break line in waves of about one length, however long it is. */
function tornLine(from: Point, to: Point): Point[] {
  const waves = Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y) / WAVE));
  const at = (i: number): Point => ({
    x: from.x + ((to.x - from.x) * i) / waves,
    y: from.y + ((to.y - from.y) * i) / waves,
  });
  return [...Array.from({ length: waves }, (_, i) => breakLine(at(i), at(i + 1))).flat(), to];
}

/** The lines that bound a solid's faces, straight or broken, each running as its name says. */
function edgesOf(solid: Solid, frame: Frame) {
  const { base, broken } = solid;
  const tops = cornersOf(solid, solid.top).map(frame.at);
  const bottoms = cornersOf(solid, solid.bottom).map(frame.at);
  const count = base.length;
  const isBroken = (side: number) => broken.sides.includes((side + count) % count);
  const line = (from: Point, to: Point, wavy: boolean) => (wavy ? tornLine(from, to) : [from, to]);
  return {
    /** Along a side's top, from its first corner to its second. */
    top: base.map((_, i) => line(tops[i]!, tops[(i + 1) % count]!, isBroken(i) || broken.top)),
    bottom: base.map((_, i) =>
      line(bottoms[i]!, bottoms[(i + 1) % count]!, isBroken(i) || broken.bottom),
    ),
    /** Down from a corner. */
    down: base.map((_, i) => line(tops[i]!, bottoms[i]!, isBroken(i) || isBroken(i - 1))),
    topBroken: (i: number) => isBroken(i) || broken.top,
    bottomBroken: (i: number) => isBroken(i) || broken.bottom,
    downBroken: (i: number) => isBroken(i) || isBroken(i - 1),
  };
}

/** Counterclockwise corners of a face turned clockwise on the page, as a window wants them. */
function windowOf(points: readonly Point[]): readonly Point[] {
  const area = points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return area > 0 ? points : [...points].reverse();
}

function drawSolid(solid: Solid, frame: Frame): Stroke[] {
  const { view } = frame;
  const pen = solid.member === 'b' ? 'wood-b' : 'wood-a';
  const edges = edgesOf(solid, frame);
  const count = solid.base.length;
  const seen = solid.base.flatMap((_, side) =>
    dot(outOf(solid, side), view.toEye) > 1e-9 ? [side] : [],
  );
  const fills: Stroke[] = [];
  const grain: Point[][] = [];
  const addGrain = (corners: readonly Place[], normal: Place) => {
    const window = windowOf(corners.map(frame.at));
    for (const line of grainOn(solid.grain, corners, normal, GRAIN / frame.scale)) {
      grain.push(...clipLine(line.map(frame.at), window).map((part) => [...part]));
    }
  };

  fills.push({
    pen,
    d: closed(edges.top.flatMap((line) => line.slice(0, -1))),
    ...(solid.broken.top && { hatch: CUT }),
  });
  if (!solid.broken.top) addGrain(cornersOf(solid, solid.top), UP);
  for (const side of seen) {
    const next = (side + 1) % count;
    const area = closed([
      ...edges.top[side]!,
      ...edges.down[next]!,
      ...[...edges.bottom[side]!].reverse(),
      ...[...edges.down[side]!].reverse(),
    ]);
    const normal = outOf(solid, side);
    const broken = solid.broken.sides.includes(side);
    fills.push({ pen, d: area, ...(broken && { hatch: CUT }) });
    // Light comes over the left shoulder.
    if (view.project(normal).x > 1e-9) fills.push({ pen: 'shade', d: area });
    if (broken) continue;
    const [p, q] = [solid.base[side]!, solid.base[next]!];
    addGrain(
      [
        place(p.x, p.y, solid.top),
        place(q.x, q.y, solid.top),
        place(q.x, q.y, solid.bottom),
        place(p.x, p.y, solid.bottom),
      ],
      normal,
    );
  }

  const lines: Stroke[] = [];
  const draw = (line: readonly Point[], broken: boolean) =>
    lines.push({ pen: broken ? 'thin' : 'outline', d: open(line) });
  solid.base.forEach((_, i) => {
    draw(edges.top[i]!, edges.topBroken(i));
    if (seen.includes(i)) draw(edges.bottom[i]!, edges.bottomBroken(i));
    if (seen.includes(i) || seen.includes((i + count - 1) % count)) {
      draw(edges.down[i]!, edges.downBroken(i));
    }
  });
  return [...fills, { pen: 'grain', d: grain.map(open).join('') }, ...lines];
}

/** A whole ellipse as path data; sizes in px. */
function ellipsePath({ center, rx, ry, turn }: Ellipse): string {
  const angle = (turn * Math.PI) / 180;
  const [dx, dy] = [rx * Math.cos(angle), rx * Math.sin(angle)];
  const arc = (x: number, y: number) =>
    `A${round(rx)},${round(ry)} ${round(turn)} 1 1 ${round(x)},${round(y)}`;
  const [from, to] = [
    { x: center.x - dx, y: center.y - dy },
    { x: center.x + dx, y: center.y + dy },
  ];
  return `M${round(from.x)},${round(from.y)}${arc(to.x, to.y)}${arc(from.x, from.y)}Z`;
}

/** The circle as it lies on the page, in px. */
function onPage(center: Place, normal: Place, radius: number, frame: Frame): Ellipse {
  const seen = seenCircle(frame.view, center, normal, radius);
  return {
    ...seen,
    center: frame.at(center),
    rx: seen.rx * frame.scale,
    ry: seen.ry * frame.scale,
  };
}

/** The mouth of a hole that is seen, and what lies in the wood, dashed. */
function drawBore(bore: Bore, frame: Frame): Stroke[] {
  const { mouth, into, radius, depth } = bore;
  if (radius <= 0 || depth <= 0) return [];
  const opening = onPage(mouth, into, radius, frame);
  const floor = onPage(moved(mouth, into, depth), into, radius, frame);
  const angle = (opening.turn * Math.PI) / 180;
  const [dx, dy] = [opening.rx * Math.cos(angle), opening.rx * Math.sin(angle)];
  const walls = [1, -1].map((way): Stroke => ({
    pen: 'hidden',
    d: open([
      { x: opening.center.x + way * dx, y: opening.center.y + way * dy },
      { x: floor.center.x + way * dx, y: floor.center.y + way * dy },
    ]),
  }));
  const hidden: Stroke[] = [...walls, { pen: 'hidden', d: ellipsePath(floor) }];
  if (dot(into, frame.view.toEye) > 0) {
    return [...hidden, { pen: 'hidden', d: ellipsePath(opening) }];
  }
  const d = ellipsePath(opening);
  return [...hidden, { pen: 'hole', d }, { pen: 'outline', d }];
}

/** A pin as far as it stands out of B: its body, and the eased end that looks to the eye. */
function drawDowel(dowel: Dowel, frame: Frame): Stroke[] {
  const { from, to, radius, ease, seen } = dowel;
  if (seen <= ease) return [];
  const axis = unit(difference(to, from));
  const near = onPage(from, axis, radius, frame);
  const far = frame.at(moved(from, axis, seen));
  const angle = (near.turn * Math.PI) / 180;
  const [dx, dy] = [near.rx * Math.cos(angle), near.rx * Math.sin(angle)];
  const xy = (p: Point, way: 1 | -1) => `${round(p.x + way * dx)},${round(p.y + way * dy)}`;
  const arc = `A${round(near.rx)},${round(near.ry)} ${round(near.turn)} 0 0 `;
  return [
    {
      pen: 'pin',
      d: `M${xy(near.center, 1)}L${xy(far, 1)}${arc}${xy(far, -1)}L${xy(near.center, -1)}${arc}${xy(near.center, 1)}Z`,
    },
    { pen: 'thin', d: ellipsePath(near) },
    { pen: 'thin', d: ellipsePath(onPage(from, axis, radius - ease, frame)) },
  ];
}

/** The chain line on which a pin comes home. */
function drawAxis([from, to]: readonly [Place, Place], frame: Frame): Stroke {
  return { pen: 'center', d: open([frame.at(from), frame.at(to)]) };
}

function drawMarks(shapes: PictorialShapes, member: Solid['member'], frame: Frame): Stroke[] {
  return shapes.marks
    .filter((mark) => mark.member === member)
    .map(({ kind, at, along, into }): Stroke => {
      const foot = frame.at(at);
      const step = (direction: Place): Point => {
        const end = frame.at(moved(at, direction, 1 / frame.scale));
        return { x: end.x - foot.x, y: end.y - foot.y };
      };
      const [right, down] = [step(along), step(into)];
      // The marks are made of strokes that rise from their foot: y is negative there.
      const laid = (x: number, y: number): Point => ({
        x: foot.x + right.x * x - down.x * y,
        y: foot.y + right.y * x - down.y * y,
      });
      return { pen: 'mark', d: kind === 'face' ? faceStroke(laid) : edgeStroke(laid) };
    });
}

/** An arrow at what is named, and the word at its other end. */
function drawCue({ text, at, from, set }: Cue, frame: Frame): { strokes: Stroke[]; label: Label } {
  const tip = frame.at(at);
  const toward = frame.at(moved(at, from, 1));
  const length = Math.hypot(toward.x - tip.x, toward.y - tip.y) || 1;
  const [dx, dy] = [(toward.x - tip.x) / length, (toward.y - tip.y) / length];
  const tail = { x: tip.x + dx * CUE, y: tip.y + dy * CUE };
  const look = set === true ? { set: true } : {};
  const upright = Math.abs(dx) < 0.3;
  return {
    strokes: [
      { pen: 'thin', d: open([tip, tail]), ...look },
      { pen: 'arrow', d: arrowAt(tip, -dx, -dy), ...look },
    ],
    label: {
      // At the end of the arrow, and not beside it: a phone has no room there.
      x: tail.x + dx * 6,
      y: tail.y + Math.sign(dy) * (upright ? 11 : 9),
      anchor: 'middle',
      kind: 'word',
      text: words(text),
      ...look,
    },
  };
}

/** Room around the boards, in px. */
interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function frameWith(shapes: PictorialShapes, width: number, margins: Margins) {
  const view = isometric(shapes.turn);
  const corners = [
    ...shapes.solids.flatMap((solid) => [
      ...cornersOf(solid, solid.top),
      ...cornersOf(solid, solid.bottom),
    ]),
    // A hole that was set where there is no wood is drawn all the same.
    ...shapes.bores.flatMap(({ mouth, into, depth }) => [mouth, moved(mouth, into, depth)]),
  ].map(view.project);
  const box = boxAround(corners) ?? { left: 0, right: 1, top: 0, bottom: 1 };
  const wide = Math.max(box.right - box.left, 1e-3);
  const high = Math.max(box.bottom - box.top, 1e-3);
  const free = Math.max(60, width - margins.left - margins.right);
  const scale = Math.min(
    free / wide,
    TALLEST[width < NARROW ? 'narrow' : 'wide'] / high,
    LARGEST_SCALE,
  );
  const left = margins.left + (free - wide * scale) / 2;
  return {
    view,
    scale,
    at: (where: Place): Point => {
      const { x, y } = view.project(where);
      return { x: left + (x - box.left) * scale, y: margins.top + (y - box.top) * scale };
    },
    height: Math.ceil(high * scale + margins.top + margins.bottom),
  };
}

/** The largest frame in which the boards and the words around them have room. */
function frameFor(shapes: PictorialShapes, width: number): ReturnType<typeof frameWith> {
  let margins: Margins = { left: MARGIN, right: MARGIN, top: MARGIN, bottom: MARGIN };
  let frame = frameWith(shapes, width, margins);
  for (let turn = 0; turn < 12; turn++) {
    const boxes = (shapes.cues ?? []).map((cue) => labelBox(drawCue(cue, frame).label));
    const over = {
      left: Math.max(0, ...boxes.map((box) => 2 - box.left)),
      right: Math.max(0, ...boxes.map((box) => box.right - (width - 2))),
      top: Math.max(0, ...boxes.map((box) => 2 - box.top)),
      bottom: Math.max(0, ...boxes.map((box) => box.bottom - (frame.height - 2))),
    };
    if (Math.max(over.left, over.right, over.top, over.bottom) < 0.5) break;
    margins = {
      left: margins.left + over.left,
      right: margins.right + over.right,
      top: margins.top + over.top,
      bottom: margins.bottom + over.bottom,
    };
    frame = frameWith(shapes, width, margins);
  }
  return frame;
}

/**
 * Lays a joint in space out on a sheet `width` px wide. `apart` is the joint with its boards pulled
 * off the pins and `now` as it stands; both take the same room and scale.
 */
export function arrangePictorial(
  apart: PictorialShapes,
  now: PictorialShapes,
  width: number,
): Sheet {
  const frame = frameFor(apart, width);
  const strokes = now.solids.flatMap((solid, i) => [
    ...drawSolid(solid, frame),
    ...now.bores.filter((bore) => bore.member === solid.member).flatMap((b) => drawBore(b, frame)),
    ...(now.arrivals ?? [])
      .filter((arrival) => arrival.member === solid.member)
      .map(({ at, normal, radius }): Stroke => ({
        pen: 'phantom',
        d: ellipsePath(onPage(at, normal, radius, frame)),
      })),
    ...drawMarks(now, solid.member, frame),
    // Pins stand before the board that receives them, and behind those that bring them.
    ...(i === 0
      ? [
          ...now.axes.map((axis) => drawAxis(axis, frame)),
          ...now.dowels.toReversed().flatMap((dowel) => drawDowel(dowel, frame)),
        ]
      : []),
  ]);
  const labels = now.solids.map(({ letter, member }): Label => ({
    ...frame.at(letter.at),
    anchor: 'middle',
    kind: 'letter',
    text: words(letter.text),
    over: member === 'b' ? 'wood-b' : 'wood-a',
  }));
  const cues = (now.cues ?? []).map((cue) => drawCue(cue, frame));
  return {
    width,
    height: frame.height,
    strokes: [...strokes, ...cues.flatMap((cue) => cue.strokes)],
    labels: [...labels, ...cues.map((cue) => cue.label)],
    hatches: [{ name: CUT, grain: 'end', angle: 45 }],
  };
}
