import { EMPTY_PIECE } from '../../../core/piece/changePiece.ts';
import { type ReadSetup, decodeSetup, encodeSetup } from '../../../core/setup/setupLink.ts';
import { keep, readKept } from '../../keptHere.ts';

/** The piece that is being planned on this machine, and the joint of it that is on the bench. */
const PIECE = 'piece';
const ON_BENCH = 'piece-on-bench';

/** A piece as it is kept: a link without its reader's unit, or nothing where it has no joint yet. */
export function linkOf({ joints, labels, piece }: ReadSetup): string {
  return joints.length === 0 ? '' : encodeSetup({ joints, labels, piece });
}

/** The piece that was being planned here; an empty one where there is none. */
export function readDraft(): ReadSetup {
  const kept = readKept(PIECE);
  const decoded = typeof kept === 'string' && kept !== '' ? decodeSetup(kept) : undefined;
  return decoded?.ok ? decoded.setup : EMPTY_PIECE;
}

export function keepDraft(piece: ReadSetup): void {
  keep(PIECE, linkOf(piece));
}

/** Remembers which joint of the piece was taken to the bench. @param at its place, from 0 */
export function takeToBench(at: number): void {
  keep(ON_BENCH, at);
}

/** The place of the joint that was taken to the bench; null where none was. */
export function onBench(): number | null {
  const kept = readKept(ON_BENCH);
  return Number.isInteger(kept) ? (kept as number) : null;
}
