import type { Board, JointKind, JointSpec, System } from '../joint/types.ts';
import { inches, type Mm, mm } from '../length/mm.ts';

/** A length that is a round number in either system: the one, not a conversion of the other. */
type Sizes = (inch: number, metric: number) => Mm;

const sizesIn: Record<System, Sizes> = {
  in: (inch) => inches(inch),
  mm: (_, metric) => mm(metric),
};

/**
 * A job for the trial run, one of each kind: boards of unequal thickness and length, and a guide
 * a little off the middle, so that a mistake shows.
 */
export function trialJob(kind: JointKind, system: System): JointSpec {
  const size = sizesIn[system];
  const board = (thickness: Mm, width: Mm, length: Mm): Board => ({
    thickness,
    width,
    length,
    species: 'yellow-poplar',
  });
  const guide = {
    bushing: size(3 / 4, 20),
    standoff: size(1 / 16, 2),
    offset: size(1 / 32, 0.8),
    centering: false,
  };
  // A measured spur that is a round number: so are the depths, and a stop can be set to them.
  const bit = { point: { kind: 'brad', spur: size(1 / 8, 3) } } as const;
  const thin = size(3 / 4, 18);
  switch (kind) {
    case 'edge':
      return {
        kind,
        system,
        guide,
        bit,
        a: board(size(13 / 16, 20), size(5.5, 140), size(24, 600)),
        b: board(thin, size(4.5, 115), size(25, 625)),
      };
    case 'corner':
      return {
        kind,
        system,
        guide,
        bit,
        a: board(thin, size(11.25, 285), size(24, 600)),
        b: board(size(7 / 8, 22), size(11.25, 285), size(30, 750)),
      };
    case 'tee':
      return {
        kind,
        system,
        guide,
        bit,
        a: board(thin, size(11.25, 285), size(24, 600)),
        b: board(size(7 / 8, 22), size(12, 300), size(36, 900)),
        at: size(8, 200),
      };
    case 'frame':
      return {
        kind,
        system,
        guide,
        bit,
        a: board(thin, size(2.5, 65), size(14, 350)),
        b: board(size(7 / 8, 22), size(2, 50), size(24, 600)),
        at: size(1, 25),
      };
    case 'miter':
      return {
        kind,
        system,
        guide,
        bit,
        a: board(thin, size(2.5, 65), size(16, 400)),
        b: board(thin, size(2.5, 65), size(20, 500)),
      };
    case 'leg': {
      const side = size(1.75, 44);
      return {
        kind,
        system,
        guide,
        bit,
        a: board(thin, size(4, 100), size(14, 350)),
        b: board(side, side, size(18, 450)),
        stagger: size(1, 25),
      };
    }
  }
}
