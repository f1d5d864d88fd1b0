import { species } from '../moisture/species.ts';
import { say } from '../working/sentence.ts';
import { type Finding, finding } from './finding.ts';
import type { JointSpec } from './types.ts';

/** A programmer's mistake in a spec: NaN, a wrong type, an unknown kind. Names the field. */
export class SpecError extends TypeError {
  override readonly name = 'SpecError';
  /** Path of the field: 'a.thickness', 'bit.point.angle'. */
  readonly field: string;

  constructor(field: string, problem: string) {
    super(`${field}: ${problem}`);
    this.field = field;
  }
}

type Range = 'over 0' | '0 or more' | 'signed';

/** No board, pin or guide is longer than this, in mm. */
const LONGEST = 100_000;
/** A narrower or blunter point than this is no drill bit, in degrees. */
const POINT_ANGLES = { least: 10, most: 180 };

function oneOf(field: string, value: unknown, names: readonly string[]): void {
  if (typeof value !== 'string' || !names.includes(value)) {
    throw new SpecError(field, `must be one of ${names.join(', ')}, not ${String(value)}`);
  }
}

function objectAt(field: string, value: unknown): void {
  if (typeof value !== 'object' || value === null) {
    throw new SpecError(field, `must be an object, not ${String(value)}`);
  }
}

/** Every length of a spec: its path, what to call it in a sentence, its value and its range. */
function lengthsOf(
  spec: JointSpec,
): readonly (readonly [field: string, name: string, value: unknown, range: Range])[] {
  const { a, b, bit, guide, layout } = spec;
  const pins = spec.pin === undefined || spec.pin === 'choose' ? (spec.stock ?? []) : [spec.pin];
  const point = bit?.point;
  return [
    ['a.thickness', 'The thickness of board A', a.thickness, 'over 0'],
    ['a.width', 'The width of board A', a.width, 'over 0'],
    ['a.length', 'The length of board A', a.length, 'over 0'],
    ['b.thickness', 'The thickness of board B', b.thickness, 'over 0'],
    ['b.width', 'The width of board B', b.width, 'over 0'],
    ['b.length', 'The length of board B', b.length, 'over 0'],
    ['jointLength', 'The length of the joint', spec.jointLength, 'over 0'],
    ...pins.flatMap((pin) => [
      ['pin.diameter', "The pin's diameter", pin.diameter, 'over 0'] as const,
      ['pin.length', "The pin's length", pin.length, 'over 0'] as const,
    ]),
    ['allowance', 'The allowance', spec.allowance, '0 or more'],
    ['leave', 'The wood to leave', spec.leave, '0 or more'],
    ['bit.diameter', "The bit's diameter", bit?.diameter, 'over 0'],
    [
      'bit.point.spur',
      "The bit's spur",
      point?.kind === 'brad' || point?.kind === 'center' ? point.spur : undefined,
      '0 or more',
    ],
    ['guide.bushing', 'The bushing', guide?.bushing, '0 or more'],
    ['guide.standoff', 'The standoff', guide?.standoff, '0 or more'],
    ['guide.offset', "The guide's offset", guide?.offset, 'signed'],
    ['layout.endMargin', 'The end margin', layout?.endMargin, '0 or more'],
    ['layout.maxPitch', 'The widest spacing', layout?.maxPitch, 'over 0'],
    ['layout.minPitch', 'The closest spacing', layout?.minPitch, 'over 0'],
    ['layout.graduation', "The rule's division", layout?.graduation, 'over 0'],
    ['overhang', 'The overhang', spec.overhang, '0 or more'],
    ['at', 'The distance from the end of board B', spec.at, '0 or more'],
    ['reveal', 'The reveal', spec.reveal, 'signed'],
    ['setback', 'The setback', spec.setback, '0 or more'],
    ['stagger', 'The stagger', spec.stagger, '0 or more'],
  ];
}

function checkTypes(spec: JointSpec): void {
  objectAt('spec', spec);
  oneOf('kind', spec.kind, ['edge', 'corner', 'tee', 'frame', 'miter', 'leg']);
  oneOf('system', spec.system, ['in', 'mm']);
  objectAt('a', spec.a);
  objectAt('b', spec.b);
  if (spec.drilled !== undefined) oneOf('drilled', spec.drilled, ['end', 'edge']);
  if (spec.diameterRule !== undefined) {
    oneOf('diameterRule', spec.diameterRule, ['shop-table', 'ratio']);
  }
  if (spec.pin !== undefined && spec.pin !== 'choose') objectAt('pin', spec.pin);
  if (spec.stock !== undefined && !Array.isArray(spec.stock)) {
    throw new SpecError('stock', 'must be a list of pins');
  }
  for (const field of ['bit', 'guide', 'layout'] as const) {
    if (spec[field] !== undefined) objectAt(field, spec[field]);
  }
  const point = spec.bit?.point;
  if (point !== undefined) {
    objectAt('bit.point', point);
    oneOf('bit.point.kind', point.kind, ['twist', 'brad', 'center', 'square']);
    if (point.kind === 'twist' && !Number.isFinite(point.angle)) {
      throw new SpecError('bit.point.angle', `must be a number of degrees, not ${point.angle}`);
    }
    if (point.kind === 'center' && point.spur === undefined) {
      throw new SpecError('bit.point.spur', 'must be given for a bit with a center point');
    }
  }
  if (spec.guide?.centering !== undefined && typeof spec.guide.centering !== 'boolean') {
    throw new SpecError('guide.centering', 'must be true or false');
  }
  for (const field of ['a', 'b'] as const) {
    const name = spec[field].species;
    if (name !== undefined && (typeof name !== 'string' || species(name) === undefined)) {
      throw new SpecError(`${field}.species`, `is not a species of the tables: ${String(name)}`);
    }
  }
  if (spec.kind === 'leg' && spec.b.width !== spec.b.thickness) {
    throw new SpecError('b.width', 'must equal b.thickness: the leg is square');
  }
}

/**
 * Looks a spec over before it is planned.
 *
 * @returns an error caution for each length that a learner can't have meant (zero, negative,
 *   over 100 m) and for a bit's angle that no bit has
 * @throws SpecError for a programmer's mistake; it names the field
 */
export function checkSpec(spec: JointSpec): readonly Finding[] {
  checkTypes(spec);
  const found: Finding[] = [];
  const optional = new Set([
    'a.thickness',
    'a.width',
    'a.length',
    'b.thickness',
    'b.width',
    'b.length',
    'pin.diameter',
    'pin.length',
  ]);
  for (const [field, name, value, range] of lengthsOf(spec)) {
    if (value === undefined && !optional.has(field)) continue;
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new SpecError(field, `must be a finite number of mm, not ${String(value)}`);
    }
    const problem =
      Math.abs(value) > LONGEST
        ? say`${name} is over 100 m.`
        : range === 'over 0' && value <= 0
          ? say`${name} must be more than zero.`
          : range === '0 or more' && value < 0
            ? say`${name} can't be negative.`
            : undefined;
    if (problem) {
      found.push(finding('bad-length', 'error', problem, say`Measure it and type it again.`));
    }
  }
  const point = spec.bit?.point;
  if (
    point?.kind === 'twist' &&
    (point.angle < POINT_ANGLES.least || point.angle > POINT_ANGLES.most)
  ) {
    found.push(
      finding(
        'bad-angle',
        'error',
        say`A bit's point can't have an angle of ${String(point.angle)}°.`,
        say`Type the angle between its cutting edges, such as 118 or 135.`,
      ),
    );
  }
  return found;
}
