import { encode } from 'uqr';

/** A QR code as a shape. */
export interface QrPath {
  /** Modules to a side, the quiet zone of four on every side included. */
  readonly size: number;
  /** SVG path data of the dark modules, one unit a module. */
  readonly d: string;
}

/**
 * A text as a QR code (ISO/IEC 18004), of error correction level M: a fold or a thumb mark on the
 * paper does no harm. Throws where the text is longer than a code can hold, about 2,300 characters.
 */
export function qrPath(text: string): QrPath {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const runs = data.flatMap((row, y) => {
    const parts: string[] = [];
    let start = -1;
    [...row, false].forEach((dark, x) => {
      if (dark && start < 0) start = x;
      if (!dark && start >= 0) {
        parts.push(`M${start},${y}h${x - start}v1h${start - x}z`);
        start = -1;
      }
    });
    return parts;
  });
  return { size, d: runs.join('') };
}
