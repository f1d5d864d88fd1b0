import { describe, expect, test } from 'vitest';
import { SEASON, inches, mm, rowMovement, species } from '../../../src/core/index.ts';
import {
  MAGNIFIED,
  type RowOfPins,
  arrangeRow,
  describeRow,
  rowShapes,
} from '../../../src/diagrams/movement/row.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const oak = species('red oak, commercial')!;
const maple = species('maple, sugar (hard)')!;
const rise = SEASON.damp - SEASON.dry;

function row(joint: RowOfPins['joint'], span: number): RowOfPins {
  const both = joint === 'shelf';
  return {
    joint,
    span: mm(span),
    growth: { a: oak.tangential * rise, b: both ? maple.tangential * rise : 0 },
    movement: rowMovement({
      span: mm(span),
      coefficient: both ? oak.tangential - maple.tangential : oak.tangential,
      clearance: mm(0.1),
      ...SEASON,
    }),
  };
}

describe('a row of pins over a year', () => {
  test('the holes of a rail move away from pins that stand, ten times as far as in wood', () => {
    const { pins, dampHoles } = rowShapes(row('rail', 100));
    expect(dampHoles.b).toEqual(pins);
    expect(dampHoles.a[2]! - pins[2]!).toBeCloseTo(pins[2]! * oak.tangential * rise * MAGNIFIED, 9);
    expect(dampHoles.a[1]).toBe(0);
  });

  test('a shelf and its side move together, but for the difference of their woods', () => {
    const { dampHoles, pins } = rowShapes(row('shelf', 100));
    expect(dampHoles.a[2]! - dampHoles.b[2]!).toBeCloseTo(
      pins[2]! * (oak.tangential - maple.tangential) * rise * MAGNIFIED,
      9,
    );
  });

  test('the two bars are to one scale', () => {
    const sheet = arrangeRow(row('rail', 100), 600, 'mm');
    const bars = sheet.strokes
      .filter(({ pen, d }) => ['wood-a', 'pin'].includes(pen) && d.startsWith('M2,'))
      .map(({ d }) => Number(/L([\d.]+),/.exec(d)![1]) - 2);
    const { change, play } = row('rail', 100).movement;
    expect(bars).toHaveLength(2);
    expect(bars[0]! / bars[1]!).toBeCloseTo(change / play, 1);
  });

  test.each([280, 340, 860])('keeps its numbers apart and on the sheet at %i px', (width) => {
    for (const joint of ['rail', 'shelf'] as const) {
      for (const span of [12.7, 63.5, 101.6, 200.3, 406.4]) {
        for (const unit of ['in', 'mm', 'both'] as const) {
          const sheet = arrangeRow(row(joint, span), width, unit);
          expect(labelFaults(sheet), `${joint}, ${span} mm, ${unit}`).toEqual([]);
        }
      }
    }
  });

  test('is told in sentences with its numbers', () => {
    const text = describeRow(row('rail', inches(4)), 'in');
    expect(text).toContain('over 4 inches of its width');
    expect(text).toContain('0.089 inch');
    expect(text).toContain('0.008 inch of play');
  });
});
