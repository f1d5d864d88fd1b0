import { agreementOf } from './agreement.ts';
import { behindOf } from './behind.ts';
import type { Calculation } from './calculation.ts';
import { caseCornerOf } from './caseCorner.ts';
import { clampsOf } from './clamps.ts';
import { comparedCornersOf } from './comparedCorners.ts';
import { comparedPullOf } from './comparedPull.ts';
import { equilibriumOf } from './equilibrium.ts';
import { fitOf } from './fit.ts';
import { glueRoomOf } from './glueRoom.ts';
import { movementOf } from './movement.ts';
import { oddsOf } from './odds.ts';
import { rowMovementOf } from './rowMovement.ts';
import { ruleReadingOf } from './ruleReading.ts';
import { seasonsOf } from './seasons.ts';
import { withdrawalOf } from './withdrawal.ts';

/** Every calculation besides a joint's plan, by the key that a setup writes it under. */
export const calculations: ReadonlyMap<string, Calculation> = new Map([
  ['fit', fitOf],
  ['glueRoom', glueRoomOf],
  ['equilibrium', equilibriumOf],
  ['movement', movementOf],
  ['seasons', seasonsOf],
  ['rowMovement', rowMovementOf],
  ['odds', oddsOf],
  ['agreement', agreementOf],
  ['withdrawal', withdrawalOf],
  ['comparedPull', comparedPullOf],
  ['caseCorner', caseCornerOf],
  ['comparedCorners', comparedCornersOf],
  ['clamps', clampsOf],
  ['ruleReading', ruleReadingOf],
  ['behind', behindOf],
]);
