import type { Board, BitPoint, Guide, JointSpec, Pin } from '../../core/joint/types.ts';
import { planJoint } from '../../core/joint/planJoint.ts';
import { SpecError } from '../../core/joint/checkSpec.ts';
import { calculations } from './calculations/index.ts';
import type { Numbers } from './numbers.ts';
import { numbersOf } from './numbersOf.ts';
import { type Calculated, type Setup, isJoint } from './setupKinds.ts';
import { type YamlEntry, readYaml } from './yamlEntry.ts';

/** What lessons, figures and questions refer to by name: content/setups.yaml, read. */
export type Setups = ReadonlyMap<string, Setup>;

const SYSTEMS = ['in', 'mm'] as const;

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
    system: base && !entry.find('system') ? base.system : entry.get('system').oneOf(SYSTEMS),
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

/** Reads a calculation; with a `base` of the same kind, only what differs from it need be there. */
function readCalculated(
  entry: YamlEntry,
  name: string,
  base: Calculated | undefined,
  setups: Setups,
): Calculated {
  entry.only('system', name, 'like');
  const system = entry.find('system')?.oneOf(SYSTEMS) ?? base?.system;
  const settings = entry.find(name);
  return {
    calculation: name,
    system: system ?? entry.get('system').oneOf(SYSTEMS),
    values: settings
      ? calculations.get(name)!.read(settings, base?.values, setups)
      : (base?.values ?? entry.get(name)),
  };
}

/**
 * Reads a setup: a joint by its boards, or under the key of a calculation what that needs. With a
 * `base`, only what differs from it need be there.
 * @param setups those that it may name: a fit or an amount of glue of a joint
 * @throws ContentError with file and line
 */
export function readSetup(entry: YamlEntry, base: Setup | undefined, setups: Setups): Setup {
  const known = entry.fields().find(([name]) => calculations.has(name))?.[0];
  if (base && !isJoint(base)) return readCalculated(entry, base.calculation, base, setups);
  if (known === undefined) return readSpec(entry, base);
  if (base) entry.fail(`a joint can't be turned into another calculation, '${known}'`);
  return readCalculated(entry, known, undefined, setups);
}

/**
 * The numbers of a setup that content names.
 * @throws ContentError at `entry` where it can't be worked out
 */
export function numbersAt(entry: YamlEntry, setup: Setup): Numbers {
  try {
    return numbersOf(setup);
  } catch (error) {
    const known = [SpecError, RangeError, TypeError].some((type) => error instanceof type);
    if (known) entry.fail((error as Error).message);
    throw error;
  }
}

/**
 * A setup with something changed, and its numbers. A joint keeps the pin that it had: a mistake
 * about the depth doesn't choose another one.
 * @throws ContentError with file and line
 */
export function changedNumbers(change: YamlEntry, setup: Setup, setups: Setups): Numbers {
  const pin = isJoint(setup) && planJoint(setup).pin;
  const kept = pin ? { ...setup, pin } : setup;
  return numbersAt(change, readSetup(change, kept, setups));
}

/**
 * Reads content/setups.yaml: setups by name, each complete or `like` an earlier one.
 * @throws ContentError with file and line
 */
export function readSetups(file: string, text: string): Setups {
  const setups = new Map<string, Setup>();
  for (const [name, entry] of readYaml(file, text).fields()) {
    const like = entry.find('like');
    const base = like && setups.get(like.text());
    if (like && !base) like.fail(`no setup '${like.text()}' stands above this one`);
    const setup = readSetup(entry, base, setups);
    numbersAt(entry, setup);
    setups.set(name, setup);
  }
  return setups;
}
