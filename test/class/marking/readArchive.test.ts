import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { ARCHIVE_LIMITS, isArchive, readArchive } from '../../../src/class/marking/readArchive.ts';

const text = (says: string) => strToU8(says);
const read = (files: Record<string, Uint8Array>) => readArchive('class.zip', zipSync(files));

/** Where a sequence of bytes begins. */
function indexOf(bytes: Uint8Array, wanted: readonly number[], from = 0): number {
  for (let at = from; at < bytes.length; at++) {
    if (wanted.every((byte, i) => bytes[at + i] === byte)) return at;
  }
  throw new Error('not in it');
}

const ENTRY = [0x50, 0x4b, 1, 2];
const END = [0x50, 0x4b, 5, 6];

describe('an archive of hand-ins', () => {
  it('gives its files, by their own names, in whatever folders they are', () => {
    const { sources, unread } = read({
      'a.json': text('{"é":1}'),
      'week 3/Bench 2/b.json': text('two'),
      '../../../etc/c.json': text('three'),
      'C:\\temp\\d.json': text('four'),
    });
    expect(sources).toEqual([
      { file: 'a.json', text: '{"é":1}' },
      { file: 'b.json', text: 'two' },
      { file: 'c.json', text: 'three' },
      { file: 'd.json', text: 'four' },
    ]);
    expect(unread).toEqual([]);
  });

  it('passes over folders and what a system adds by itself', () => {
    const { sources, unread } = read({
      'class/': new Uint8Array(),
      '__MACOSX/._a.json': text('x'),
      'class/.DS_Store': text('x'),
      'class/a.json': text('one'),
    });
    expect(sources.map(({ file }) => file)).toEqual(['a.json']);
    expect(unread).toEqual([]);
  });

  it('refuses a file that unpacks to more than any hand-in, and reads the others', () => {
    const { sources, unread } = read({
      'bomb.json': new Uint8Array(5_000_000),
      'a.json': text('one'),
    });
    expect(sources.map(({ file }) => file)).toEqual(['a.json']);
    expect(unread).toMatchObject([
      { file: 'bomb.json', reason: expect.stringContaining('larger') },
    ]);
  });

  it('unpacks no more than an entry says that it holds', () => {
    const bytes = zipSync({ 'bomb.json': new Uint8Array(5_000_000), 'a.json': text('one') });
    const at = indexOf(bytes, ENTRY);
    new DataView(bytes.buffer).setUint32(at + 24, 10, true);
    const { sources } = readArchive('class.zip', bytes);
    expect(sources.map((source) => [source.file, source.text.length])).toEqual([
      ['bomb.json', 10],
      ['a.json', 3],
    ]);
  });

  it('is refused where it says that it holds too many, without counting to the end', () => {
    const bytes = zipSync({ 'a.json': text('one') });
    new DataView(bytes.buffer).setUint16(indexOf(bytes, END) + 10, 65_535, true);
    new DataView(bytes.buffer).setUint16(indexOf(bytes, END) + 8, 65_535, true);
    const { sources, unread } = readArchive('class.zip', bytes);
    expect(sources).toEqual([]);
    expect(unread).toHaveLength(1);
  });

  it('is refused where it really holds too many, or too much', () => {
    const many = Object.fromEntries(
      Array.from({ length: ARCHIVE_LIMITS.entries + 1 }, (_, i) => [`${i}`, new Uint8Array()]),
    );
    expect(read(many).unread).toMatchObject([
      { reason: expect.stringContaining('more than 20000') },
    ]);
    const large = new Uint8Array(ARCHIVE_LIMITS.size + 1);
    expect(readArchive('class.zip', large).unread).toMatchObject([
      { reason: expect.stringContaining('too large') },
    ]);
  });

  it('loses only what is damaged', () => {
    const bytes = zipSync({ 'a.json': text('one'.repeat(99)), 'b.json': text('two'.repeat(99)) });
    // The first block of the first file is of no known type.
    bytes[30 + 'a.json'.length] = 0xff;
    const { sources, unread } = readArchive('class.zip', bytes);
    expect(sources.map(({ file }) => file)).toEqual(['b.json']);
    expect(unread).toMatchObject([{ file: 'a.json', reason: expect.stringContaining('damaged') }]);
  });

  it('reads the first of two files of one name, and says so', () => {
    const bytes = zipSync({ 'a.json': text('one'), 'b.json': text('two') });
    for (const at of [indexOf(bytes, text('b.json') as never), indexOf(bytes, ENTRY, 100)]) {
      const name = indexOf(bytes, [...text('b.json')], at);
      bytes.set(text('a.json'), name);
    }
    const { sources, unread } = readArchive('class.zip', bytes);
    expect(sources).toEqual([{ file: 'a.json', text: 'one' }]);
    expect(unread).toMatchObject([{ reason: expect.stringContaining('two files of this name') }]);
  });

  it('takes names that mean something to JavaScript for names', () => {
    const { sources, unread } = read({ constructor: text('one'), toString: text('two') });
    expect(sources.map(({ file }) => file)).toEqual(['constructor', 'toString']);
    expect(unread).toEqual([]);
  });

  it('is known by its first bytes, and refused where it is something else or cut off', () => {
    const bytes = zipSync({ 'a.json': text('one') });
    expect(isArchive(bytes)).toBe(true);
    expect(isArchive(text('{"handIn":1}'))).toBe(false);
    for (const wrong of [
      bytes.subarray(0, 40),
      text('PK\u0003\u0004 nonsense'),
      new Uint8Array(),
    ]) {
      expect(readArchive('class.zip', wrong)).toEqual({
        sources: [],
        unread: [{ file: 'class.zip', reason: expect.stringContaining('damaged') }],
      });
    }
  });
});
