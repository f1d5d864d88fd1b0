/**
 * A whole number of 32 bits, from 0, for a text: FNV-1a, its bits mixed once more. It tells texts
 * apart and spreads seeds; it hides nothing and proves nothing.
 */
export function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  }
  sum = Math.imul(sum ^ (sum >>> 16), 0x85ebca6b);
  sum = Math.imul(sum ^ (sum >>> 13), 0xc2b2ae35);
  return (sum ^ (sum >>> 16)) >>> 0;
}
