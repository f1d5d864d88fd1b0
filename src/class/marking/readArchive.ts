import { type UnzipFileInfo, strFromU8, unzipSync } from 'fflate';
import { LONGEST_HAND_IN } from '../hand-in/readHandIn.ts';
import type { Source, Unread } from './markAll.ts';

/** What an archive may hold at most. */
export const ARCHIVE_LIMITS = {
  /**
   * The archive itself, bytes: some ten thousand hand-ins. It also bounds what an archive that
   * lies about its sizes can cost.
   */
  size: 24_000_000,
  entries: 20_000,
  /** One file in it, unpacked, bytes. */
  file: 2 * LONGEST_HAND_IN,
  /** All files in it, unpacked, bytes. */
  total: 256_000_000,
} as const;

/** What an archive holds: files to be read, and those that were refused. */
export interface ReadArchive {
  readonly sources: readonly Source[];
  readonly unread: readonly Unread[];
}

/** True for the bytes that every zip archive begins with. */
export function isArchive(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);
}

/** What systems put into an archive by themselves, and folders. */
function isNoFile(name: string): boolean {
  return name.endsWith('/') || /(^|\/)(__MACOSX\/|\._|\.DS_Store$|Thumbs\.db$)/.test(name);
}

/** The file's own name, whatever folder the archive says it is in: nothing is written anywhere. */
function ownName(name: string): string {
  return (
    name.split(/[/\\]/).at(-1)!.replace(/\p{C}/gu, '').slice(0, 100) || 'a file without a name'
  );
}

/** Only these names, unpacked; those that can't be are left out. */
function unpacked(bytes: Uint8Array, wanted: ReadonlySet<string>): ReadonlyMap<string, Uint8Array> {
  const unzip = (names: ReadonlySet<string>) => {
    const left = new Set(names);
    const files = unzipSync(bytes, { filter: ({ name }) => left.delete(name) });
    return Object.entries(files);
  };
  try {
    return new Map(unzip(wanted));
  } catch {
    // One of them is damaged: each by itself, so that the others are not lost.
    const sound = [...wanted].flatMap((only) => {
      try {
        return unzip(new Set([only]));
      } catch {
        return [];
      }
    });
    return new Map(sound);
  }
}

/**
 * Reads the hand-ins in a zip archive. Archives come from anyone: what is too large, too many or
 * damaged is refused with a sentence, file by file where that is possible; it never throws.
 */
export function readArchive(file: string, bytes: Uint8Array): ReadArchive {
  const refused = (reason: string): ReadArchive => ({ sources: [], unread: [{ file, reason }] });
  if (bytes.length > ARCHIVE_LIMITS.size) return refused('This archive is too large.');

  const wanted = new Set<string>();
  const unread: Unread[] = [];
  let entries = 0;
  let total = 0;
  const fault = (info: UnzipFileInfo): string | null => {
    if (wanted.has(info.name))
      return 'The archive holds two files of this name; the first is read.';
    if (Math.max(info.size, info.originalSize) > ARCHIVE_LIMITS.file) {
      return 'This file can’t be read: it is larger than any hand-in.';
    }
    if (info.compression !== 0 && info.compression !== 8) {
      return 'This file is packed in a way that can’t be read. Make an ordinary zip archive.';
    }
    return null;
  };
  try {
    unzipSync(bytes, {
      filter: (info) => {
        entries += 1;
        if (entries > ARCHIVE_LIMITS.entries) throw new RangeError('too many files');
        if (isNoFile(info.name)) return false;
        const reason = fault(info);
        if (reason === null) {
          wanted.add(info.name);
          total += info.originalSize;
        } else unread.push({ file: ownName(info.name), reason });
        return false;
      },
    });
  } catch {
    return refused(
      entries > ARCHIVE_LIMITS.entries
        ? `This archive says that it holds more than ${ARCHIVE_LIMITS.entries} files.`
        : 'This archive is damaged, or it is no zip archive.',
    );
  }
  if (total > ARCHIVE_LIMITS.total) return refused('This archive unpacks to more than fits.');

  const found = unpacked(bytes, wanted);
  const sources: Source[] = [];
  for (const name of wanted) {
    const content = found.get(name);
    if (content) sources.push({ file: ownName(name), text: strFromU8(content) });
    else unread.push({ file: ownName(name), reason: 'This file is damaged inside the archive.' });
  }
  return { sources, unread };
}
