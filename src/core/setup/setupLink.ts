import type { JointSpec } from '../joint/types.ts';
import type { LengthUnit } from '../length/parseLength.ts';
import { choiceFrom, fieldsFrom, jointFrom, labelFrom, defined } from './jointFrom.ts';
import { encodeJoint, inPairs } from './jointText.ts';
import {
  type JointLabel,
  type PieceLabel,
  boardsFrom,
  boardsText,
  MOST_JOINTS,
  nameFrom,
  nameText,
  NO_LABEL,
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
