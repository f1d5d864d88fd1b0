import type { Marked, OrderQuestion } from './types.ts';

/** True where both hold the same ids, each once. */
function samePieces(given: readonly string[], order: readonly string[]): boolean {
  return (
    given.length === order.length &&
    new Set(given).size === order.length &&
    order.every((id) => given.includes(id))
  );
}

/** Marks an order: right where no step comes before one that it has to wait for. */
export function markOrder(question: OrderQuestion, given: readonly string[]): Marked {
  const { steps, order } = question;
  if (!samePieces(given, order)) {
    return {
      verdict: 'unreadable',
      remarks: [{ says: ['Give every step its place. Then press Check.'] }],
    };
  }
  const step = (id: string) => steps.find((each) => each.id === id)!;
  const outOfPlace = given.findIndex((id, i) =>
    step(id).after.some((other) => given.indexOf(other) > i),
  );
  if (outOfPlace < 0) {
    return {
      verdict: 'right',
      remarks: order.slice(1).map((id) => ({ says: step(id).why, choice: id })),
    };
  }
  const first = step(given[outOfPlace]!);
  const well =
    outOfPlace === 0
      ? 'The very first step comes too soon: '
      : `${outOfPlace === 1 ? 'The first step can stand' : `The first ${outOfPlace} steps can stand`}. The next one comes too soon: `;
  return {
    verdict: 'wrong',
    remarks: [
      { says: [well, ...first.says], choice: first.id },
      {
        says: first.why,
        choice: first.id,
        ...(first.misconception && { misconception: first.misconception }),
      },
    ],
  };
}
