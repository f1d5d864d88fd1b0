import { planJoint } from '../../../core/joint/planJoint.ts';
import type { ConsideredPin, JointSpec, System } from '../../../core/joint/types.ts';
import { plainText } from '../../../core/working/plainText.ts';
import { allowedDiameters } from '../../../core/stock/diameterRules.ts';
import { stockPins } from '../../../core/stock/pins.ts';
import type { Draws } from '../draws.ts';
import { about, boardsIn, jointOf } from '../joints.ts';
import { passedOver, withMore } from '../numbersFrom.ts';
import type { Template } from '../template.ts';

/** A joint whose pin is still to be chosen. */
function undecided(draws: Draws, system: System): JointSpec {
  const kind = draws.joint(['corner', 'tee', 'frame', 'edge']);
  return { ...jointOf(draws, kind, system), pin: 'choose' };
}

/** Diameters in stock, the thinnest first. */
function diametersOf(system: System): readonly number[] {
  return [...new Set(stockPins(system).map(({ diameter }) => diameter))];
}

/** Which diameter does the shop table give? */
export const pinDiameter: Template = {
  id: 'pin-diameter',
  revision: 1,
  lesson: 'choosing-the-pin',
  joints: ['corner', 'tee', 'frame', 'edge'],
  kind: 'one',
  misconceptions: ['thickest-pin', 'thin-pin-is-safe', 'table-by-the-other-board'],
  draft(draws, system) {
    const spec = undecided(draws, system);
    const { setup, numbers } = about(spec);
    const byTable = (thickness: JointSpec['a']['thickness']) => {
      const { allows, outsideTable } = allowedDiameters(thickness, 'shop-table', system);
      const allowed = stockPins(system).filter(allows);
      return outsideTable ? [] : [...new Set(allowed.map(({ diameter }) => diameter))];
    };
    const [right, ...others] = byTable(spec.a.thickness);
    const otherBoards = byTable(spec.b.thickness);
    const chosen = planJoint(spec).pin?.diameter;
    const clear = right !== undefined && others.length === 0 && chosen === right;
    const diameters = diametersOf(system);
    return {
      kind: 'one',
      setup,
      numbers: clear
        ? withMore(
            numbers,
            diameters.map((diameter, i) => [`stock.${i}`, 'd', diameter]),
          )
        : passedOver(numbers, 'the table gives two diameters, or none'),
      situation: boardsIn[spec.kind],
      ask: 'Which pin does the shop table give for this joint?',
      choices: diameters.map((diameter, i) => {
        const choice = { id: `pin-${i + 1}`, of: `stock.${i}` };
        if (diameter === right) {
          return {
            ...choice,
            right: true,
            why: 'A is drilled where it is thin, in its edge or end, so A decides. For a board {a.thickness} thick the table says {this}.',
          };
        }
        if (otherBoards.length === 1 && otherBoards[0] === diameter) {
          return {
            ...choice,
            misconception: 'table-by-the-other-board',
            why: 'That is the pin for a board {b.thickness} thick. But A is drilled in its edge or end, and A is {a.thickness} thick.',
          };
        }
        return diameter > (right ?? 0)
          ? {
              ...choice,
              misconception: 'thickest-pin',
              why: 'Too thick for a board of {a.thickness}: too little wood would stay beside the hole.',
            }
          : {
              ...choice,
              misconception: 'thin-pin-is-safe',
              why: 'Too thin for a board of {a.thickness}: it holds less than the board can take.',
            };
      }),
      working: 'pin.diameter',
    };
  },
};

/** True where the table refuses a pin, and not the depth of the boards. */
function refusedByTable({ reason }: ConsideredPin): boolean {
  return /^Too (thick|thin)/.test(plainText(reason, 'in'));
}

/** What somebody has in mind who misjudges a pin. */
function misjudged({ reason, verdict }: ConsideredPin): string {
  if (verdict !== 'rejected') return 'only-one-pin-serves';
  return plainText(reason, 'in').startsWith('Too thick') ? 'thickest-pin' : 'thin-pin-is-safe';
}

/** Which of these pins can't be used? */
export const pinsThatDontFit: Template = {
  id: 'pins-that-do-not-fit',
  revision: 1,
  lesson: 'choosing-the-pin',
  joints: ['corner', 'tee', 'frame', 'edge'],
  kind: 'several',
  misconceptions: ['thickest-pin', 'thin-pin-is-safe', 'only-one-pin-serves'],
  draft(draws, system) {
    const spec = undecided(draws, system);
    const { setup, numbers } = about(spec);
    const { considered, cautions } = planJoint(spec);
    const rejected = considered.filter(({ verdict }) => verdict === 'rejected');
    const usable = considered.filter(({ verdict }) => verdict !== 'rejected');
    const listed = [
      ...draws.some(rejected, draws.whole(1, 3)),
      ...draws.some(usable, draws.whole(1, 2)),
    ];
    // A pin that only the depth refuses, often by a hair, or a smaller one that then serves: not here.
    const byTheTable =
      rejected.every(refusedByTable) && cautions.every(({ code }) => code !== 'under-size');
    const named = listed.flatMap(
      ({ pin }, i) =>
        [
          [`d.${i}`, 'd', pin.diameter],
          [`l.${i}`, 'L', pin.length],
        ] as const,
    );
    return {
      kind: 'several',
      setup,
      numbers: withMore(
        byTheTable ? numbers : passedOver(numbers, 'the depth refuses a pin'),
        named,
      ),
      situation: `${boardsIn[spec.kind]} These pins are in the drawer.`,
      ask: 'Which of them does the shop table refuse here? Choose all.',
      choices: listed.map((each, i) => ({
        id: `pin-${i + 1}`,
        says: `{d.${i}} across, {l.${i}} long`,
        right: each.verdict === 'rejected',
        misconception: misjudged(each),
        why:
          each.verdict === 'rejected'
            ? each.reason
            : `The table allows a pin {d.${i}} across in a board {a.thickness} thick.`,
      })),
      working: 'pin.diameter',
    };
  },
};
