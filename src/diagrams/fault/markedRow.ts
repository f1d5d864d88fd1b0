import { mm } from '../../core/length/mm.ts';
import type { BenchSetup } from '../../core/trial/drill.ts';
import { reachAlong } from '../../core/trial/drill.ts';
import type { Member } from '../../core/trial/trial.ts';
import { plainText } from '../../core/working/plainText.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import { breakLine } from '../drafting/breakLine.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { edgeMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { reading, shownText, words } from '../drafting/reading.ts';
import { runningDimension } from '../layout/running.ts';
import { BALLOON, type Spot, drawBalloon } from './balloon.ts';

/** A hole that has a letter. */
export interface LetteredHole {
  readonly member: Member;
  /** Counted from 0. */
  readonly hole: number;
  readonly letter: string;
}

const MEMBERS = ['a', 'b'] as const;

/** The sheet, px: the joint runs down it, as a story stick is read. */
const WIDTH = 320;
const TOP = 44;
const LONGEST = 330;
const STRIP = 32;
const GAP = 76;
const RADIUS = 6;
/** Wood that is shown past the joint where a board is longer, mm. */
const PAST = 25;

/** Where a board's holes are, from its reference end in mm: as marked, from whichever end. */
function placesOn(setup: BenchSetup, member: Member): readonly number[] {
  const { marks, end } = setup[member];
  if (end === 'reference') return marks;
  const length = reachAlong(setup.plan, member);
  return marks.map((mark) => length - mark);
}

/**
 * The row of holes of both boards, as they were marked, seen on the faces that meet: A on the left,
 * B on the right, both from their reference ends at the top. Holes that have a letter get a balloon.
 */
export function arrangeMarkedRow(
  setup: BenchSetup,
  lettered: readonly LetteredHole[],
): { readonly sheet: Sheet; readonly spots: readonly Spot[] } {
  const shown = Math.min(
    setup.plan.spec.jointLength + PAST,
    Math.max(...MEMBERS.map((member) => reachAlong(setup.plan, member))),
  );
  const scale = LONGEST / shown;
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const spots: Spot[] = [];
  for (const member of MEMBERS) {
    const left = member === 'a' ? (WIDTH - GAP) / 2 - STRIP : (WIDTH + GAP) / 2;
    const right = left + STRIP;
    const middle = left + STRIP / 2;
    const outward = member === 'a' ? -1 : 1;
    const own = reachAlong(setup.plan, member);
    const bottom = TOP + Math.min(own, shown) * scale;
    const corners: readonly Point[] = [
      { x: left, y: bottom },
      { x: left, y: TOP },
      { x: right, y: TOP },
      { x: right, y: bottom },
    ];
    const end = own > shown ? breakLine(corners[3]!, corners[0]!) : corners.slice(3);
    strokes.push(
      { pen: member === 'a' ? 'wood-a' : 'wood-b', d: closed([...corners, ...end]) },
      { pen: 'outline', d: open(corners) },
      { pen: own > shown ? 'thin' : 'outline', d: open([...end, corners[0]!]) },
      { pen: 'mark', d: edgeMark({ x: middle, y: TOP }) },
    );
    labels.push({
      x: middle,
      y: TOP - 26,
      anchor: 'middle',
      kind: 'letter',
      text: words(member.toUpperCase()),
    });
    const line = (member === 'a' ? left : right) + outward * 12;
    const holes = placesOn(setup, member).map((along, hole) => ({
      hole,
      along: TOP + along * scale,
      text: reading((length) => length(along)),
    }));
    const inOrder = holes.toSorted((one, other) => one.along - other.along);
    const running = runningDimension(
      inOrder,
      TOP,
      line,
      (along, across) => ({ x: across, y: along }),
      ({ along, text }) => [
        {
          x: line + outward * 7,
          y: along,
          anchor: member === 'a' ? 'end' : 'start',
          kind: 'number',
          text,
        },
      ],
    );
    strokes.push(...running.strokes);
    labels.push(...running.labels);
    for (const { hole, along } of holes) {
      const at = { x: middle, y: along };
      const reach = RADIUS + 4;
      strokes.push(
        {
          pen: 'thin',
          d: open([
            { x: middle + outward * reach, y: along },
            { x: line, y: along },
          ]),
        },
        { pen: 'hole', d: circle(at, RADIUS) },
        { pen: 'outline', d: circle(at, RADIUS) },
        {
          pen: 'thin',
          d: `M${at.x - reach},${at.y}h${2 * reach}M${at.x},${at.y - reach}v${2 * reach}`,
        },
      );
      const letter = lettered.find((each) => each.member === member && each.hole === hole)?.letter;
      if (letter === undefined) continue;
      const inner = member === 'a' ? right : left;
      const spot = { letter, x: inner - outward * (BALLOON + 4), y: along };
      const balloon = drawBalloon(spot, { x: middle - outward * RADIUS, y: along });
      strokes.push(...balloon.strokes);
      labels.push(balloon.label);
      spots.push(spot);
    }
  }
  labels.push({
    x: WIDTH / 2,
    y: TOP + LONGEST + 22,
    anchor: 'middle',
    kind: 'word',
    text: { in: 'inches from the ends marked V', mm: 'millimeters from the ends marked V' },
  });
  const sheet = { width: WIDTH, height: TOP + LONGEST + 38, strokes, labels, hatches: [] };
  return { sheet, spots };
}

/** Where the holes are, in sentences, in both units. */
export function describeMarkedRow(setup: BenchSetup): string {
  return shownText('both', (unit) =>
    MEMBERS.map((member) => {
      const places = placesOn(setup, member).map((along): Sentence => [{ mm: mm(along) }]);
      const list = places.map((place) => plainText(place, unit)).join(', ');
      return `The holes of ${member.toUpperCase()} are at ${list} from its reference end.`;
    }).join(' '),
  );
}
