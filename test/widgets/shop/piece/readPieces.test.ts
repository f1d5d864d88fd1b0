import { describe, expect, it } from 'vitest';
import { decodeSetup } from '../../../../src/core/index.ts';
import { drillList } from '../../../../src/core/piece/drillList.ts';
import { pieceCautions } from '../../../../src/core/piece/pieceCautions.ts';
import { planPiece } from '../../../../src/core/piece/planPiece.ts';
import { isJoint } from '../../../../src/practice/questions/setupKinds.ts';
import { readPieces } from '../../../../src/widgets/shop/piece/readPieces.ts';
import { setups, textOf } from '../../../practice/contentFiles.ts';

const setupOf = (name: string) => {
  const setup = setups.get(name);
  return setup && isJoint(setup) ? setup : undefined;
};
const read = (text: string) => readPieces('pieces.yaml', text, setupOf);

const PIECE = `
stand:
  title: Stand
  joints:
    - { name: Side to top, setup: stand-corner, a: Side, b: Top, count: 2 }
  boards: { Side: 2, Top: 1 }
`;

describe('the pieces to start from', () => {
  const pieces = read(textOf('content/pieces.yaml'));

  it.each(pieces.map(({ title, link }) => [title, link]))(
    '%s can be made as it is, and no board of it disagrees with itself',
    (_, link) => {
      const decoded = decodeSetup(link);
      if (!decoded.ok) throw new Error(decoded.reason);
      const piece = planPiece(decoded.setup);
      const cautions = pieceCautions(piece, drillList(piece.joints));
      expect(cautions.filter(({ severity }) => severity !== 'note')).toEqual([]);
      for (const { plan } of piece.joints) {
        expect(plan.cautions.filter(({ severity }) => severity !== 'note')).toEqual([]);
      }
    },
  );

  it.each([
    ['a joint that is not there', PIECE.replace('stand-corner', 'stand-crner'), /pieces\.yaml:5/],
    ['a board that is not counted', PIECE.replace('Top: 1', 'Lid: 1'), /'Top' is a joint's board/],
    ['a field that it has no use for', PIECE.replace('count', 'times'), /pieces\.yaml:5.*times/],
  ])('refuses %s, and says where', (_, text, says) => {
    expect(() => read(text)).toThrow(says);
  });
});
