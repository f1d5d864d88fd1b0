/** A paper that story sticks are printed on; sizes in mm. */
export interface Paper {
  readonly id: 'letter' | 'a4';
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** ANSI/ASME Y14.1 size A and ISO 216 A4. */
export const papers: Readonly<Record<Paper['id'], Paper>> = {
  letter: { id: 'letter', name: 'Letter', width: 215.9, height: 279.4 },
  a4: { id: 'a4', name: 'A4', width: 210, height: 297 },
};

/** What a printer may leave white around the page, mm; the style sheets of the papers say the same. */
export const MARGIN = 12;

/** The part of a page that is drawn on, in mm. A hair is left below, so that no page runs over. */
export function drawnPart(paper: Paper): { readonly width: number; readonly height: number } {
  return { width: paper.width - 2 * MARGIN, height: paper.height - 2 * MARGIN - 0.5 };
}
