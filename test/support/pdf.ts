/** What stands on the pages of a PDF, measured in millimeters from a page's upper left corner. */
import { OPS, getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A straight line that is drawn, or one side of an outline. */
export interface PdfLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly width: number;
}

/** A piece of writing; `x` and `y` are where its baseline starts. */
export interface PdfText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PdfLine[];
  readonly texts: readonly PdfText[];
  /** All its writing, in the order of the file. */
  readonly text: string;
}

const MM_PER_POINT = 25.4 / 72;

/** a, b, c, d, e, f of PDF: x' = a x + c y + e, y' = b x + d y + f. */
type Matrix = readonly [number, number, number, number, number, number];

function times(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [
    a * g + c * h,
    b * g + d * h,
    a * i + c * j,
    b * i + d * j,
    a * k + c * l + e,
    b * k + d * l + f,
  ];
}

/** How many numbers follow each part of a path: move, line, cubic, quadratic, close. */
const ARGUMENTS = [2, 2, 6, 4, 0];

/** The sides of a path's polygons; curves are passed over. */
function sidesOf(path: readonly number[]): (readonly [number, number, number, number])[] {
  const sides: (readonly [number, number, number, number])[] = [];
  let start = [0, 0];
  let here = [0, 0];
  for (let at = 0; at < path.length;) {
    const part = path[at]!;
    const count = ARGUMENTS[part]!;
    const end = part === 4 ? start : path.slice(at + 1 + count - 2, at + 1 + count);
    if (part === 0) start = end;
    if (part === 1 || part === 4) sides.push([here[0]!, here[1]!, end[0]!, end[1]!]);
    here = end;
    at += 1 + count;
  }
  return sides;
}

interface Operators {
  readonly fnArray: readonly number[];
  readonly argsArray: readonly unknown[];
}

function strokedLines({ fnArray, argsArray }: Operators, height: number): PdfLine[] {
  const lines: PdfLine[] = [];
  const kept: { matrix: Matrix; width: number }[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let width = 1;
  fnArray.forEach((operator, i) => {
    const given = argsArray[i] as never[];
    switch (operator) {
      case OPS.save:
        kept.push({ matrix, width });
        return;
      case OPS.paintFormXObjectBegin:
        kept.push({ matrix, width });
        if (given[0]) matrix = times(matrix, given[0] as Matrix);
        return;
      case OPS.restore:
      case OPS.paintFormXObjectEnd:
        ({ matrix, width } = kept.pop() ?? { matrix, width });
        return;
      case OPS.transform:
        matrix = times(matrix, given as unknown as Matrix);
        return;
      case OPS.setLineWidth:
        width = given[0] as unknown as number;
        return;
      case OPS.constructPath: {
        const [painted, [path]] = given as unknown as [number, [Record<number, number> | null]];
        const strokes = [OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.closeFillStroke];
        if (path === null || !strokes.includes(painted as never)) return;
        const [a, b, c, d, e, f] = matrix;
        const x = (px: number, py: number) => (a * px + c * py + e) * MM_PER_POINT;
        const y = (px: number, py: number) => (height - (b * px + d * py + f)) * MM_PER_POINT;
        for (const [x1, y1, x2, y2] of sidesOf(Object.values(path))) {
          lines.push({
            x1: x(x1, y1),
            y1: y(x1, y1),
            x2: x(x2, y2),
            y2: y(x2, y2),
            width: width * Math.hypot(a, b) * MM_PER_POINT,
          });
        }
      }
    }
  });
  return lines;
}

/** Reads every page of a PDF. */
export async function pagesOfPdf(file: Uint8Array): Promise<readonly PdfPage[]> {
  const reading = getDocument({ data: new Uint8Array(file), verbosity: 0 });
  const pdf = await reading.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const written = items.flatMap((item) => ('str' in item ? [item] : []));
    pages.push({
      width: width * MM_PER_POINT,
      height: height * MM_PER_POINT,
      lines: strokedLines(await page.getOperatorList(), height),
      texts: written
        .filter(({ str }) => str.trim() !== '')
        .map(({ str, transform }) => ({
          text: str,
          x: Number(transform[4]) * MM_PER_POINT,
          y: (height - Number(transform[5])) * MM_PER_POINT,
        })),
      text: written.map(({ str, hasEOL }) => str + (hasEOL ? ' ' : '')).join(''),
    });
  }
  await reading.destroy();
  return pages;
}
