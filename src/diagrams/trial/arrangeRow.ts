import { dimensionRow } from '../drafting/dimension.ts';
import type { Sheet } from '../drafting/ink.ts';
import { LETTER_SIZE, type Label, labelBox, textWidth } from '../drafting/label.ts';
import { type Box, boxAround } from '../drafting/point.ts';
import { type Unit, reading, shownReading, words } from '../drafting/reading.ts';
import { DETAIL_WORDS, chooseDetails, drawDetail, markDetail } from './detail.ts';
import { type Figure, type Place, drawFigure, hatchesOf } from './figure.ts';
import type { TrialRow } from './row.ts';

/** Most px for a mm: a row is long, and a drawing much larger than the section looks clumsy. */
const LARGEST_SCALE = 3;
const NARROW = 520;
/** Left of the boards, for their letters, and right of them. */
const LETTERS = 30;
const SIDE = 8;
/** From the top of the sheet to a view, with the name and the numbers of the pins over it. */
const OVER = 50;

function boxOf(figure: Figure): Box {
  return boxAround([
    ...figure.bodies.flatMap((body) => body.outline),
    ...figure.pieces.flatMap((piece) => piece.points),
  ])!;
}

/** Lays the two views of a row out on a sheet `width` px wide, aligned along the joint. */
export function arrangeTrialRow(row: TrialRow, width: number, unit: Unit | 'both'): Sheet {
  const [cut, face] = [boxOf(row.cut), boxOf(row.face)];
  const left = Math.min(cut.left, face.left);
  const right = Math.max(cut.right, face.right);
  const free = width - LETTERS - SIDE;
  const scale = Math.min(free / (right - left), LARGEST_SCALE);
  const x = (along: number) =>
    LETTERS + Math.max(0, free - (right - left) * scale) / 2 + (along - left) * scale;
  const cutTop = OVER;
  const cutBottom = cutTop + (cut.bottom - cut.top) * scale;
  const openWords = row.opening === null ? 0 : 24;
  const dimension = openWords + (row.outOfPlace === null ? 0 : 34);
  const faceTop = cutBottom + dimension + 44;
  const faceBottom = faceTop + (face.bottom - face.top) * scale;
  const placeCut: Place = (p) => ({ x: x(p.x), y: cutTop + (p.y - cut.top) * scale });
  const placeFace: Place = (p) => ({ x: x(p.x), y: faceTop + (p.y - face.top) * scale });

  const narrow = width < NARROW;
  const radius = narrow ? 68 : 84;
  const details = chooseDetails(row.small, scale).map((each) => {
    const center = { x: width / 2, y: faceBottom + 40 + radius };
    return { each, center, bottom: center.y + radius + DETAIL_WORDS };
  });
  const name = (text: string, y: number): Label => ({
    x: Math.min(x(left), Math.max(2, width - 4 - textWidth(words(text), 'word'))),
    y,
    anchor: 'start',
    kind: 'word',
    text: words(text),
  });
  const names = [
    name(narrow ? 'cut along the row' : 'cut along the row of pins', 12),
    name(
      narrow
        ? 'face to face: A’s holes dashed'
        : 'face to face, looking along the pins: A dashed, B in full lines',
      faceTop - 16,
    ),
  ];
  const numbers: Label[] = [];
  row.pins.forEach((pin, j) => {
    const label: Label = {
      x: placeCut(pin).x,
      y: OVER - 13,
      anchor: 'middle',
      kind: 'number',
      text: words(String(j + 1)),
    };
    const before = numbers.at(-1);
    if (before === undefined || labelBox(before).right + 4 < labelBox(label).left)
      numbers.push(label);
  });
  const slid = row.outOfPlace;
  const out =
    slid === null
      ? null
      : dimensionRow('x', cutBottom + openWords + 18, [
          {
            from: { along: x(slid.from), feature: cutBottom },
            to: { along: x(slid.to), feature: cutBottom },
            text: shownReading(
              reading((length) => length(slid.to - slid.from)),
              unit,
            ),
            outside: 'after',
            caution: true,
          },
        ]);
  const { opening } = row;
  const openAt: Label[] =
    opening === null
      ? []
      : (
          [
            ['start', 'start', x(left)],
            ['end', 'end', x(right)],
          ] as const
        ).map(([anchor, end, at]) => ({
          x: at,
          y: cutBottom + 14,
          anchor,
          kind: 'word',
          caution: true,
          text: shownReading(
            reading((length) => `open ${length(opening[end])}`),
            unit,
          ),
        }));
  const [highA, highB] = row.cut.bodies.map(({ letter }) => placeCut(letter.at).y) as [
    number,
    number,
  ];
  const apart = Math.max(0, LETTER_SIZE + 2 - (highB - highA)) / 2;
  const letters = row.cut.bodies.map(({ letter }, i): Label => ({
    x: x(left) - LETTERS / 2,
    y: i === 0 ? highA - apart : highB + apart,
    anchor: 'middle',
    kind: 'letter',
    text: words(letter.text),
  }));
  const height = Math.ceil(Math.max(faceBottom + 14, ...details.map(({ bottom }) => bottom)));
  return {
    width,
    height,
    hatches: hatchesOf([...row.cut.bodies, ...row.face.bodies]),
    strokes: [
      ...drawFigure(row.cut, placeCut),
      ...drawFigure(row.face, placeFace),
      ...(out?.strokes ?? []),
      ...details.flatMap(({ each, center }) => [
        ...markDetail(each, placeFace, radius, 'under').strokes,
        ...drawDetail(each, row.face, scale, center, radius, unit).strokes,
      ]),
    ],
    labels: [
      ...names,
      ...numbers,
      ...letters,
      ...openAt,
      ...(out?.labels ?? []),
      ...details.flatMap(({ each, center }) => [
        ...markDetail(each, placeFace, radius, 'under').labels,
        ...drawDetail(each, row.face, scale, center, radius, unit).labels,
      ]),
    ],
  };
}
