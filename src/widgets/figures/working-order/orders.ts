import {
  type NamedJoint,
  type Run,
  boardByBoard,
  fewestSettings,
  halfDone,
  holeByHole,
  runsOf,
  settingsOf,
} from '../../../core/piece/drillingOrder.ts';
import type { ShownOrder } from '../../../diagrams/order/arrange.ts';

/** Orders to choose from; `own` is what the reader made of one of them. */
export type OrderName = 'holes' | 'joints' | 'boards' | 'stops' | 'own';

/** The runs of all joints in one of the orders. */
export function orderOf(
  joints: readonly NamedJoint[],
  name: Exclude<OrderName, 'own'>,
): readonly Run[] {
  const pairs = joints.map(runsOf);
  switch (name) {
    case 'holes':
      return pairs.flatMap(holeByHole);
    case 'joints':
      return pairs.flat();
    case 'boards':
      return boardByBoard(pairs.flat());
    case 'stops':
      return fewestSettings(pairs.flat());
  }
}

/** An order with what it costs, as far as it is worked through. */
export function shownOrder(runs: readonly Run[], done: number): ShownOrder {
  return { runs, settings: settingsOf(runs), halfDone: halfDone(runs), done };
}

/** How often something is set in the steps that are shown. */
export interface Settings {
  readonly collar: number;
  readonly bit: number;
  readonly bushing: number;
  /** Steps during which another board lies half done. */
  readonly halfDone: number;
}

/** Counts what the shown steps of an order set, and how long boards lie half done. */
export function countSettings({ settings, halfDone: left, done }: ShownOrder): Settings {
  const shown = settings.slice(0, done);
  const count = (which: 'collar' | 'bit' | 'bushing') =>
    shown.filter((setting) => setting[which]).length;
  return {
    collar: count('collar'),
    bit: count('bit'),
    bushing: count('bushing'),
    halfDone: left.slice(0, done).filter((boards) => boards.length > 0).length,
  };
}

const times = (count: number) => (count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`);

/** What an order costs, in sentences. @param least settings of the collar that would do */
export function orderSentence(order: ShownOrder, least: number): string {
  const { collar, bit, bushing } = countSettings(order);
  const whole = order.done === order.runs.length;
  const head = `${whole ? 'In this order' : `Up to step ${order.done}`} the collar is set ${times(collar)}, and each time a test hole is drilled. The bit goes into the chuck ${times(bit)}, a bushing into the guide ${times(bushing)}.`;
  const better = !whole
    ? ''
    : collar === least
      ? ' No order sets it less often.'
      : ` Setting it ${times(least)} would do.`;
  const boards = [...new Set(order.halfDone.slice(0, order.done).flat())];
  const half =
    boards.length === 0
      ? ' No board lies half done while another is drilled.'
      : ` Half done while another is drilled: ${boards.join(', ')}.`;
  return `${head}${better}${half}`;
}
