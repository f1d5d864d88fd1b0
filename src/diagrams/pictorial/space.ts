/** A place or a direction in the joint, in mm; z is up. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function place(x: number, y: number, z: number): Place {
  return { x, y, z };
}

/** The place moved by a number of times a direction. */
export function moved(from: Place, direction: Place, by: number): Place {
  return {
    x: from.x + direction.x * by,
    y: from.y + direction.y * by,
    z: from.z + direction.z * by,
  };
}

export function difference(a: Place, b: Place): Place {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

export function dot(a: Place, b: Place): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Place, b: Place): Place {
  return {
    x: a.y * b.z - a.z * b.y,
    y: a.z * b.x - a.x * b.z,
    z: a.x * b.y - a.y * b.x,
  };
}

export function length(a: Place): number {
  return Math.hypot(a.x, a.y, a.z);
}

/** A direction of length 1. */
export function unit(a: Place): Place {
  const size = length(a) || 1;
  return { x: a.x / size, y: a.y / size, z: a.z / size };
}
