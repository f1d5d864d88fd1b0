import type { JointSpec, System } from '../../core/joint/types.ts';

/** A calculation other than a joint's plan, set up: its name in `calculations` and its settings. */
export interface Calculated {
  readonly calculation: string;
  readonly system: System;
  readonly values: unknown;
}

/** What content/setups.yaml may set up under a name. */
export type Setup = JointSpec | Calculated;

export function isJoint(setup: Setup): setup is JointSpec {
  return 'kind' in setup;
}
