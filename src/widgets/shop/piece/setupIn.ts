import { type DecodedSetup, decodeSetup } from '../../../core/setup/setupLink.ts';

/**
 * The setup of the last address that a text holds: copied with whatever stood around it, or saved
 * as a file.
 * @example setupIn('Here it is: https://example.org/bench/#1;kind=corner;…')
 */
export function setupIn(text: string): DecodedSetup {
  return decodeSetup(text.match(/#\d+;\S+/g)?.at(-1) ?? text.trim());
}
