import { formatLength } from '../../../core/length/formatLength.ts';
import type { Mm } from '../../../core/length/mm.ts';
import type { Pin, System } from '../../../core/joint/types.ts';
import { stockPins } from '../../../core/stock/pins.ts';

/** One size in the drawer, by the name that is printed on it: its own system's, whatever the reader's. */
export interface Drawer<Item> {
  readonly group: string;
  readonly items: readonly { readonly name: string; readonly item: Item }[];
}

const systems: readonly { readonly system: System; readonly group: string }[] = [
  { system: 'in', group: 'Inch' },
  { system: 'mm', group: 'Metric' },
];

function size(length: Mm, system: System): string {
  return formatLength(
    length,
    system === 'in' ? { unit: 'in', denominator: 64 } : { unit: 'mm', step: 0.1 },
  );
}

/** The pins at hand, of both systems. */
export const pinDrawer: readonly Drawer<Pin>[] = systems.map(({ system, group }) => ({
  group,
  items: stockPins(system).map((item) => ({
    name: `${size(item.diameter, system)} × ${size(item.length, system)} ${system}`,
    item,
  })),
}));

/** The bits at hand: one for each diameter of pin. */
export const bitDrawer: readonly Drawer<Mm>[] = systems.map(({ system, group }) => ({
  group,
  items: [...new Set(stockPins(system).map(({ diameter }) => diameter))].map((item) => ({
    name: `${size(item, system)} ${system}`,
    item,
  })),
}));
