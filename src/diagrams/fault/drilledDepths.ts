import type { BenchSetup } from '../../core/trial/drill.ts';
import { drill } from '../../core/trial/drill.ts';
import { dryFit } from '../../core/trial/dryFit.ts';
import type { Member } from '../../core/trial/trial.ts';
import { plainText } from '../../core/working/plainText.ts';
import { say } from '../../core/working/sentence.ts';
import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { type Point, boxAround } from '../drafting/point.ts';
import { reading, shownText, words } from '../drafting/reading.ts';
import { drawFigure, hatchesOf } from '../trial/figure.ts';
import { APART, trialSection } from '../trial/section.ts';
import { BALLOON, type Spot, drawBalloon } from './balloon.ts';

/** A board whose holes have a letter. */
export interface LetteredDepth {
  readonly member: Member;
  readonly letter: string;
}

/** The sheet, px. */
const WIDTH = 320;
const TOP = 2 * BALLOON + 22;
const LARGEST_SCALE = 5;
const HIGHEST = 240;
const DIMENSIONS_DOWN = 30;

/**
 * Both boards drilled and standing apart, cut along the first pin, with the depths of their holes.
 * Boards that have a letter get a balloon at their hole.
 */
export function arrangeDrilledDepths(
  setup: BenchSetup,
  lettered: readonly LetteredDepth[],
): { readonly sheet: Sheet; readonly spots: readonly Spot[] } {
  const trial = drill(setup);
  const figure = trialSection(trial, setup.plan, dryFit(trial), 0, null, APART);
  const { a, b } = trial.pins[0]!;
  const box = boxAround(figure.bodies.flatMap(({ outline }) => outline))!;
  const holes = {
    a: { from: -a.depth, to: 0, axis: a.across },
    b: { from: APART, to: APART + b.depth, axis: b.across },
  };

  const arrange = (before: number, after: number) => {
    const free = WIDTH - before - after;
    const scale = Math.min(
      free / (box.right - box.left),
      HIGHEST / (box.bottom - box.top),
      LARGEST_SCALE,
    );
    const spare = (free - (box.right - box.left) * scale) / 2;
    const place = ({ x, y }: Point): Point => ({
      x: before + spare + (x - box.left) * scale,
      y: TOP + (y - box.top) * scale,
    });
    const bottom = TOP + (box.bottom - box.top) * scale;
    const end = (x: number, y: number) => {
      const at = place({ x, y });
      return { along: at.x, feature: at.y };
    };
    const depths = dimensionRow(
      'x',
      bottom + DIMENSIONS_DOWN,
      (['a', 'b'] as const).map((member) => ({
        from: end(holes[member].from, member === 'a' ? holes.a.axis : box.bottom),
        to: end(holes[member].to, member === 'a' ? box.bottom : holes.b.axis),
        text: reading((length) => length(holes[member].to - holes[member].from)),
        outside: member === 'a' ? ('before' as const) : ('after' as const),
      })),
    );
    return { place, bottom, depths };
  };

  let [before, after] = [10, 10];
  let best = arrange(before, after);
  for (let turn = 0; turn < 8; turn++) {
    const boxes = best.depths.labels.map(labelBox);
    const left = Math.max(0, 2 - Math.min(...boxes.map((each) => each.left)));
    const right = Math.max(0, Math.max(...boxes.map((each) => each.right)) - (WIDTH - 2));
    if (left + right < 0.5) break;
    before += left;
    after += right;
    best = arrange(before, after);
  }
  const { place, bottom, depths } = best;

  const balloons = lettered.map(({ member, letter }) => {
    const { from, to, axis } = holes[member];
    const tip = place({ x: (from + to) / 2, y: axis });
    const spot: Spot = { letter, x: tip.x, y: BALLOON + 4 };
    return { spot, ...drawBalloon(spot, tip) };
  });
  const boards = figure.bodies.map(({ letter, member }): Label => ({
    ...place(letter.at),
    anchor: 'middle',
    kind: 'letter',
    text: words(letter.text),
    over: member === 'b' ? 'wood-b' : 'wood-a',
  }));
  return {
    sheet: {
      width: WIDTH,
      height: Math.ceil(bottom + DIMENSIONS_DOWN + 44),
      hatches: hatchesOf(figure.bodies),
      strokes: [
        ...drawFigure(figure, place),
        ...(depths satisfies Dimensions).strokes,
        ...balloons.flatMap(({ strokes }) => strokes),
      ],
      labels: [
        ...boards,
        ...depths.labels,
        ...balloons.map(({ label }) => label),
        {
          x: WIDTH / 2,
          y: bottom + DIMENSIONS_DOWN + 30,
          anchor: 'middle',
          kind: 'word',
          text: { in: 'depths in inches', mm: 'depths in millimeters' },
        },
      ],
    },
    spots: balloons.map(({ spot }) => spot),
  };
}

/** The depths in sentences, in both units. */
export function describeDrilledDepths(setup: BenchSetup): string {
  const { a, b } = drill(setup).pins[0]!;
  return shownText('both', (unit) =>
    plainText(
      say`The hole in A is ${a.depth} deep at full diameter, the hole in B ${b.depth}.`,
      unit,
    ),
  );
}
