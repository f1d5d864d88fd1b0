/** How many times full size small offsets may be drawn, coarse enough to stay put as they change. */
const TIMES = [2, 5, 10, 15, 20, 30, 40, 60, 80, 100, 120, 150, 200, 250, 300, 400, 600, 800, 1000];
/** A screen's px in a mm. */
const PX = 96 / 25.4;

/** The largest magnification at which a length of `extent` mm still has room in `room` px. */
export function magnify(extent: number, room: number): { times: number; scale: number } {
  const most = room / (Math.max(extent, 1e-6) * PX);
  const times = TIMES.findLast((each) => each <= most) ?? TIMES[0]!;
  return { times, scale: times * PX };
}
