import type { Template } from '../template.ts';
import {
  heightOfTheShelf,
  overhangOfTheTop,
  revealOfTheRail,
  setbackOfTheApron,
} from './acrossB.ts';
import { marksOnTheStile } from './alongTheStile.ts';
import { boardInASeason } from './boardInASeason.ts';
import { pinDiameter, pinsThatDontFit } from './choosingThePin.ts';
import { freeRoom, gapThatStays } from './endRoom.ts';
import { glueLine, verdictOfAFit } from './fitOfAPin.ts';
import { middleOfTheEdge } from './middleOfTheEdge.ts';
import { lineOfTheMiter, pinToTheToe } from './miterLine.ts';
import { nameTheJoint } from './nameTheJoint.ts';
import { orderAtTheBench, orderAtTheDrill, orderOfAPiece } from './ordersOfWork.ts';
import { otherEnd } from './otherEnd.ts';
import { clampsForAPanel, holeInTheEdge } from './panel.ts';
import { pinsDisagree } from './pinsDisagree.ts';
import { pinsForAPiece } from './pinsForAPiece.ts';
import { pullOfAPin } from './pullOfAPin.ts';
import { readTheRule } from './readTheRule.ts';
import { roomInTheLeg } from './roomInTheLeg.ts';
import { howManyPins, pitchOfARow, placeOfAPin, wrongHole } from './rowOfPins.ts';
import { holeFromTheStop, stopForABoard, stopInAnEdge, wrongDepth } from './settingTheStop.ts';
import { mostInTheFace, restInTheEnd, woodLeft } from './splittingTheDepth.ts';
import { turnedOver } from './turnedOver.ts';

/** Every template, in the order of the course. */
export const templates: readonly Template[] = [
  nameTheJoint,
  freeRoom,
  orderAtTheDrill,
  otherEnd,
  turnedOver,
  readTheRule,
  middleOfTheEdge,
  pinDiameter,
  pinsThatDontFit,
  mostInTheFace,
  restInTheEnd,
  woodLeft,
  stopForABoard,
  stopInAnEdge,
  holeFromTheStop,
  wrongDepth,
  howManyPins,
  pitchOfARow,
  placeOfAPin,
  wrongHole,
  orderAtTheBench,
  holeInTheEdge,
  clampsForAPanel,
  overhangOfTheTop,
  heightOfTheShelf,
  marksOnTheStile,
  revealOfTheRail,
  lineOfTheMiter,
  pinToTheToe,
  setbackOfTheApron,
  roomInTheLeg,
  glueLine,
  verdictOfAFit,
  gapThatStays,
  boardInASeason,
  pinsDisagree,
  pullOfAPin,
  pinsForAPiece,
  orderOfAPiece,
];
