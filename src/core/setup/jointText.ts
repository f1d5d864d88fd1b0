import type { BitPoint, Board, JointSpec, Pin } from '../joint/types.ts';
import type { Mm } from '../length/mm.ts';
import { type JointLabel, nameText } from './labels.ts';
import { OMITTED, slug } from './linkFields.ts';

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

/** One joint as it stands in a link; what is as version 1 has it is left out. */
export function encodeJoint(spec: JointSpec, label: JointLabel): string {
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

/** Keys with their values; a key without one is left out. */
export function inPairs(pairs: readonly (readonly [string, string | undefined])[]): string {
  return pairs
    .flatMap(([key, value]) => (value === undefined ? [] : [`${key}=${value}`]))
    .join(';');
}
