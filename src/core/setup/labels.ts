import { LinkFault } from './linkFault.ts';

/** What people call a joint and its boards, and how often they make it. No number of a plan depends on it. */
export interface JointLabel {
  /** Such as 'Side to top'; empty where it has no name. At most `LONGEST_NAME` characters. */
  readonly name: string;
  /** Joints alike; a whole number from 1. */
  readonly count: number;
  /** The board of the piece that is A, such as 'Side'; empty where it has no name. */
  readonly boardA: string;
  readonly boardB: string;
}

/** A board of a piece and how many of it are cut. */
export interface NamedBoard {
  readonly name: string;
  /** A whole number; 0 for a board that isn't cut but glued up from others. */
  readonly count: number;
}

/** What people call the whole piece, and how many of each named board it has. */
export interface PieceLabel {
  /** Empty where it has no name. */
  readonly title: string;
  readonly boards: readonly NamedBoard[];
}

export const LONGEST_NAME = 60;
/** Joints in one piece, those alike counted each; boards alike. */
export const MOST_JOINTS = 60;

/** A joint without a name, made once. */
export const NO_LABEL: JointLabel = { name: '', count: 1, boardA: '', boardB: '' };

/**
 * A name fit to be shown and kept: one line, no longer than a label has room for.
 * @example tidyName('  Side\nto top ') // 'Side to top'
 */
export function tidyName(text: string): string {
  // The rest of a pair of surrogates can't stand alone, in a link least of all.
  return [...text.replace(/[\p{C}\p{Z}]+/gu, ' ').trim()].slice(0, LONGEST_NAME).join('').trim();
}

/** A name as it stands in a link. */
export function nameText(name: string): string | undefined {
  const tidy = tidyName(name);
  // What encodeURIComponent leaves, but a link doesn't: it stays whole in a message's text.
  return tidy === ''
    ? undefined
    : encodeURIComponent(tidy).replace(/[!'()*~_]/g, (sign) => `%${hex(sign)}`);
}

function hex(sign: string): string {
  return sign.charCodeAt(0).toString(16).toUpperCase();
}

export function nameFrom(key: string, text: string): string {
  try {
    const name = decodeURIComponent(text);
    if (name !== tidyName(name)) throw new LinkFault(`its “${key}” is no name`);
    return name;
  } catch (fault) {
    if (fault instanceof URIError) throw new LinkFault(`its “${key}” is no name`);
    throw fault;
  }
}

export function countFrom(key: string, text: string, least = 1): number {
  const count = /^\d{1,3}$/.test(text) ? Number(text) : NaN;
  if (!(count >= least && count <= MOST_JOINTS)) {
    throw new LinkFault(`its “${key}” is not a count from ${least} to ${MOST_JOINTS}`);
  }
  return count;
}

/** The boards of a piece as they stand in a link. @example 'Side:2,Top:1' */
export function boardsText(boards: readonly NamedBoard[]): string | undefined {
  const parts = boards.flatMap(({ name, count }) => {
    const text = nameText(name);
    return text === undefined ? [] : [`${text}:${count}`];
  });
  return parts.length === 0 ? undefined : parts.join(',');
}

export function boardsFrom(text: string): readonly NamedBoard[] {
  const boards = text.split(',').map((part) => {
    const [name = '', count = '', ...more] = part.split(':');
    if (name === '' || more.length > 0) throw new LinkFault('its “boards” can’t be read');
    return { name: nameFrom('boards', name), count: countFrom('boards', count, 0) };
  });
  if (new Set(boards.map(({ name }) => name)).size < boards.length) {
    throw new LinkFault('it counts a board twice');
  }
  if (boards.length > 2 * MOST_JOINTS) throw new LinkFault('it has too many boards');
  return boards;
}
