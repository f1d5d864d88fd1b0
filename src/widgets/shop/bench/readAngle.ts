/**
 * The angle of a bit's point as it was typed, in degrees from 10 to 180, or null for anything else.
 * @example readAngle('118°') // 118
 */
export function readAngle(text: string): number | null {
  const degrees = /^\s*(\d+(?:[.,]\d+)?)\s*°?\s*$/.exec(text)?.[1]?.replace(',', '.');
  const value = Number(degrees);
  return degrees !== undefined && value >= 10 && value <= 180 ? value : null;
}
