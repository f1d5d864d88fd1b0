import { glueRoom } from '../../core/fit/glueRoom.ts';
import { planJoint } from '../../core/joint/planJoint.ts';
import type { BitPoint, Board, JointPlan, JointSpec, Pin } from '../../core/joint/types.ts';
import { type Mm, inches, mm } from '../../core/length/mm.ts';
import { type Cutting, cutting } from './cutting.ts';

/** A joint that every bench makes. */
export interface OrderedJoint {
  readonly name: string;
  readonly spec: JointSpec;
  /** How many of it each bench makes; a whole number, 1 or more. */
  readonly perBench: number;
}

export interface OrderInput {
  /** Benches, or students where each works alone; a whole number, 1 or more. */
  readonly benches: number;
  readonly joints: readonly OrderedJoint[];
  /** Whether each bench first drills a test joint in offcuts: one pin and its boards' stubs more. */
  readonly testJoints: boolean;
  /** Pins to buy beyond those, as a share of them: 0.1 is a tenth. */
  readonly spares: number;
  /** Guides in use at once: each wants its own bit and collar. */
  readonly guides: number;
  /** What a cut takes: saw kerf and trimming, mm. */
  readonly cutAllowance: Mm;
  /** Length of a board as it is bought, mm. */
  readonly boardAsBought: Mm;
  /** Thickness of the wet film of glue between two faces, mm. */
  readonly glueFilm: Mm;
  /** Glue beyond what the joints hold, as a share: what runs out, and what stays in the bottle. */
  readonly glueSpare: number;
}

/** Length of an offcut for a test joint, along the grain: from memory. Long enough to clamp. */
export const TEST_STUB = { in: inches(6), mm: mm(150) };

export interface OrderedPins {
  readonly pin: Pin;
  /** In the joints themselves. */
  readonly inJoints: number;
  readonly inTests: number;
  readonly spare: number;
  readonly total: number;
}

export interface OrderedBit {
  readonly diameter: Mm;
  readonly point: BitPoint;
  /** One for each guide in use. */
  readonly pieces: number;
  /** The stops that are set on it, mm, from the collar to the full diameter, the shortest first. */
  readonly stops: readonly Mm[];
}

export interface OrderedBoards {
  readonly thickness: Mm;
  readonly width: Mm;
  readonly species: string | null;
  readonly pieces: readonly { readonly length: Mm; readonly count: number; readonly for: string }[];
  /** All pieces and what their cuts take, mm. */
  readonly length: Mm;
  readonly cutting: Cutting;
}

/** Glue, mm³; a milliliter is 1,000 of them. */
export interface OrderedGlue {
  /** What the holes have room for around and past the pins. */
  readonly inHoles: number;
  /** The film between the boards. */
  readonly betweenFaces: number;
  readonly spare: number;
  readonly total: number;
}

export interface ClassOrder {
  readonly pins: readonly OrderedPins[];
  readonly bits: readonly OrderedBit[];
  readonly boards: readonly OrderedBoards[];
  readonly glue: OrderedGlue;
  /** Joints that can't be made as they are set, by name: nothing is ordered for them. */
  readonly notMade: readonly string[];
}

/**
 * What a class needs for its joints: pins, bits, boards and glue, counted from the plan of every
 * joint. Glue is what the holes and faces hold; nobody has published how much a class uses.
 * Throws a RangeError that names the number that is out of range.
 */
export function classOrder(input: OrderInput): ClassOrder {
  checked(input);
  const planned = input.joints.map((joint) => ({ joint, plan: planJoint(joint.spec) }));
  const made = planned.filter(({ plan }) => plan.ok && plan.pin !== null);
  return {
    pins: pinsOf(made, input),
    bits: bitsOf(made, input),
    boards: boardsOf(made, input),
    glue: glueOf(made, input),
    notMade: planned.filter((each) => !made.includes(each)).map(({ joint }) => joint.name),
  };
}

interface Planned {
  readonly joint: OrderedJoint;
  readonly plan: JointPlan;
}

function pinsOf(made: readonly Planned[], { benches, testJoints, spares }: OrderInput) {
  const sizes = new Map<string, { pin: Pin; inJoints: number; inTests: number }>();
  for (const { joint, plan } of made) {
    const pin = plan.pin!;
    const key = `${pin.diameter} ${pin.length}`;
    const size = sizes.get(key) ?? { pin, inJoints: 0, inTests: 0 };
    // The second apron of a leg joint has a row of its own.
    const row = plan.holes.length + plan.secondRow.length;
    size.inJoints += row * joint.perBench * benches;
    if (testJoints) size.inTests += benches;
    sizes.set(key, size);
  }
  return [...sizes.values()]
    .sort((a, b) => a.pin.diameter - b.pin.diameter || a.pin.length - b.pin.length)
    .map(({ pin, inJoints, inTests }) => {
      const needed = inJoints + inTests;
      // A tenth of 30 is 3, whatever 0.1 is in binary.
      const spare = Math.ceil(needed * spares - 1e-9);
      return { pin, inJoints, inTests, spare, total: needed + spare };
    });
}

function bitsOf(made: readonly Planned[], { guides }: OrderInput): readonly OrderedBit[] {
  const bits = new Map<string, { diameter: Mm; point: BitPoint; stops: Mm[] }>();
  for (const { plan } of made) {
    const { diameter, point } = plan.spec.bit;
    const key = `${diameter} ${JSON.stringify(point)}`;
    const bit = bits.get(key) ?? { diameter, point, stops: [] };
    for (const stop of [plan.a.stop, plan.b.stop]) {
      if (!bit.stops.some((other) => Math.abs(other - stop) < 0.01)) bit.stops.push(stop);
    }
    bits.set(key, bit);
  }
  return [...bits.values()]
    .sort((a, b) => a.diameter - b.diameter)
    .map((bit) => ({ ...bit, pieces: guides, stops: bit.stops.sort((a, b) => a - b) }));
}

function boardsOf(made: readonly Planned[], input: OrderInput): readonly OrderedBoards[] {
  interface Stock {
    board: Board;
    pieces: { length: Mm; count: number; for: string }[];
  }
  const stocks = new Map<string, Stock>();
  const add = (board: Board, length: Mm, count: number, use: string) => {
    const key = `${board.thickness} ${board.width} ${board.species ?? ''}`;
    const stock = stocks.get(key) ?? { board, pieces: [] };
    stock.pieces.push({ length, count, for: use });
    stocks.set(key, stock);
  };
  for (const { joint, plan } of made) {
    const count = joint.perBench * input.benches;
    add(plan.spec.a, plan.spec.a.length, count, `${joint.name}, A`);
    add(plan.spec.b, plan.spec.b.length, count, `${joint.name}, B`);
    // The second apron is the first one's twin.
    if (plan.kind === 'leg') add(plan.spec.a, plan.spec.a.length, count, `${joint.name}, second A`);
    if (!input.testJoints) continue;
    for (const member of ['a', 'b'] as const) {
      const board = plan.spec[member];
      const stub = mm(Math.min(TEST_STUB[plan.system], board.length));
      add(board, stub, input.benches, `${joint.name}, test ${member.toUpperCase()}`);
    }
  }
  return [...stocks.values()].map(({ board, pieces }) => {
    const all = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
    return {
      thickness: board.thickness,
      width: board.width,
      species: board.species ?? null,
      pieces,
      length: mm(all.reduce((sum, length) => sum + length + input.cutAllowance, 0)),
      cutting: cutting(all, input.boardAsBought, input.cutAllowance),
    };
  });
}

function glueOf(made: readonly Planned[], { benches, glueFilm, glueSpare }: OrderInput) {
  let inHoles = 0;
  let betweenFaces = 0;
  for (const { joint, plan } of made) {
    const { spec } = plan;
    const rows = plan.holes.length + plan.secondRow.length;
    const room = [plan.a, plan.b].reduce((sum, { engagement }) => {
      const { around, atEnd } = glueRoom({
        hole: spec.bit.diameter,
        pin: plan.pin!.diameter,
        engagement,
        allowance: spec.allowance,
        cone: mm(0),
        flutes: 0,
        fluteArea: 0,
        glue: 0,
      });
      return sum + around + atEnd;
    }, 0);
    const times = joint.perBench * benches;
    inHoles += room * rows * times;
    const faces = plan.kind === 'leg' ? 2 : 1;
    betweenFaces += spec.jointLength * spec.a.thickness * glueFilm * faces * times;
  }
  const spare = (inHoles + betweenFaces) * glueSpare;
  return { inHoles, betweenFaces, spare, total: inHoles + betweenFaces + spare };
}

function checked({ benches, guides, joints, spares, glueSpare, ...lengths }: OrderInput): void {
  const counts = { benches, guides };
  for (const [name, count] of Object.entries(counts)) {
    if (!Number.isInteger(count) || count < 1) throw new RangeError(`${name} is ${count}`);
  }
  for (const { name, perBench } of joints) {
    if (!Number.isInteger(perBench) || perBench < 1) {
      throw new RangeError(`${name}: perBench is ${perBench}`);
    }
  }
  const { cutAllowance, boardAsBought, glueFilm } = lengths;
  const amounts = { spares, glueSpare, cutAllowance, boardAsBought, glueFilm };
  for (const [name, amount] of Object.entries(amounts)) {
    if (!(amount >= 0 && amount < Infinity)) throw new RangeError(`${name} is ${amount}`);
  }
}
