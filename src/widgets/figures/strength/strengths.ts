import type { Mm } from '../../../core/length/mm.ts';

/** Everything that one of two joints may differ in. */
export interface Joint {
  readonly diameter: Mm;
  /** Of the pin in the wood that holds it; in a frame, in the rail. */
  readonly depth: Mm;
  /** Of the pin in the face of a case corner. */
  readonly faceDepth: Mm;
  readonly clearance: Mm;
  readonly grooved: boolean;
  readonly grain: 'end' | 'side';
  /** Between the two pins of a frame, and from the lower one to the rail's edge. */
  readonly spacing: Mm;
  readonly edgeDistance: Mm;
}
