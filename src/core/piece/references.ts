import type { JointPlan } from '../joint/types.ts';

/** What a board is measured from, in the trade's words. */
export interface References {
  /** Where the rule is hooked to lay out the row: 'reference edge', 'reference end' or 'heel'. */
  readonly along: 'reference edge' | 'reference end' | 'heel';
  /** What the row's distance across is measured from. */
  readonly across: 'reference face' | 'reference edge' | 'reference end' | 'outer face';
  /** The side that the holes go into. */
  readonly drilled: 'end' | 'edge' | 'face' | 'cut';
}

/**
 * What both boards of a joint are measured from: the row runs along A's end from its reference
 * edge, along A's edge from its reference end, and in a miter from the heel.
 * @example referencesOf(planJoint(spec)).b.across // 'reference end' of a corner's B
 */
export function referencesOf(plan: JointPlan): { readonly a: References; readonly b: References } {
  switch (plan.kind) {
    case 'edge': {
      const edge = {
        along: 'reference end',
        across: 'reference face',
        drilled: 'edge',
      } as const;
      return { a: edge, b: edge };
    }
    case 'corner':
    case 'tee':
      return plan.spec.drilled === 'end'
        ? {
            a: { along: 'reference edge', across: 'reference face', drilled: 'end' },
            b: { along: 'reference edge', across: 'reference end', drilled: 'face' },
          }
        : {
            a: { along: 'reference end', across: 'reference face', drilled: 'edge' },
            b: { along: 'reference end', across: 'reference edge', drilled: 'face' },
          };
    case 'frame':
      return {
        a: { along: 'reference edge', across: 'reference face', drilled: 'end' },
        b: { along: 'reference end', across: 'reference face', drilled: 'edge' },
      };
    case 'miter': {
      const member = { along: 'heel', across: 'reference face', drilled: 'cut' } as const;
      return { a: member, b: member };
    }
    case 'leg':
      return {
        a: { along: 'reference edge', across: 'reference face', drilled: 'end' },
        b: { along: 'reference end', across: 'outer face', drilled: 'face' },
      };
  }
}
