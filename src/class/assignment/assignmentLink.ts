import { type Mm, mm } from '../../core/length/mm.ts';
import { templates } from '../../practice/made/index.ts';
import type { Limits } from '../../practice/questions/types.ts';
import { codeOf } from '../codeOf.ts';
import { type Assignment, JOINTS, TOLERANCES, faultOf } from './assignment.ts';

export type DecodedAssignment =
  | { readonly ok: true; readonly assignment: Assignment }
  | { readonly ok: false; readonly reason: string };

const VERSION = '1';
const LONGEST_LINK = 1500;

const KEYS = [
  ...['show', 'id', 'n', 'pass', 'say', 'joints', 'boards', 'within', 'due'],
  ...['calc', 'bank', 'ask', 'title'],
] as const;

/** Three characters that stand for a template in a link; a test holds that no two have the same. */
export function templateCode(id: string): string {
  return codeOf(id, 3).toLowerCase();
}

const byCode = new Map(templates.map(({ id }) => [templateCode(id), id]));

/** The shortest decimal of a length, a nanometer being plenty. */
function decimal(length: number): string {
  return String(Math.round(length * 1e6) / 1e6);
}

/** Text that no program that passes links on cuts off or changes. */
function plain(text: string): string {
  return encodeURIComponent(text)
    .replace(/[!'()*~]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`)
    .replaceAll('%20', '+');
}

/** Everything but the title, the pass mark and the due date: what decides which questions are asked. */
function deciding(assignment: Assignment): readonly (readonly [string, string | undefined])[] {
  const { limits } = assignment;
  return [
    ['show', assignment.system],
    ['id', assignment.id],
    ['n', String(assignment.count)],
    ['say', assignment.feedback],
    ['joints', limits.joints?.join(',')],
    ['boards', limits.thicknesses?.map(decimal).join(',')],
    ['within', limits.tolerance === undefined ? undefined : decimal(limits.tolerance)],
    ['calc', String(assignment.calc)],
    ['bank', String(assignment.bank)],
    ['ask', assignment.templates.map(templateCode).join(',')],
  ];
}

function joined(pairs: readonly (readonly [string, string | undefined])[]): string {
  return pairs
    .flatMap(([key, value]) => (value === undefined ? [] : [`${key}=${value}`]))
    .join(';');
}

/**
 * What decides which questions an assignment asks, as a text: two assignments with the same text
 * ask each student the same, whatever they are called and whenever they are due.
 */
export function whatIsAsked(assignment: Assignment): string {
  return `${VERSION};${joined(deciding(assignment))}`;
}

/**
 * Writes an assignment as the fragment of a link, without its '#'. A checksum at its end shows
 * when a part has been lost on the way.
 * @example encodeAssignment(assignment) // '1;show=in;id=7K2M9QXB;n=8;…;title=Setting+the+stop;sum=4DJ8'
 */
export function encodeAssignment(assignment: Assignment): string {
  const text = `${VERSION};${joined([
    ...deciding(assignment),
    ['pass', String(assignment.passMark)],
    ['due', assignment.due],
    ['title', plain(assignment.title)],
  ])}`;
  return `${text};sum=${codeOf(text, 4)}`;
}

/** Thrown while reading a link, to be turned into a sentence at the door. */
class LinkFault extends Error {}

function fieldsFrom(text: string): ReadonlyMap<string, string> {
  const fields = new Map<string, string>();
  for (const pair of text.split(';')) {
    const [key = '', value, ...more] = pair.split('=');
    if (!KEYS.some((known) => known === key)) {
      throw new LinkFault(`it says “${key.slice(0, 20)}”, which means nothing here`);
    }
    if (value === undefined || value === '' || more.length > 0) {
      throw new LinkFault(`its “${key}” has no value`);
    }
    if (fields.has(key)) throw new LinkFault(`it gives “${key}” twice`);
    fields.set(key, value);
  }
  return fields;
}

function wholeFrom(fields: ReadonlyMap<string, string>, key: string): number {
  const text = fields.get(key) ?? '';
  if (!/^\d{1,4}$/.test(text)) throw new LinkFault(`its “${key}” is not a whole number`);
  return Number(text);
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

function lengthFrom(key: string, text: string): Mm {
  if (!/^\d{1,3}(\.\d{1,6})?$/.test(text)) throw new LinkFault(`its “${key}” is not a length`);
  return mm(Number(text));
}

/** A list whose members are all different. */
function listFrom(key: string, text: string): readonly string[] {
  const list = text.split(',');
  if (new Set(list).size < list.length) throw new LinkFault(`its “${key}” names something twice`);
  return list;
}

function titleFrom(text: string): string {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    throw new LinkFault('its title is damaged');
  }
}

function limitsFrom(fields: ReadonlyMap<string, string>): Limits {
  const joints = fields.get('joints');
  const boards = fields.get('boards');
  const within = fields.get('within');
  return {
    ...(joints !== undefined && {
      joints: listFrom('joints', joints).map((kind) => choiceFrom('joints', kind, JOINTS)),
    }),
    ...(boards !== undefined && {
      thicknesses: listFrom('boards', boards).map((each) => lengthFrom('boards', each)),
    }),
    ...(within !== undefined && { tolerance: lengthFrom('within', within) }),
  };
}

function assignmentFrom(text: string): Assignment {
  const fields = fieldsFrom(text);
  const id = fields.get('id') ?? '';
  if (!/^[0-9A-Z]{8}$/.test(id)) throw new LinkFault('it has no name of its own');
  const system = choiceFrom('show', fields.get('show'), ['in', 'mm']);
  const limits = limitsFrom(fields);
  const { tolerance } = limits;
  if (
    tolerance !== undefined &&
    !TOLERANCES[system].some((each) => decimal(each) === decimal(tolerance))
  ) {
    throw new LinkFault('its “within” is not one that can be chosen');
  }
  const due = fields.get('due');
  return {
    id,
    title: titleFrom(fields.get('title') ?? ''),
    templates: listFrom('ask', fields.get('ask') ?? '').map((code) => {
      const template = byCode.get(code);
      if (template === undefined) {
        throw new LinkFault('it asks questions that this edition of the workbook does not have');
      }
      return template;
    }),
    count: wholeFrom(fields, 'n'),
    passMark: wholeFrom(fields, 'pass'),
    system,
    feedback: choiceFrom('say', fields.get('say'), ['each', 'end']),
    limits,
    ...(due !== undefined && { due }),
    calc: wholeFrom(fields, 'calc'),
    bank: wholeFrom(fields, 'bank'),
  };
}

/**
 * Reads an assignment from the fragment of a link. Links come from anyone: whatever is in one,
 * this returns an assignment that can be given or a sentence that says what is wrong; it never
 * throws.
 *
 * @param fragment the part of the link after '#', with or without it
 */
export function decodeAssignment(fragment: string): DecodedAssignment {
  const refused = (why: string): DecodedAssignment => ({
    ok: false,
    reason: `This link can’t be read: ${why}. Ask for it again.`,
  });
  const text = fragment.replace(/^#/, '').trim();
  if (text === '') return refused('it holds no assignment');
  if (text.length > LONGEST_LINK) return refused('it is too long');
  const [version = ''] = text.split(';', 1);
  if (version !== VERSION) {
    return refused(
      /^\d{1,4}$/.test(version)
        ? 'it was made by a newer edition of this workbook'
        : 'it is not an assignment',
    );
  }
  const whole = /^(.*);sum=([0-9A-Z]{4})$/s.exec(text);
  if (!whole || codeOf(whole[1]!, 4) !== whole[2]) {
    return refused('a part of it is missing or was changed on the way');
  }
  try {
    const assignment = assignmentFrom(whole[1]!.slice(VERSION.length + 1));
    const fault = faultOf(assignment);
    if (fault !== null) return refused(`${fault[0]!.toLowerCase()}${fault.slice(1, -1)}`);
    return { ok: true, assignment };
  } catch (fault) {
    if (fault instanceof LinkFault) return refused(fault.message);
    throw fault;
  }
}
