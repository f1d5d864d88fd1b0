import type { JointKind, JointSpec, Pin } from '../../../core/joint/types.ts';

/** A joint whose pin's length is to be split. */
export type Split = JointSpec & { readonly pin: Pin };

/** Which size of B limits its hole: in a corner joint B is drilled in its face, else in its edge. */
export function limitingSize(kind: JointKind): 'thickness' | 'width' {
  return kind === 'corner' ? 'thickness' : 'width';
}
