import { onMount } from 'svelte';
import { NO_LABEL } from '../../../core/setup/labels.ts';
import { type ReadSetup, decodeSetup } from '../../../core/setup/setupLink.ts';
import { startingJoint } from '../bench/startingJoints.ts';
import { units } from '../../units.svelte.ts';

const EXAMPLE: ReadSetup = {
  joints: [startingJoint('corner', 'in')],
  labels: [NO_LABEL],
  piece: { title: '', boards: [] },
};

/**
 * The setup in the page's address; an example where there is none, or where it can't be read. Make
 * one while a component is set up: it follows the address for as long as that is shown.
 */
export class LinkedSetup {
  setup = $state.raw(EXAMPLE);
  /** Why the link can't be read, in a sentence; empty where it can. */
  problem = $state('');
  /** True once the page is alive and its address has been read. */
  ready = $state(false);

  constructor() {
    onMount(() => {
      const open = () => this.#open();
      open();
      this.ready = true;
      addEventListener('hashchange', open);
      return () => removeEventListener('hashchange', open);
    });
  }

  get isExample(): boolean {
    return this.setup === EXAMPLE;
  }

  #open(): void {
    this.problem = '';
    this.setup = EXAMPLE;
    if (!/^#\d/.test(location.hash)) return;
    const decoded = decodeSetup(location.hash);
    if (!decoded.ok) {
      this.problem = decoded.reason;
      return;
    }
    this.setup = decoded.setup;
    if (decoded.setup.show) units.show(decoded.setup.show);
  }
}
