import { strToU8, type Zippable, zip } from 'fflate';
import type { Assignment } from '../../class/assignment/assignment.ts';
import { encodeAssignment } from '../../class/assignment/assignmentLink.ts';
import { manifest } from '../../class/scorm/manifest.ts';
import { packPage, packStyles } from '../../class/scorm/packagePages.ts';

/** Always the same, so that the same assignment makes the same file. */
const MADE = new Date('2020-01-01T00:00:00');

/**
 * A SCORM 1.2 package of an assignment, made here from the site's own files: its page, and the
 * lessons that it is about.
 * @param base the site's, with a slash at its end
 * @param lessons ids of the lessons that go along
 * @throws Error a sentence, where a file can't be had
 */
export async function packAssignment(
  assignment: Assignment,
  base: string,
  lessons: readonly string[],
): Promise<Uint8Array<ArrayBuffer>> {
  const pages = ['assignment/', ...lessons.map((lesson) => `lessons/${lesson}/`)];
  const needed = (await (await fetched(`${base}packed-files.json`)).json()) as Record<
    string,
    readonly string[] | undefined
  >;
  const packing = { base, pages, assignment: encodeAssignment(assignment) };
  const files: Zippable = {};

  const names = new Set(pages.flatMap((page) => needed[page] ?? []));
  await Promise.all([
    ...pages.map(async (page) => {
      const html = await (await fetched(`${base}${page}`)).text();
      files[`${page}index.html`] = strToU8(packPage(html, page, packing));
    }),
    ...[...names].map(async (name) => {
      const response = await fetched(`${base}${name}`);
      files[name] = name.endsWith('.css')
        ? strToU8(packStyles(await response.text(), base))
        : new Uint8Array(await response.arrayBuffer());
    }),
  ]);
  const sorted = Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
  const xml = manifest({
    identifier: `matched-holes-${assignment.id}`,
    title: assignment.title,
    launch: 'assignment/index.html',
    passMark: assignment.passMark,
    files: Object.keys(sorted),
  });
  return zipped({ 'imsmanifest.xml': strToU8(xml), ...sorted });
}

async function fetched(address: string): Promise<Response> {
  const refused = () =>
    new Error(
      `The package can’t be made: ${address} could not be loaded. Check the network, then try again.`,
    );
  const response = await fetch(address).catch(() => {
    throw refused();
  });
  if (!response.ok) throw refused();
  return response;
}

function zipped(files: Zippable): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((done, failed) => {
    zip(files, { mtime: MADE, level: 6 }, (error, data) => {
      if (error) failed(error);
      else done(data);
    });
  });
}
