import { plainText } from '../working/plainText.ts';
import type { Sentence } from '../working/sentence.ts';
import type { Caution, Severity, System } from './types.ts';

/** Something that stands in the way or is worth a word, not yet written out in a unit. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: Sentence;
  readonly remedy: Sentence;
}

/** Makes a finding from what is the matter and what would mend it. */
export function finding(
  code: string,
  severity: Severity,
  message: Sentence,
  remedy: Sentence,
): Finding {
  return { code, severity, message, remedy };
}

/**
 * A finding as the plan tells it. Written out only for the plan that is shown: a dozen pins are
 * tried for each one that is chosen.
 */
export function toCaution({ code, severity, message, remedy }: Finding, system: System): Caution {
  return {
    code,
    severity,
    message: plainText(message, system),
    remedy: plainText(remedy, system),
    says: { message, remedy },
  };
}
