import type { GlueRoom } from '../../core/fit/glueRoom.ts';
import { dropOfGlue } from '../../core/fit/glueRoom.ts';
import { formatQuantity } from '../../core/working/formatQuantity.ts';
import type { Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import { words } from '../drafting/reading.ts';
import { spread } from './arrange.ts';

const HEIGHT = 220;
const BAR = 34;
/** The bars' full height stands for a multiple of this, mm³. */
const STEP = 500;

/** Parts of the room from the bottom of the hole up, as they fill. */
export const ROOM_PARTS = [
  ['inCone', 'point'],
  ['atEnd', 'end gap'],
  ['around', 'around'],
  ['inFlutes', 'flutes'],
] as const;

/** An amount of glue: milliliters for everyone. */
export function milliliters(volume: number): string {
  return formatQuantity(volume, 'volume', 'mm');
}

/** @example drops(300) // '≈ 6 drops' */
export function drops(volume: number): string {
  const count = Math.round(volume / dropOfGlue);
  return `≈ ${count} ${count === 1 ? 'drop' : 'drops'}`;
}

function bar(left: number, from: number, to: number): string {
  return closed([
    { x: left, y: from },
    { x: left + BAR, y: from },
    { x: left + BAR, y: to },
    { x: left, y: to },
  ]);
}

/** Room, part by part, and glue, as two bars of one scale left and right of `middle`. */
export function arrangeVolumes(
  room: GlueRoom,
  glue: number,
  place: { readonly middle: number; readonly top: number },
): {
  strokes: readonly Stroke[];
  labels: readonly Label[];
  bottom: number;
} {
  const full = Math.ceil(Math.max(room.total, glue, 1) / STEP) * STEP;
  const floor = place.top + 30 + HEIGHT;
  const y = (volume: number) => floor - (volume / full) * HEIGHT;
  const roomAt = place.middle - BAR - 4;
  const glueAt = place.middle + 6;
  let filled = 0;
  const parts = ROOM_PARTS.filter(([id]) => room[id] > 0).map(([id, name]) => {
    const [from, to] = [filled, filled + room[id]];
    filled = to;
    return { name, volume: room[id], from: y(from), to: y(to) };
  });
  const names = spread(
    parts.toReversed().map((part): Label => ({
      x: roomAt - 15,
      y: (part.from + part.to) / 2,
      anchor: 'end',
      kind: 'word',
      text: words(`${part.name} ${(part.volume / 1000).toFixed(2)}`),
    })),
    19,
  ).toReversed();
  const held = Math.min(glue, room.total);
  const edge = y(room.total);
  const label = (text: string, at: number, more: Partial<Label> = {}): Label => ({
    x: glueAt + BAR + 6,
    y: at,
    anchor: 'start',
    kind: 'word',
    text: words(text),
    ...more,
  });
  const right = spread(
    [
      ...(room.over > 0
        ? [
            label('over', y(glue) + 2, { caution: true }),
            label(milliliters(room.over), y(glue) + 21, { caution: true }),
          ]
        : []),
      label(milliliters(glue), Math.max(y(held / 2) - 10, place.top), {
        kind: 'number',
        set: true,
      }),
      label(drops(glue), y(held / 2) + 12),
    ],
    20,
  );
  return {
    bottom: floor + 30,
    strokes: [
      ...parts.flatMap((part, i): Stroke[] => [
        { pen: 'hole', d: bar(roomAt, part.from, part.to) },
        { pen: 'thin', d: bar(roomAt, part.from, part.to) },
        {
          pen: 'thin',
          d: open([
            { x: roomAt - 12, y: names[i]!.y },
            { x: roomAt - 2, y: (part.from + part.to) / 2 },
          ]),
        },
      ]),
      { pen: 'outline', d: bar(roomAt, floor, edge) },
      { pen: 'glue', d: bar(glueAt, y(0), y(held)) },
      ...(room.over > 0 ? [{ pen: 'phantom', d: bar(glueAt, y(held), y(glue)) } as const] : []),
      {
        pen: 'hidden',
        d: open([
          { x: roomAt + BAR, y: edge },
          { x: glueAt + BAR, y: edge },
        ]),
      },
      {
        pen: 'thin',
        d: open([
          { x: roomAt - 8, y: floor },
          { x: glueAt + BAR + 8, y: floor },
        ]),
      },
    ],
    labels: [
      {
        ...label(`room ${milliliters(room.total)}`, edge - 16),
        x: roomAt + BAR,
        anchor: 'end',
        kind: 'number',
      },
      ...names,
      ...right,
      { ...label('room', floor + 16), x: roomAt + BAR / 2, anchor: 'middle' },
      { ...label('glue', floor + 16), x: glueAt + BAR / 2, anchor: 'middle' },
    ],
  };
}
