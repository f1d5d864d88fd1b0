import { box } from './parts.ts';
import type { PictorialShapes } from './shapes.ts';
import { place } from './space.ts';

const [WIDE, LONG, THICK] = [110, 190, 28];
const X = place(1, 0, 0);
const Y = place(0, 1, 0);
const UP = place(0, 0, 1);
const DOWN = place(0, 0, -1);
const LEFTWARD = place(-1, 0, 0);
const NEARER = place(0, -1, 0);

/** A board with its surfaces named and its marks on them; the sizes mean nothing. */
export function namedBoard(): PictorialShapes {
  const mark = place(0, LONG * 0.36, 0);
  const edgeMark = place(0, LONG * 0.62, 0);
  return {
    turn: 0,
    solids: [
      {
        member: 'a',
        base: box(0, WIDE, 0, LONG),
        bottom: -THICK,
        top: 0,
        broken: { sides: [], top: false, bottom: false },
        grain: { along: Y, pith: place(WIDE * 0.44, 0, -THICK * 1.9), ring: THICK / 4 },
        letter: { text: '', at: place(0, 0, 0) },
      },
    ],
    bores: [],
    dowels: [],
    axes: [],
    marks: [
      { kind: 'face', member: 'a', at: mark, along: Y, into: X },
      { kind: 'edge', member: 'a', at: edgeMark, along: Y, into: DOWN },
      { kind: 'edge', member: 'a', at: place(WIDE * 0.5, 0, 0), along: X, into: DOWN },
    ],
    cues: [
      { text: 'face', at: place(WIDE * 0.62, LONG * 0.56, 0), from: UP },
      { text: 'face mark', at: place(11, LONG * 0.36, 0), from: UP },
      { text: 'edge mark', at: place(0, LONG * 0.64, -THICK * 0.72), from: LEFTWARD },
      { text: 'edge', at: place(0, LONG * 0.2, -THICK * 0.8), from: LEFTWARD },
      { text: 'end', at: place(WIDE * 0.75, 0, -THICK * 0.8), from: NEARER },
    ],
    beyond: 0,
  };
}
