import { inches, type Mm, mm } from '../length/mm.ts';
import { speciesNames } from '../moisture/species.ts';
import type { BitPoint, Board, JointKind, JointSpec, Pin, System } from '../joint/types.ts';
import type { LengthUnit } from '../length/parseLength.ts';
import {
  type JointLabel,
  MOST_JOINTS,
  NO_LABEL,
  type PieceLabel,
  boardsFrom,
  boardsText,
  countFrom,
  nameFrom,
  nameText,
} from './labels.ts';
import { LinkFault } from './linkFault.ts';

/** What a link holds: the joints, what they are called, and the unit that its sender was reading. */
export interface Setup {
  readonly joints: readonly JointSpec[];
  readonly show?: LengthUnit;
  /** One for each joint, in their order. */
  readonly labels?: readonly JointLabel[];
  readonly piece?: PieceLabel;
}

/** A setup as it was read: every joint has its label, if an empty one. */
export type ReadSetup = Setup & Required<Pick<Setup, 'labels' | 'piece'>>;

export type DecodedSetup =
  | { readonly ok: true; readonly setup: ReadSetup }
  | { readonly ok: false; readonly reason: string };

const VERSION = '1';
const LONGEST_LINK = 8000;
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
  'name',
  'count',
  'a.name',
  'b.name',
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

function encodeJoint(spec: JointSpec, label: JointLabel): string {
  const omitted = OMITTED[spec.system];
  const board = (each: Board) => times(each.thickness, each.width, each.length);
  const pin = (each: Pin) => times(each.diameter, each.length);
  const unless = (value: Mm | undefined, usual: number) =>
    value === undefined || value === usual ? undefined : decimal(value);
  const optional = (value: Mm | undefined) => (value === undefined ? undefined : decimal(value));
  const { guide = {}, layout = {}, bit = {} } = spec;
  const point = pointText(bit.point ?? omitted.point);
  return inPairs([
    ['name', nameText(label.name)],
    ['count', label.count === 1 ? undefined : String(label.count)],
    ['a.name', nameText(label.boardA)],
    ['b.name', nameText(label.boardB)],
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
  ]);
}

function inPairs(pairs: readonly (readonly [string, string | undefined])[]): string {
  return pairs
    .flatMap(([key, value]) => (value === undefined ? [] : [`${key}=${value}`]))
    .join(';');
}

/**
 * Writes joints as the fragment of a link, without its '#'. Lengths are mm, to a nanometer.
 * @example encodeSetup({ joints: [spec] }) // '1;kind=corner;system=in;a=19.05x140x600;…'
 */
export function encodeSetup(setup: Setup): string {
  const head = inPairs([
    ['show', setup.show],
    ['piece', nameText(setup.piece?.title ?? '')],
    ['boards', boardsText(setup.piece?.boards ?? [])],
  ]);
  const joints = setup.joints.map((spec, i) => encodeJoint(spec, setup.labels?.[i] ?? NO_LABEL));
  return [VERSION, ...(head === '' ? [] : [head]), joints.join('&')].join(';');
}

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

function labelFrom(fields: ReadonlyMap<string, string>): JointLabel {
  const name = (key: string) => (fields.has(key) ? nameFrom(key, fields.get(key)!) : '');
  return {
    name: name('name'),
    count: fields.has('count') ? countFrom('count', fields.get('count')!) : 1,
    boardA: name('a.name'),
    boardB: name('b.name'),
  };
}

function jointFrom(fields: ReadonlyMap<string, string>): JointSpec {
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

/** The pairs before the first joint, which say something of the whole link; each stands once. */
function headOf(pairs: readonly string[]): {
  head: ReadonlyMap<string, string>;
  body: readonly string[];
} {
  const head = new Map<string, string>();
  for (const [i, pair] of pairs.entries()) {
    const [, key, value] = /^(show|piece|boards)=([^=&]+)$/.exec(pair) ?? [];
    if (key === undefined || value === undefined) return { head, body: pairs.slice(i) };
    if (head.has(key)) throw new LinkFault(`it gives “${key}” twice`);
    head.set(key, value);
  }
  return { head, body: [] };
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
    const { head, body } = headOf(rest);
    const joints = body.join(';').split('&').map(fieldsFrom);
    const labels = joints.map(labelFrom);
    if (labels.reduce((sum, { count }) => sum + count, 0) > MOST_JOINTS) {
      return refused(`it has more than ${MOST_JOINTS} joints`);
    }
    const show = head.has('show') ? choiceFrom('show', head.get('show'), ['in', 'mm']) : undefined;
    return {
      ok: true,
      setup: {
        joints: joints.map(jointFrom),
        ...defined({ show }),
        labels,
        piece: {
          title: head.has('piece') ? nameFrom('piece', head.get('piece')!) : '',
          boards: head.has('boards') ? boardsFrom(head.get('boards')!) : [],
        },
      },
    };
  } catch (fault) {
    if (fault instanceof LinkFault) return refused(fault.message);
    throw fault;
  }
}
