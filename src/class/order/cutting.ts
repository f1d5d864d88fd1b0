import { type Mm, mm } from '../../core/length/mm.ts';

/** One board as bought, and the pieces that are cut from it, the longest first. */
export interface CutBoard {
  readonly pieces: readonly Mm[];
  /** What is left over, mm. */
  readonly left: Mm;
}

export interface Cutting {
  readonly boards: readonly CutBoard[];
  /** Pieces that are longer than a board. */
  readonly tooLong: readonly Mm[];
}

/**
 * Which pieces to cut from which board: the longest first, each from the first board that still
 * has room. That never takes more than 11/9 of the fewest boards possible, plus 6/9 (Dósa 2007,
 * 'The tight bound of first fit decreasing bin-packing').
 * @param pieces lengths, mm, more than 0
 * @param board length of a board as bought, mm
 * @param allowance what each cut takes, saw kerf and trimming together, mm, 0 or more: once a piece
 */
export function cutting(pieces: readonly Mm[], board: Mm, allowance: Mm): Cutting {
  const boards: { pieces: Mm[]; left: number }[] = [];
  const tooLong: Mm[] = [];
  for (const piece of [...pieces].sort((a, b) => b - a)) {
    const takes = piece + allowance;
    if (takes > board + 1e-9) {
      tooLong.push(piece);
      continue;
    }
    let from = boards.find(({ left }) => left >= takes - 1e-9);
    if (!from) boards.push((from = { pieces: [], left: board }));
    from.pieces.push(piece);
    from.left -= takes;
  }
  return {
    boards: boards.map(({ pieces, left }) => ({ pieces, left: mm(Math.max(0, left)) })),
    tooLong,
  };
}
