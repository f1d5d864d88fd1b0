import type { GlueRoom } from '../../../core/fit/glueRoom.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';
import type { GlueHole, GlueShapes } from '../../../diagrams/glue/geometry.ts';
import { drops, milliliters } from '../../../diagrams/glue/volumes.ts';

/** Room and glue in words: how much, and what comes of it. */
export function glueSentence(hole: GlueHole, room: GlueRoom, shapes: GlueShapes): Sentence {
  const about = (volume: number) => `${milliliters(volume)} (${drops(volume)})`;
  const both = `There is room for ${about(room.total)}, and ${about(hole.glue)} of glue is in the hole.`;
  switch (room.verdict) {
    case 'trapped':
      return say`${both} The other ${milliliters(room.over)} has nowhere to go: a plain pin closes the hole like a piston. The joint stays open by ${room.standsOff}, or the wood splits when you force it.`;
    case 'squeezes out':
      return say`${both} The other ${milliliters(room.over)} rises along the flutes and out at the joint. It closes; wipe it off.`;
    case 'room':
      return shapes.glueTop >= shapes.pinEnd && hole.glue > 0
        ? say`${both} It all lies under the end of the pin and glues nothing there. Spread it on the wall of the hole.`
        : say`${both} It all has room.`;
  }
}
