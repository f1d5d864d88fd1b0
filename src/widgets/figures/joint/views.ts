import type { JointSpec } from '../../../core/joint/types.ts';

/** The drawings of a joint that a lesson may show. */
export const VIEWS = ['pictorial', 'section', 'layout'] as const;

export type View = (typeof VIEWS)[number];

export const viewNames: Readonly<Record<View, string>> = {
  pictorial: 'In space',
  section: 'Cut along a pin',
  layout: 'Row of pins',
};

/** A joint to start from, by the name that its reader chooses it by. */
export interface StartingJoint {
  readonly label: string;
  readonly spec: JointSpec;
}
