/** Every comparison of the calculator with a value from outside it: the Checks page and the tests show the same rows. */
import { boardRows } from './boards.ts';
import { caseCornerRows } from './caseCorner.ts';
import type { CheckGroup } from './checkRow.ts';
import { drillPointRows } from './drillPoint.ts';
import { equilibriumMoistureRows } from './equilibriumMoisture.ts';
import { movementRows } from './movement.ts';
import { oddsRows } from './odds.ts';
import { shopRuleRows } from './shopRules.ts';
import { toleranceGradeRows } from './toleranceGrades.ts';
import { workedJointRows } from './workedJoints.ts';

export const checkGroups: readonly CheckGroup[] = [
  {
    id: 'worked-joints',
    title: 'Joints worked by hand',
    says: 'The planner’s numbers for joints that were also worked with a pencil. Which pins are in stock is from memory; that the rules pick this one is what is checked.',
    rows: workedJointRows,
  },
  {
    id: 'drill-point',
    title: 'The point of a bit',
    says: 'How far the point of a twist bit goes beyond its full diameter.',
    rows: drillPointRows,
  },
  {
    id: 'tolerance-grades',
    title: 'How closely a bit is made',
    says: 'How far a bit may be thinner than its name when it is made to h8: the calculator’s formula against the table of the standard. That twist bits are made to h8 is from memory; measure yours.',
    rows: toleranceGradeRows,
  },
  {
    id: 'boards',
    title: 'Boards as they are sold',
    says: 'What a board measures, by its name. A name is not a measurement: measure your board.',
    rows: boardRows,
  },
  {
    id: 'moisture',
    title: 'Moisture of wood in air',
    says: 'The moisture that wood comes to in air of one temperature and humidity: half of the cells of the published table, against the equation that the calculator uses.',
    rows: equilibriumMoistureRows,
  },
  {
    id: 'movement',
    title: 'How wood moves',
    says: 'The handbook’s worked example, then the coefficients in one of its tables against what follows from the shrinkage in another.',
    rows: movementRows,
  },
  {
    id: 'odds',
    title: 'Odds that two pins go in',
    says: 'Joints drilled and tried by chance in the calculator, against the exact formula. A sample never hits it; it has to come as near as chance allows, four standard deviations.',
    rows: oddsRows,
  },
  {
    id: 'case-corner',
    title: 'Strength of a case corner',
    says: 'The published formula at the ends of the sizes that were tried. A comparison of sizes, not a rating of any joint.',
    rows: caseCornerRows,
  },
  {
    id: 'shop-rules',
    title: 'Rules of the shop',
    says: 'Habits differ, and some contradict each other. They stand here beside what the calculator does unless you set it otherwise. None is judged, whatever its source: there is no true one.',
    rows: shopRuleRows,
  },
];
