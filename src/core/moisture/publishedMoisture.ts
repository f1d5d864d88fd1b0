/**
 * Half of the cells of the published table: by °F, pairs of relative humidity and moisture
 * content of wood, both in percent. Every other cell of each row.
 *
 * Source: Wood Handbook, FPL-GTR-190, Table 4-2 (read).
 */
export const publishedMoisture: Readonly<Record<number, readonly (readonly [number, number])[]>> = {
  30: [
    [5, 1.4],
    [15, 3.7],
    [25, 5.5],
    [35, 7.1],
    [45, 8.7],
    [55, 10.4],
    [65, 12.4],
    [75, 14.9],
    [85, 18.5],
    [95, 24.3],
  ],
  40: [
    [10, 2.6],
    [20, 4.6],
    [30, 6.3],
    [40, 7.9],
    [50, 9.5],
    [60, 11.3],
    [70, 13.5],
    [80, 16.5],
    [90, 21.0],
  ],
  50: [
    [5, 1.4],
    [15, 3.6],
    [25, 5.5],
    [35, 7.1],
    [45, 8.7],
    [55, 10.3],
    [65, 12.3],
    [75, 14.8],
    [85, 18.4],
    [95, 24.3],
  ],
  60: [
    [10, 2.5],
    [20, 4.6],
    [30, 6.2],
    [40, 7.8],
    [50, 9.4],
    [60, 11.1],
    [70, 13.3],
    [80, 16.2],
    [90, 20.7],
  ],
  70: [
    [5, 1.3],
    [15, 3.5],
    [25, 5.4],
    [35, 6.9],
    [45, 8.5],
    [55, 10.1],
    [65, 12.0],
    [75, 14.4],
    [85, 17.9],
    [95, 23.9],
  ],
  80: [
    [10, 2.4],
    [20, 4.4],
    [30, 6.1],
    [40, 7.6],
    [50, 9.1],
    [60, 10.8],
    [70, 12.9],
    [80, 15.7],
    [90, 20.2],
  ],
  90: [
    [5, 1.2],
    [15, 3.4],
    [25, 5.1],
    [35, 6.7],
    [45, 8.1],
    [55, 9.7],
    [65, 11.5],
    [75, 13.9],
    [85, 17.3],
    [95, 23.3],
  ],
  100: [
    [10, 2.3],
    [20, 4.2],
    [30, 5.8],
    [40, 7.2],
    [50, 8.7],
    [60, 10.3],
    [70, 12.3],
    [80, 15.1],
    [90, 19.5],
  ],
  110: [
    [5, 1.1],
    [15, 3.2],
    [25, 4.9],
    [35, 6.3],
    [45, 7.7],
    [55, 9.2],
    [65, 11.0],
    [75, 13.2],
    [85, 16.6],
    [95, 22.4],
  ],
  120: [
    [10, 2.1],
    [20, 3.9],
    [30, 5.4],
    [40, 6.8],
    [50, 8.2],
    [60, 9.7],
    [70, 11.7],
    [80, 14.4],
    [90, 18.6],
  ],
  130: [
    [5, 1.0],
    [15, 2.9],
    [25, 4.5],
    [35, 5.9],
    [45, 7.2],
    [55, 8.7],
    [65, 10.3],
    [75, 12.5],
    [85, 15.8],
    [95, 21.5],
  ],
  140: [
    [10, 1.9],
    [20, 3.6],
    [30, 5.0],
    [40, 6.3],
    [50, 7.7],
    [60, 9.1],
    [70, 11.0],
    [80, 13.6],
    [90, 17.7],
  ],
};

/**
 * The table's row nearest to a temperature in °C.
 * @example publishedRow(21).fahrenheit // 70
 */
export function publishedRow(celsius: number): {
  readonly fahrenheit: number;
  readonly cells: readonly (readonly [humidity: number, moisture: number])[];
} {
  const asked = (celsius * 9) / 5 + 32;
  const [fahrenheit, cells] = Object.entries(publishedMoisture)
    .map(([row, found]) => [Number(row), found] as const)
    .reduce((best, row) => (Math.abs(row[0] - asked) < Math.abs(best[0] - asked) ? row : best));
  return { fahrenheit, cells };
}
