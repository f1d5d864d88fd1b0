import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { type Unit, reading, shownReading } from '../drafting/reading.ts';
import { arrangeChart } from './chart.ts';
import { drawEnd } from './end.ts';
import type { Candidates } from './geometry.ts';

/** How the reader has it. */
export interface Look {
  readonly unit: Unit | 'both';
}

/** From this width on all the ends stand in one row, px. */
const ONE_ROW = 520;
const GAP = 14;
/** Tallest board that is drawn, px, and its scale at most, px for a mm. */
const TALLEST = 132;
const LARGEST_SCALE = 7;
/** Words under each end, px. */
const WORDS = 92;

/**
 * Every diameter in stock drawn in the end of the board to one scale, and under them what the
 * published rules allow for boards of every thickness, on a sheet `width` px wide.
 */
export function arrangeCandidates(shapes: Candidates, width: number, { unit }: Look): Sheet {
  const { candidates, thickness } = shapes;
  const columns = Math.min(width < ONE_ROW ? 2 : 4, Math.max(1, candidates.length));
  const cell = (width - GAP * (columns - 1)) / columns;
  const widest = Math.max(1, ...candidates.map(({ diameter }) => diameter));
  const scale = Math.min(
    LARGEST_SCALE,
    TALLEST / Math.max(thickness, widest),
    cell / (widest * 1.7),
  );
  const tall = Math.max(thickness, widest) * scale;
  const rows = Math.ceil(candidates.length / columns);
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const text = (length: number, before = '', after = '') =>
    shownReading(
      reading((write) => `${before}${write(length)}${after}`),
      unit,
    );
  candidates.forEach((candidate, i) => {
    const left = (i % columns) * (cell + GAP);
    const top = 6 + Math.floor(i / columns) * (tall + WORDS);
    const end = drawEnd(candidate, shapes, { left, top, width: cell, tall, scale }, text, unit);
    strokes.push(...end.strokes);
    labels.push(...end.labels);
  });
  const chart = arrangeChart(shapes, { top: rows * (tall + WORDS) + 22, width }, text);
  return {
    width,
    height: Math.ceil(chart.bottom),
    hatches: [
      { name: 'end', grain: 'end', angle: 45 },
      { name: 'long', grain: 'long', angle: 0 },
      { name: 'pin', grain: 'end', angle: 135 },
    ],
    strokes: [...strokes, ...chart.strokes],
    labels: [...labels, ...chart.labels],
  };
}
