import fc from 'fast-check';

/**
 * Any text, of every sign that Unicode has room for but halves of pairs. As `fc.string` with its
 * unit 'binary', which first lists them all, and that takes a second in every worker.
 */
export function anyText(maxLength?: number): fc.Arbitrary<string> {
  const sign = fc.oneof(
    fc.integer({ min: 0, max: 0x7f }),
    fc.integer({ min: 0, max: 0xd7ff }),
    fc.integer({ min: 0xe000, max: 0x10ffff }),
  );
  return fc
    .array(sign, maxLength === undefined ? {} : { maxLength })
    .map((signs) => String.fromCodePoint(...signs));
}
