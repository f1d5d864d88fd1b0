import { inches, type Mm, mm } from '../length/mm.ts';
import { speciesNames } from '../moisture/species.ts';
import type { BitPoint, Board, JointKind, JointSpec, Pin, System } from '../joint/types.ts';
import type { LengthUnit } from '../length/parseLength.ts';

/** What a link holds: the joints, and the unit that its sender was reading. */
export interface Setup {
  readonly joints: readonly JointSpec[];
  readonly show?: LengthUnit;
}

export type DecodedSetup =
  { readonly ok: true; readonly setup: Setup } | { readonly ok: false; readonly reason: string };

const VERSION = '1';
const LONGEST_LINK = 8000;
const MOST_JOINTS = 60;
const MOST_PINS = 40;

/**
 * What version 1 means where a link says nothing. A link made today has to plan the same joint
 * for ever, so these stay as they are even if the calculator's own defaults change.
 */
const OMITTED: Record<System, { allowance: Mm; bushing: Mm; setback: Mm; point: BitPoint }> = {
  in: {
    allowance: inches(1 / 8),
    bushing: inches(1),
    setback: inches(1 / 8),
    point: { kind: 'twist', angle: 118 },
  },
  mm: {
    allowance: mm(3),
    bushing: mm(25),
    setback: mm(3),
    point: { kind: 'twist', angle: 118 },
  },
};

const KINDS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

/** Lengths that stand alone in a link, by their key. `signed` may be negative. */
const LENGTHS = {
  line: 'length',
  allowance: 'length',
  leave: 'length',
  bit: 'length',
  bushing: 'length',
  standoff: 'length',
  offset: 'signed',
  margin: 'length',
  widest: 'length',
  closest: 'length',
  graduation: 'length',
  overhang: 'length',
  at: 'length',
  reveal: 'signed',
  setback: 'length',
  stagger: 'length',
} as const;

type LengthKey = keyof typeof LENGTHS;

const WORDS = [
  'kind',
  'system',
  'a',
  'b',
  'a.wood',
  'b.wood',
  'drilled',
  'pin',
  'stock',
  'rule',
  'point',
  'centering',
] as const;

/** A species' name as it stands in a link: 'oak, white' is 'oak-white'. */
function slug(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/-$/, '');
}

/** The shortest decimal of a length, a nanometer being plenty. */
function decimal(length: number): string {
  return String(Math.round(length * 1e6) / 1e6);
}

function times(...lengths: readonly number[]): string {
  return lengths.map(decimal).join('x');
}

function pointText(point: BitPoint): string {
  switch (point.kind) {
    case 'twist':
      return `twist:${decimal(point.angle)}`;
    case 'brad':
      return point.spur === undefined ? 'brad' : `brad:${decimal(point.spur)}`;
    case 'center':
      return `center:${decimal(point.spur)}`;
    case 'square':
      return 'square';
  }
}

function encodeJoint(spec: JointSpec): string {
  const omitted = OMITTED[spec.system];
  const board = (each: Board) => times(each.thickness, each.width, each.length);
  const pin = (each: Pin) => times(each.diameter, each.length);
  const unless = (value: Mm | undefined, usual: number) =>
    value === undefined || value === usual ? undefined : decimal(value);
  const optional = (value: Mm | undefined) => (value === undefined ? undefined : decimal(value));
  const { guide = {}, layout = {}, bit = {} } = spec;
  const point = pointText(bit.point ?? omitted.point);
  const pairs: readonly (readonly [string, string | undefined])[] = [
    ['kind', spec.kind],
    ['system', spec.system],
    ['a', board(spec.a)],
    ['b', board(spec.b)],
    ['a.wood', spec.a.species && slug(spec.a.species)],
    ['b.wood', spec.b.species && slug(spec.b.species)],
    ['drilled', spec.drilled === 'edge' ? 'edge' : undefined],
    ['line', optional(spec.jointLength)],
    ['pin', spec.pin === undefined || spec.pin === 'choose' ? undefined : pin(spec.pin)],
    ['stock', spec.stock?.map(pin).join(',')],
    ['rule', spec.diameterRule === 'ratio' ? 'ratio' : undefined],
    ['allowance', unless(spec.allowance, omitted.allowance)],
    ['leave', optional(spec.leave)],
    ['bit', optional(bit.diameter)],
    ['point', point === pointText(omitted.point) ? undefined : point],
    ['bushing', unless(guide.bushing, omitted.bushing)],
    ['standoff', unless(guide.standoff, 0)],
    ['offset', unless(guide.offset, 0)],
    ['centering', guide.centering ? '1' : undefined],
    ['margin', optional(layout.endMargin)],
    ['widest', optional(layout.maxPitch)],
    ['closest', optional(layout.minPitch)],
    ['graduation', optional(layout.graduation)],
    ['overhang', unless(spec.overhang, 0)],
    ['at', unless(spec.at, 0)],
    ['reveal', unless(spec.reveal, 0)],
    ['setback', unless(spec.setback, omitted.setback)],
    ['stagger', unless(spec.stagger, 0)],
  ];
  return pairs
    .flatMap(([key, value]) => (value === undefined ? [] : [`${key}=${value}`]))
    .join(';');
}

/**
 * Writes joints as the fragment of a link, without its '#'. Lengths are mm, to a nanometer.
 * @example encodeSetup({ joints: [spec] }) // '1;kind=corner;system=in;a=19.05x140x600;…'
 */
export function encodeSetup(setup: Setup): string {
  const head = setup.show === undefined ? VERSION : `${VERSION};show=${setup.show}`;
  return `${head};${setup.joints.map(encodeJoint).join('&')}`;
}

/** Thrown while reading a link, to be turned into a sentence at the door. */
class LinkFault extends Error {}

function lengthFrom(key: string, text: string, signed = false): Mm {
  const value = /^-?\d{1,7}(\.\d{1,6})?$/.test(text) ? Number(text) : NaN;
  if (!Number.isFinite(value) || (value < 0 && !signed)) {
    throw new LinkFault(`its “${key}” is not a length`);
  }
  return mm(value);
}

function lengthsFrom(key: string, text: string, count: number): readonly Mm[] {
  const parts = text.split('x');
  if (parts.length !== count) throw new LinkFault(`its “${key}” needs ${count} lengths`);
  return parts.map((part) => lengthFrom(key, part));
}

function pinFrom(key: string, text: string): Pin {
  const [diameter = mm(0), length = mm(0)] = lengthsFrom(key, text, 2);
  return { diameter, length };
}

function choiceFrom<Choice extends string>(
  key: string,
  text: string | undefined,
  choices: readonly Choice[],
): Choice {
  const found = choices.find((each) => each === text);
  if (found === undefined) throw new LinkFault(`its “${key}” is none of ${choices.join(', ')}`);
  return found;
}

function boardFrom(key: 'a' | 'b', fields: ReadonlyMap<string, string>): Board {
  const text = fields.get(key);
  if (text === undefined) throw new LinkFault(`it has no board ${key.toUpperCase()}`);
  const [thickness = mm(0), width = mm(0), length = mm(0)] = lengthsFrom(key, text, 3);
  const wood = fields.get(`${key}.wood`);
  if (wood === undefined) return { thickness, width, length };
  const name = speciesNames.find((each) => slug(each) === wood);
  if (name === undefined) throw new LinkFault(`its “${key}.wood” is not a wood of the tables`);
  return { thickness, width, length, species: name };
}

function pointFrom(text: string): BitPoint {
  const [kind, size] = text.split(':');
  switch (choiceFrom('point', kind, ['twist', 'brad', 'center', 'square'])) {
    case 'twist':
      return { kind: 'twist', angle: lengthFrom('point', size ?? '') };
    case 'brad':
      return size === undefined
        ? { kind: 'brad' }
        : { kind: 'brad', spur: lengthFrom('point', size) };
    case 'center':
      return { kind: 'center', spur: lengthFrom('point', size ?? '') };
    case 'square':
      return { kind: 'square' };
  }
}

function fieldsFrom(text: string): Map<string, string> {
  const fields = new Map<string, string>();
  for (const pair of text.split(';')) {
    const [key = '', value, ...more] = pair.split('=');
    const known = Object.hasOwn(LENGTHS, key) || WORDS.some((word) => word === key);
    if (!known) throw new LinkFault(`it says “${key.slice(0, 30)}”, which means nothing here`);
    if (value === undefined || value === '' || more.length > 0) {
      throw new LinkFault(`its “${key}” has no value`);
    }
    if (fields.has(key)) throw new LinkFault(`it gives “${key}” twice`);
    fields.set(key, value);
  }
  return fields;
}

/** A spec without the fields that a link left out, as the types want it. */
function defined<Fields extends object>(
  fields: Fields,
): { [Key in keyof Fields]?: Exclude<Fields[Key], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [Key in keyof Fields]?: Exclude<Fields[Key], undefined>;
  };
}

function decodeJoint(text: string): JointSpec {
  const fields = fieldsFrom(text);
  const kind = choiceFrom('kind', fields.get('kind'), KINDS);
  const system = choiceFrom('system', fields.get('system'), ['in', 'mm']);
  const omitted = OMITTED[system];
  const length = (key: LengthKey) => {
    const given = fields.get(key);
    return given === undefined ? undefined : lengthFrom(key, given, LENGTHS[key] === 'signed');
  };
  const word = <Choice extends string>(key: (typeof WORDS)[number], choices: readonly Choice[]) =>
    fields.has(key) ? choiceFrom(key, fields.get(key), choices) : undefined;
  const a = boardFrom('a', fields);
  const b = boardFrom('b', fields);
  if (kind === 'leg' && b.thickness !== b.width) {
    throw new LinkFault('its leg is not square');
  }
  const stock = fields.get('stock')?.split(',');
  if (stock && stock.length > MOST_PINS) {
    throw new LinkFault(`it has more than ${MOST_PINS} kinds of pin`);
  }
  const pin = fields.get('pin');
  const point = fields.get('point');
  const layout = defined({
    endMargin: length('margin'),
    maxPitch: length('widest'),
    minPitch: length('closest'),
    graduation: length('graduation'),
  });
  return {
    kind,
    system,
    a,
    b,
    pin: pin === undefined ? 'choose' : pinFrom('pin', pin),
    allowance: length('allowance') ?? omitted.allowance,
    bit: {
      ...defined({ diameter: length('bit') }),
      point: point === undefined ? omitted.point : pointFrom(point),
    },
    guide: {
      bushing: length('bushing') ?? omitted.bushing,
      standoff: length('standoff') ?? mm(0),
      offset: length('offset') ?? mm(0),
      centering: word('centering', ['1']) === '1',
    },
    ...(Object.keys(layout).length > 0 ? { layout } : {}),
    overhang: length('overhang') ?? mm(0),
    at: length('at') ?? mm(0),
    reveal: length('reveal') ?? mm(0),
    setback: length('setback') ?? omitted.setback,
    stagger: length('stagger') ?? mm(0),
    ...defined({
      drilled: word('drilled', ['end', 'edge']),
      jointLength: length('line'),
      stock: stock?.map((each) => pinFrom('stock', each)),
      diameterRule: word('rule', ['shop-table', 'ratio']),
      leave: length('leave'),
    }),
  };
}

/**
 * Reads a setup from the fragment of a link. Links come from anyone: whatever is in one, this
 * returns joints that can be planned or a sentence that says what is wrong; it never throws.
 *
 * @param fragment the part of the link after '#', with or without it
 */
export function decodeSetup(fragment: string): DecodedSetup {
  const refused = (why: string): DecodedSetup => ({
    ok: false,
    reason: `This link can’t be read: ${why}. Ask for it again, or start from here.`,
  });
  const text = fragment.replace(/^#/, '');
  if (text.length > LONGEST_LINK) return refused('it is too long');
  const [version, ...rest] = text.split(';');
  if (version !== VERSION) {
    return refused(
      /^\d{1,4}$/.test(version ?? '')
        ? 'it was made by a newer edition of this workbook'
        : 'it is not a setup',
    );
  }
  try {
    const shown = /^show=(in|mm)$/.exec(rest[0] ?? '')?.[1];
    const joints = rest
      .slice(shown === undefined ? 0 : 1)
      .join(';')
      .split('&');
    if (joints.length > MOST_JOINTS) return refused(`it has more than ${MOST_JOINTS} joints`);
    const setup: Setup = { joints: joints.map(decodeJoint) };
    return {
      ok: true,
      setup: shown === 'in' || shown === 'mm' ? { ...setup, show: shown } : setup,
    };
  } catch (fault) {
    if (fault instanceof LinkFault) return refused(fault.message);
    throw fault;
  }
}
