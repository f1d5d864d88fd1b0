import { plainText } from '../working/plainText.ts';
import type { Sentence } from '../working/sentence.ts';
import type { Caution, Severity, System } from './types.ts';

/** Makes a caution from what is the matter and what would mend it. */
export function caution(
  code: string,
  severity: Severity,
  system: System,
  message: Sentence,
  remedy: Sentence,
): Caution {
  return {
    code,
    severity,
    message: plainText(message, system),
    remedy: plainText(remedy, system),
    says: { message, remedy },
  };
}
