import { type Zippable, strToU8, zipSync } from 'fflate';
import { type Assignment, templateOf } from '../../../class/assignment/assignment.ts';
import { encodeAssignment } from '../../../class/assignment/assignmentLink.ts';
import { manifest } from '../../../class/scorm/manifest.ts';
import { packPage, packStyles } from '../../../class/scorm/packagePages.ts';

/** Always the same, so that the same assignment makes the same file. */
const MADE = new Date('2020-01-01T00:00:00');

/**
 * A SCORM 1.2 package of an assignment, made here from the site's own files: its page, and the
 * lessons that it is about.
 * @param base the site's, with a slash at its end
 * @throws Error a sentence, where a file can't be had
 */
export async function packAssignment(
  assignment: Assignment,
  base: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const needed = (await (await fetched(`${base}packed-files.json`)).json()) as Record<
    string,
    readonly string[] | undefined
  >;
  const lessons = new Set(assignment.templates.map((id) => `lessons/${templateOf(id)?.lesson}/`));
  const pages = ['assignment/', ...lessons].filter((page) => needed[page] !== undefined);
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
  // Not in fflate's own workers: they start from blobs, which the security policy forbids.
  return zipSync({ 'imsmanifest.xml': strToU8(xml), ...sorted }, { mtime: MADE, level: 6 });
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
