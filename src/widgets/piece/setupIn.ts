import { type DecodedSetup, decodeSetup } from '../../core/setup/setupLink.ts';

/**
 * The setup of the address that a text holds: as it was copied, or as a kept file has it.
 * @example setupIn('https://example.org/bench/#1;kind=corner;…')
 */
export function setupIn(text: string): DecodedSetup {
  return decodeSetup(text.slice(text.indexOf('#') + 1).trim());
}
