import type { GlueRoom } from '../../core/fit/glueRoom.ts';
import { type Unit, spoken } from '../drafting/reading.ts';
import type { GlueHole } from './geometry.ts';
import { ROOM_PARTS, milliliters } from './volumes.ts';

/** The drawing in sentences: room by part, glue, and what more glue would do. */
export function describeGlue(hole: GlueHole, room: GlueRoom, unit: Unit): string {
  const parts = ROOM_PARTS.filter(([id]) => room[id] > 0)
    .map(([id, name]) => `${name} ${milliliters(room[id])}`)
    .join(', ');
  const length = spoken(unit);
  const off = length(room.standsOff);
  const outcome = {
    room: 'It all has room.',
    'squeezes out': `${milliliters(room.over)} more than there is room for rises along the flutes and out.`,
    trapped: `${milliliters(room.over)} more than there is room for, and nowhere to go: board A stands off by ${off}.`,
  }[room.verdict];
  const lengths = `${length(hole.engagement - room.standsOff)} of pin in the hole and ${length(hole.allowance + room.standsOff)} of end gap past it`;
  return `A pin in its hole with ${lengths}. Room for ${milliliters(room.total)} of glue: ${parts}. Glue put in: ${milliliters(hole.glue)}. ${outcome} A deeper hole or a fluted pin makes more room, more glue less.`;
}
