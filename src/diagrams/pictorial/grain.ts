import type { Grain } from './shapes.ts';
import { type Place, cross, difference, dot, length, moved, unit } from './space.ts';

/** Parts of a line along the fibers that are drawn, as a saw leaves them: [from, to] of its length. */
const PIECES: readonly (readonly (readonly [number, number])[])[] = [
  [
    [0.04, 0.58],
    [0.7, 0.96],
  ],
  [[0.1, 0.9]],
  [
    [0.05, 0.3],
    [0.4, 0.95],
  ],
  [[0.22, 0.97]],
];

/** Corners of an arc for each turn of a ring. */
const STEPS = 120;
/** Most rings on a face: of a board of absurd size only some are drawn. */
const MOST = 60;

/** From one ring that is drawn to the next, where those from `near` to `far` of the pith are seen. */
function ringStep(ring: number, near: number, far: number): number {
  return ring * Math.max(1, Math.ceil((far - near) / ring / MOST));
}

/** Distances from `origin` along `direction` that the corners of a face lie at. */
function reach(corners: readonly Place[], origin: Place, direction: Place): [number, number] {
  const at = corners.map((corner) => dot(difference(corner, origin), direction));
  return [Math.min(...at), Math.max(...at)];
}

/**
 * Lines on a face that the fibers lie in: where the rings of growth meet it. Each is in pieces.
 * `every` lines closer to each other than this are left out, mm.
 */
function longGrain(
  grain: Grain,
  corners: readonly Place[],
  normal: Place,
  every: number,
): Place[][] {
  const origin = corners[0]!;
  const { along, pith } = grain;
  const across = unit(cross(along, normal));
  // The pith's distance from the face, and its foot on it.
  const height = dot(difference(pith, origin), normal);
  const foot = dot(difference(pith, origin), across);
  const [low, high] = reach(corners, origin, across);
  const [start, end] = reach(corners, origin, along);
  const farthest = Math.hypot(height, Math.max(Math.abs(low - foot), Math.abs(high - foot)));
  const ring = ringStep(grain.ring, Math.abs(height), farthest);
  const lines: Place[][] = [];
  const placed: number[] = [low, high];
  for (let k = Math.ceil(Math.abs(height) / ring); k * ring <= farthest; k++) {
    const half = Math.sqrt(Math.max(0, (k * ring) ** 2 - height ** 2));
    for (const at of half === 0 ? [foot] : [foot - half, foot + half]) {
      if (at <= low || at >= high) continue;
      if (placed.some((other) => Math.abs(other - at) < every)) continue;
      placed.push(at);
      for (const [from, to] of PIECES[placed.length % PIECES.length]!) {
        const point = (part: number) =>
          moved(moved(origin, across, at), along, start + (end - start) * part);
        lines.push([point(from), point(to)]);
      }
    }
  }
  return lines;
}

/** Rings of growth on a face that cuts the fibers, square or not. */
function endGrain(grain: Grain, corners: readonly Place[], normal: Place): Place[][] {
  const origin = corners[0]!;
  const { along, pith } = grain;
  const lean = Math.abs(along.z) > 0.5 ? { x: 1, y: 0, z: 0 } : { x: 0, y: 0, z: 1 };
  const first = unit(cross(along, lean));
  const second = cross(along, first);
  /** Where a line along the fibers meets the face. */
  const onFace = (at: Place) =>
    moved(at, along, -dot(difference(at, origin), normal) / dot(along, normal));
  const distances = corners.map((corner) => {
    const from = difference(corner, pith);
    return length(difference(from, moved({ x: 0, y: 0, z: 0 }, along, dot(from, along))));
  });
  const farthest = Math.max(...distances);
  const ring = ringStep(grain.ring, 0, farthest);
  const rings: Place[][] = [];
  for (let radius = ring; radius <= farthest; radius += ring) {
    rings.push(
      Array.from({ length: STEPS + 1 }, (_, i) => {
        const angle = (i / STEPS) * 2 * Math.PI;
        return onFace(
          moved(moved(pith, first, radius * Math.cos(angle)), second, radius * Math.sin(angle)),
        );
      }),
    );
  }
  return rings;
}

/**
 * Grain on a flat face: lines along the fibers, or the rings where the face cuts them. One and the
 * same tree gives both, so that they meet at the arrises. Lines may run beyond the face.
 * @param normal of the face, of length 1
 * @param every least distance of lines along the fibers, mm
 */
export function grainOn(
  grain: Grain,
  corners: readonly Place[],
  normal: Place,
  every: number,
): Place[][] {
  return Math.abs(dot(grain.along, normal)) < 1e-6
    ? longGrain(grain, corners, normal, every)
    : endGrain(grain, corners, normal);
}
