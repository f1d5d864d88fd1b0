import type { BitPoint, Guide } from '../joint/types.ts';
import { type Mm, mm } from '../length/mm.ts';
import { type ToolSet, toolLimits } from './toolSet.ts';

/** The tools of one machine. */
export interface Toolbox {
  readonly sets: readonly ToolSet[];
  /** Which of them is in use, by its place in the list; 0 without any. */
  readonly inUse: number;
}

export const emptyToolbox: Toolbox = { sets: [], inUse: 0 };

/** What was kept, read again. */
export type ReadToolbox =
  | { readonly ok: true; readonly toolbox: Toolbox }
  /** `newer`: by a later version of this page, and not to be written over; `damaged`: no use to anyone. */
  | { readonly ok: false; readonly why: 'newer' | 'damaged' };

const VERSION = 1;

/** Text to keep on the machine; `readToolbox` makes it a toolbox again. */
export function writeToolbox(toolbox: Toolbox): string {
  return JSON.stringify({ version: VERSION, ...toolbox });
}

/**
 * Reads what was kept. The text may be damaged, or anyone's: a field that is not what it should
 * be is dropped, and the rest kept. Never throws.
 */
export function readToolbox(text: string): ReadToolbox {
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return { ok: false, why: 'damaged' };
  }
  const { version, sets, inUse } = fields(kept);
  if (typeof version === 'number' && version > VERSION) return { ok: false, why: 'newer' };
  if (version !== VERSION || !Array.isArray(sets)) return { ok: false, why: 'damaged' };
  const read = sets.slice(0, toolLimits.sets).map(readSet);
  const place = typeof inUse === 'number' && Number.isInteger(inUse) ? inUse : 0;
  return {
    ok: true,
    toolbox: { sets: read, inUse: Math.min(Math.max(0, place), Math.max(0, read.length - 1)) },
  };
}

function readSet(kept: unknown): ToolSet {
  const { name, guide, bit, pins } = fields(kept);
  const { hole, point } = fields(bit);
  const { nominal, readings } = fields(pins);
  return {
    name: typeof name === 'string' ? name.slice(0, toolLimits.name) : '',
    guide: readGuide(fields(guide)),
    bit: dropMissing({ hole: size(hole), point: readPoint(point) }),
    pins: {
      ...dropMissing({ nominal: size(nominal) }),
      readings: (Array.isArray(readings) ? readings : [])
        .slice(0, toolLimits.readings)
        .map(size)
        .filter((reading) => reading !== undefined),
    },
  };
}

function readGuide({ bushing, standoff, offset, centering }: Fields): Guide {
  return dropMissing({
    bushing: length(bushing, 0),
    standoff: length(standoff, 0),
    offset: length(offset, -LONGEST),
    centering: typeof centering === 'boolean' ? centering : undefined,
  });
}

function readPoint(kept: unknown): BitPoint | undefined {
  const { kind, angle, spur } = fields(kept);
  const measured = length(spur, 0);
  switch (kind) {
    case 'twist':
      return typeof angle === 'number' && angle > 0 && angle <= 180 ? { kind, angle } : undefined;
    case 'brad':
      return measured === undefined ? { kind } : { kind, spur: measured };
    case 'center':
      return measured === undefined ? undefined : { kind, spur: measured };
    case 'square':
      return { kind };
    default:
      return undefined;
  }
}

type Fields = Readonly<Record<string, unknown>>;

function fields(kept: unknown): Fields {
  return typeof kept === 'object' && kept !== null ? (kept as Fields) : {};
}

/** No guide, bit or pin is longer than this, mm. */
const LONGEST = 1000;

function length(kept: unknown, least: number): Mm | undefined {
  return typeof kept === 'number' && kept >= least && kept <= LONGEST ? mm(kept) : undefined;
}

function size(kept: unknown): Mm | undefined {
  const read = length(kept, 0);
  return read === 0 ? undefined : read;
}

/** An object without the fields that have no value. */
function dropMissing<Value extends object>(
  value: Value,
): { [Key in keyof Value]?: Exclude<Value[Key], undefined> } {
  return Object.fromEntries(
    Object.entries(value).filter(([, each]) => each !== undefined),
  ) as ReturnType<typeof dropMissing<Value>>;
}
