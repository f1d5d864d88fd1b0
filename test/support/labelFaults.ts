import type { Sheet } from '../../src/diagrams/drafting/ink.ts';
import { labelBox } from '../../src/diagrams/drafting/label.ts';
import { overlap } from '../../src/diagrams/drafting/point.ts';

/** Labels that stand on each other or run off the sheet, and lines that lead nowhere, in words. */
export function labelFaults(sheet: Sheet): string[] {
  const boxes = sheet.labels
    .filter((label) => label.text.in !== '')
    .map((label) => ({ text: `${label.text.in}|${label.text.mm}`, box: labelBox(label) }));
  const out = sheet.strokes
    .filter((stroke) => /NaN|Infinity/.test(stroke.d))
    .map((stroke) => `${stroke.pen} leads nowhere: ${stroke.d}`);
  boxes.forEach(({ text, box }, i) => {
    if (box.left < -1 || box.right > sheet.width + 1 || box.top < 0 || box.bottom > sheet.height) {
      out.push(`${text} runs off the sheet`);
    }
    for (const other of boxes.slice(i + 1)) {
      if (overlap(box, other.box)) out.push(`${text} stands on ${other.text}`);
    }
  });
  return out;
}
