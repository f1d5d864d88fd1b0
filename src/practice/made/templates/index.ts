import type { Template } from '../template.ts';
import { freeRoom, gapThatStays } from './endRoom.ts';
import { middleOfTheEdge } from './middleOfTheEdge.ts';
import { nameTheJoint } from './nameTheJoint.ts';
import { orderAtTheBench, orderAtTheDrill, orderOfAPiece } from './ordersOfWork.ts';
import { otherEnd } from './otherEnd.ts';
import { readTheRule } from './readTheRule.ts';
import { turnedOver } from './turnedOver.ts';

/** Every template, in the order of the course. */
export const templates: readonly Template[] = [
  nameTheJoint,
  readTheRule,
  middleOfTheEdge,
  otherEnd,
  turnedOver,
  freeRoom,
  gapThatStays,
  orderAtTheDrill,
  orderAtTheBench,
  orderOfAPiece,
];
