import type { ClassOrder } from '../../../class/order/classOrder.ts';
import { formatReadable } from '../../../core/length/formatLength.ts';
import type { Mm } from '../../../core/length/mm.ts';
import type { LengthUnit } from '../../../core/length/parseLength.ts';
import type { BitPoint } from '../../../core/joint/types.ts';

/** How a bit's point is called. */
export function pointName(point: BitPoint): string {
  switch (point.kind) {
    case 'twist':
      return `twist, ${point.angle}°`;
    case 'brad':
      return 'brad point';
    case 'center':
      return 'center point';
    case 'square':
      return 'square end';
  }
}

/** A length that is bought, not cut: in feet or meters, rounded up to a tenth. */
export function bought(length: Mm, unit: LengthUnit): string {
  const [size, name] = unit === 'in' ? [304.8, 'ft'] : [1000, 'm'];
  return `${(Math.ceil((length / size) * 10 - 1e-6) / 10).toLocaleString('en-US')} ${name}`;
}

/** The whole order as rows of a table: what, size, how many, remark. */
export function orderRows(order: ClassOrder, unit: LengthUnit): readonly (readonly string[])[] {
  const length = (value: Mm) => `${formatReadable(value, unit).replace('≈', '')} ${unit}`;
  const milliliters = (volume: number) => `${Math.ceil(volume / 1000)} ml`;
  return [
    ['What', 'Size', 'How many', 'Remark'],
    ...order.pins.map(({ pin, total, inTests, spare }) => [
      'Dowel pins',
      `${length(pin.diameter)} × ${length(pin.length)}`,
      String(total),
      `${inTests} for tests, ${spare} spare`,
    ]),
    ...order.bits.map(({ diameter, point, pieces, stops }) => [
      'Bits with a stop collar',
      `${length(diameter)}, ${pointName(point)}`,
      String(pieces),
      `stops at ${stops.map(length).join(', ')}`,
    ]),
    ...order.boards.map((board) => [
      board.species ? `Boards, ${board.species}` : 'Boards',
      `${length(board.thickness)} × ${length(board.width)}`,
      String(board.cutting.boards.length),
      `${bought(board.length, unit)} in all, cuts included`,
    ]),
    ['Glue', milliliters(order.glue.total), '', `${milliliters(order.glue.spare)} of it spare`],
  ];
}
