import { type GlueRoom, type GlueRoomInput, fluteDepth } from '../../core/fit/glueRoom.ts';

/** How much wider than life the gap around the pin is drawn: a hair's breadth would not show. */
export const GAP_WIDENED = 10;

/** A hole as drilled into board B, and what is in it. Lengths in mm. */
export interface GlueHole extends GlueRoomInput {
  /** Wood from the face to the far side; a hole in an end has more than is drawn. */
  readonly limit: number;
}

/**
 * The hole cut along its axis, in mm: `y` down from B's face, widths from the axis. All that is
 * here is to scale, but for the width of the gap around the pin.
 */
export interface GlueShapes {
  readonly holeRadius: number;
  /** Of the pin as it is drawn, its gap widened. */
  readonly pinRadius: number;
  /** How far A stands off B, and the pin off its place. */
  readonly standsOff: number;
  /** Where the pin ends, the full diameter ends and the point of the bit ends. */
  readonly pinEnd: number;
  readonly bottom: number;
  readonly tip: number;
  /** The far side of B, or as much as is drawn of it. */
  readonly far: { readonly y: number; readonly real: boolean };
  /** Up to where the glue stands, put in at the bottom; 0 is B's face. */
  readonly glueTop: number;
  /** Depth of a flute, a groove as wide as twice its depth. */
  readonly fluteDepth: number;
  readonly flutes: number;
}

/** Up to where glue stands in the hole, in mm below B's face, filled from the bottom. */
function glueTopOf(hole: GlueHole, room: GlueRoom, pinEnd: number): number {
  const bottom = hole.engagement + hole.allowance;
  const area = (Math.PI / 4) * hole.hole ** 2;
  if (hole.glue <= room.inCone) {
    // A cone fills like the cube of its height.
    const part = room.inCone === 0 ? 0 : Math.cbrt(hole.glue / room.inCone);
    return bottom + hole.cone * (1 - part);
  }
  const above = hole.glue - room.inCone;
  const inGap = area * (bottom - pinEnd);
  if (above <= inGap) return bottom - above / area;
  const ring = room.around + room.inFlutes;
  if (ring === 0) return pinEnd;
  return Math.max(0, pinEnd - ((above - inGap) / ring) * hole.engagement);
}

/** @param room what `glueRoom` finds for this hole */
export function glueShapes(hole: GlueHole, room: GlueRoom): GlueShapes {
  const holeRadius = hole.hole / 2;
  const glueLine = Math.max(0, hole.hole - hole.pin) / 2;
  const pinEnd = hole.engagement - room.standsOff;
  const bottom = hole.engagement + hole.allowance;
  const tip = bottom + hole.cone;
  const real = hole.limit - tip <= MOST_WOOD;
  return {
    holeRadius,
    pinRadius: Math.max(holeRadius / 2, holeRadius - glueLine * GAP_WIDENED),
    standsOff: room.standsOff,
    pinEnd,
    bottom,
    tip,
    far: { y: real ? hole.limit : tip + MOST_WOOD, real },
    glueTop: glueTopOf(hole, room, pinEnd),
    fluteDepth: fluteDepth(hole.fluteArea),
    flutes: hole.flutes,
  };
}

/** Wood that is drawn past the point where the board goes on much farther. */
const MOST_WOOD = 6;
