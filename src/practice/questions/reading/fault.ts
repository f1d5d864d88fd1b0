import { mm } from '../../../core/length/mm.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import type { JointSpec } from '../../../core/joint/types.ts';
import { drill } from '../../../core/trial/drill.ts';
import type { Member } from '../../../core/trial/trial.ts';
import { evaluate, quantity } from '../../../core/working/expression.ts';
import { type DrawnMember, type DrawnSetup, benchSetup } from '../drawnSetup.ts';
import { readFormula } from '../formula.ts';
import type { Numbers } from '../numbers.ts';
import { isJoint } from '../setupKinds.ts';
import type { FaultQuestion, Place, PlaceInDrawing } from '../types.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { checkApart, readSays } from './choices.ts';
import { type Base, type ReadHead, aboutOf, at, namedMistake, readWorking } from './ground.ts';

/** Lengths nearer than this are the same, mm. */
const SAME = 1e-6;

/** How the holes of one board were marked and drilled, where that is not as planned. */
function readMember(entry: YamlEntry | undefined, spec: JointSpec, numbers: Numbers): DrawnMember {
  if (!entry) return {};
  entry.only('collar', 'moved', 'end');
  const collar = entry.find('collar');
  const moved = entry.find('moved')?.only('hole', 'farther', 'nearer');
  const end = entry.find('end')?.oneOf(['other']);
  const { marks } = planJoint(spec);
  const hole = moved?.get('hole');
  if (hole && hole.count() > marks.length) hole.fail(`this joint has ${marks.length} holes`);
  const farther = moved?.find('farther')?.length();
  const by = moved && (farther ?? -moved.get('nearer').length());
  return {
    ...(collar && {
      collar: mm(evaluate(at(collar, () => readFormula(collar.text(), { numbers })))),
    }),
    ...(by !== undefined && {
      marks: marks.map((mark, i) => (i + 1 === hole?.count() ? mm(mark + by) : mark)),
    }),
    ...(end && { end }),
  };
}

/** The setup that is drawn, which must drill. */
function readDrawn(entry: YamlEntry, spec: JointSpec, numbers: Numbers): DrawnSetup {
  const [a, b] = [entry.find('a'), entry.find('b')].map((member) =>
    readMember(member, spec, numbers),
  );
  const setup = { spec, a: a!, b: b! };
  try {
    drill(benchSetup(setup));
  } catch (error) {
    if (!(error instanceof RangeError || error instanceof TypeError)) throw error;
    entry.fail(`this can't be drilled: ${error.message}`);
  }
  return setup;
}

/** The numbers of the question, and where the holes are marked: 'a.hole.1' and so on. */
function withHoles(numbers: Numbers, setup: DrawnSetup): Numbers {
  const bench = benchSetup(setup);
  const holes = (['a', 'b'] as const).flatMap((member) =>
    bench[member].marks.map(
      (mark, i) => [`${member}.hole.${i + 1}`, quantity(`x_${i + 1}`, mark)] as const,
    ),
  );
  return { ...numbers, quantities: new Map([...numbers.quantities, ...holes]) };
}

/** `hole 2 of B`, or `depth of A`. */
function readPlace(entry: YamlEntry, view: 'row' | 'section', count: number): PlaceInDrawing {
  const [, hole, board] = /^(?:hole (\d+)|depth) of ([AB])$/.exec(entry.text()) ?? [];
  const member = board?.toLowerCase() as Member | undefined;
  if (!member || (view === 'row') !== (hole !== undefined)) {
    entry.fail(
      view === 'row'
        ? `write such as 'hole 2 of B': this drawing shows the row`
        : `write 'depth of A' or 'depth of B': this drawing shows a section`,
    );
  }
  if (hole === undefined) return { member, part: 'depth' };
  if (Number(hole) < 1 || Number(hole) > count) entry.fail(`this joint has ${count} holes`);
  return { member, part: 'hole', hole: Number(hole) - 1 };
}

/** Whether a place is other than planned: nobody has to write down what is right. */
function isAtFault(place: PlaceInDrawing, drawn: DrawnSetup): boolean {
  const [asDrawn, asPlanned] = [drawn, { spec: drawn.spec }].map((setup) => {
    const hole = drill(benchSetup(setup)).pins.map((pin) => pin[place.member]);
    return place.part === 'hole' ? hole[place.hole]!.along : hole[0]!.depth;
  });
  return Math.abs(asDrawn! - asPlanned!) > SAME;
}

function readChoice(
  entry: YamlEntry,
  view: 'row' | 'section',
  drawn: DrawnSetup,
  base: Base,
): Place {
  entry.only('id', 'at', 'of', 'says', 'with', 'misconception', 'why');
  const place = readPlace(entry.get('at'), view, planJoint(drawn.spec).marks.length);
  return {
    id: entry.get('id').id(),
    at: place,
    right: isAtFault(place, drawn),
    ...readSays(entry, aboutOf(entry, base)),
    misconception: namedMistake(entry.get('misconception'), base.ground),
  };
}

/** Places of a drawing, some of them at fault. */
export function readFaultQuestion(entry: YamlEntry, head: ReadHead, base: Base): FaultQuestion {
  const { setup: spec } = base;
  const name: YamlEntry = entry.get('setup');
  if (!isJoint(spec)) name.fail('only a joint can be drawn with a fault in it');
  const drawing: YamlEntry = entry.get('drawing').only('view', 'a', 'b');
  const view = drawing.get('view').oneOf(['row', 'section']);
  const first = planJoint(spec).holes[0];
  if (view === 'row' && first && Math.abs(first.alongB - first.along) > SAME) {
    drawing.fail('a row is drawn only where both boards are marked from the same end');
  }
  const setup = readDrawn(drawing, spec, base.numbers);
  const about = { ...base, numbers: withHoles(base.numbers, setup) };
  const list: YamlEntry = entry.get('places');
  const choices = list.items().map((each) => readChoice(each, view, setup, about));
  checkApart(list, choices);
  const count = choices.filter(({ right }) => right).length;
  if (count === 0) list.fail('none of these places is at fault as it is drawn');
  if (count === choices.length) list.fail('every one of these places is at fault as it is drawn');
  return {
    ...head,
    kind: 'fault',
    drawing: { view, setup },
    choices,
    working: readWorking(entry, base.numbers),
  };
}
