import type { Board, BitPoint, Guide, JointSpec, Pin } from '../../core/joint/types.ts';
import { planJoint } from '../../core/joint/planJoint.ts';
import { SpecError } from '../../core/joint/checkSpec.ts';
import type { JointPlan } from '../../core/joint/types.ts';
import { type YamlEntry, readYaml } from './yamlEntry.ts';

/** Joints that lessons, figures and questions refer to by name: content/setups.yaml, read. */
export type Setups = ReadonlyMap<string, JointSpec>;

const KINDS = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'] as const;
const POINTS = ['twist', 'brad', 'center', 'square'] as const;

/** Lengths that a joint has by itself; boards, pin, bit and guide have their own. */
const LENGTHS = [
  'jointLength',
  'allowance',
  'leave',
  'overhang',
  'at',
  'reveal',
  'setback',
  'stagger',
] as const satisfies readonly (keyof JointSpec)[];

const FIELDS = ['kind', 'system', 'a', 'b', 'drilled', 'pin', 'bit', 'guide', ...LENGTHS];

/** The lengths among an entry's fields that are there. */
function lengthsOf<Name extends string>(entry: YamlEntry, names: readonly Name[]) {
  return Object.fromEntries(
    names.flatMap((name) => {
      const field = entry.find(name);
      return field ? [[name, field.length()]] : [];
    }),
  ) as Partial<Record<Name, Board['thickness']>>;
}

function readBoard(entry: YamlEntry, base: Board | undefined): Board {
  const sizes = ['thickness', 'width', 'length'] as const;
  entry.only(...sizes, 'species');
  const species = entry.find('species')?.text();
  const board = { ...base, ...lengthsOf(entry, sizes), ...(species && { species }) };
  for (const size of sizes) if (board[size] === undefined) entry.get(size);
  return board as Board;
}

function readPoint(entry: YamlEntry): BitPoint {
  const kind = entry.get('kind').oneOf(POINTS);
  switch (kind) {
    case 'twist':
      return { kind, angle: entry.only('kind', 'angle').get('angle').number() };
    case 'brad':
      return { kind, ...lengthsOf(entry.only('kind', 'spur'), ['spur']) };
    case 'center':
      return { kind, spur: entry.only('kind', 'spur').get('spur').length() };
    case 'square':
      entry.only('kind');
      return { kind };
  }
}

function readPin(entry: YamlEntry, base: Pin | undefined): Pin {
  const pin = { ...base, ...lengthsOf(entry.only('diameter', 'length'), ['diameter', 'length']) };
  for (const size of ['diameter', 'length'] as const) if (pin[size] === undefined) entry.get(size);
  return pin as Pin;
}

function readGuide(entry: YamlEntry): Guide {
  return lengthsOf(entry.only('bushing', 'standoff', 'offset'), ['bushing', 'standoff', 'offset']);
}

/**
 * Reads a joint; with a `base`, only what differs from it need be there.
 * @throws ContentError with file and line
 */
export function readSpec(entry: YamlEntry, base?: JointSpec): JointSpec {
  entry.only(...FIELDS, 'like');
  const a = entry.find('a');
  const b = entry.find('b');
  const pin = entry.find('pin');
  const bit = entry.find('bit')?.only('diameter', 'point');
  const point = bit?.find('point');
  const guide = entry.find('guide');
  const drilled = entry.find('drilled')?.oneOf(['end', 'edge']);
  const known = base?.pin === 'choose' ? undefined : base?.pin;
  return {
    ...base,
    kind: base && !entry.find('kind') ? base.kind : entry.get('kind').oneOf(KINDS),
    system: base && !entry.find('system') ? base.system : entry.get('system').oneOf(['in', 'mm']),
    a: base && !a ? base.a : readBoard(entry.get('a'), base?.a),
    b: base && !b ? base.b : readBoard(entry.get('b'), base?.b),
    ...(pin && { pin: readPin(pin, known) }),
    ...(bit && {
      bit: {
        ...base?.bit,
        ...lengthsOf(bit, ['diameter']),
        ...(point && { point: readPoint(point) }),
      },
    }),
    ...(guide && { guide: { ...base?.guide, ...readGuide(guide) } }),
    ...(drilled && { drilled }),
    ...lengthsOf(entry, LENGTHS),
  };
}

/**
 * Plans a joint that content names.
 * @throws ContentError at `entry` where it can't be planned
 */
export function planAt(entry: YamlEntry, spec: JointSpec): JointPlan {
  try {
    return planJoint(spec);
  } catch (error) {
    if (error instanceof SpecError) entry.fail(error.message);
    throw error;
  }
}

/**
 * Reads content/setups.yaml: joints by name, each complete or `like` an earlier one.
 * @throws ContentError with file and line
 */
export function readSetups(file: string, text: string): Setups {
  const setups = new Map<string, JointSpec>();
  for (const [name, entry] of readYaml(file, text).fields()) {
    const like = entry.find('like');
    const base = like && setups.get(like.text());
    if (like && !base) like.fail(`no setup '${like.text()}' stands above this one`);
    const spec = readSpec(entry, base);
    planAt(entry, spec);
    setups.set(name, spec);
  }
  return setups;
}
