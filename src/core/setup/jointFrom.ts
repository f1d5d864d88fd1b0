import type { BitPoint, Board, JointKind, JointSpec, Pin } from '../joint/types.ts';
import { type Mm, mm } from '../length/mm.ts';
import { speciesNames } from '../moisture/species.ts';
import { type JointLabel, countFrom, nameFrom } from './labels.ts';
import { LinkFault } from './linkFault.ts';
import { type LengthKey, LENGTHS, OMITTED, slug, WORDS } from './linkFields.ts';

const MOST_PINS = 40;

const KINDS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

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

/** One of the words that a key may have; throws a LinkFault for any other. */
export function choiceFrom<Choice extends string>(
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

/** The fields of one joint by their keys, each known and given once; throws a LinkFault. */
export function fieldsFrom(text: string): Map<string, string> {
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
export function defined<Fields extends object>(
  fields: Fields,
): { [Key in keyof Fields]?: Exclude<Fields[Key], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [Key in keyof Fields]?: Exclude<Fields[Key], undefined>;
  };
}

/** What a joint's fields call it and its boards; throws a LinkFault. */
export function labelFrom(fields: ReadonlyMap<string, string>): JointLabel {
  const name = (key: string) => (fields.has(key) ? nameFrom(key, fields.get(key)!) : '');
  return {
    name: name('name'),
    count: fields.has('count') ? countFrom('count', fields.get('count')!) : 1,
    boardA: name('a.name'),
    boardB: name('b.name'),
  };
}

/** The joint that its fields describe, with version 1's defaults filled in; throws a LinkFault. */
export function jointFrom(fields: ReadonlyMap<string, string>): JointSpec {
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
