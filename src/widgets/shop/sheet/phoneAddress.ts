/** Names and numbers under which a machine calls itself: no phone can follow them. */
const ONLY_HERE = /^(localhost|.*\.localhost|127(\.\d+){3}|0\.0\.0\.0|\[::1?\])$/;

/**
 * The address under which a phone can open a page of this site; null where there is none: the
 * page runs on this machine only, from a file, or inside a learning system's package.
 *
 * @param here the address that the page has now
 * @param path the page that the phone opens, under the site's folder
 * @param site where the site is published, if it was built for a place
 * @param packed whether the page is inside a package
 */
export function phoneAddress(
  here: URL,
  path: string,
  fragment: string,
  site: string | undefined,
  packed: boolean,
): string | null {
  if (packed) return null;
  const published = here.protocol.startsWith('http') && !ONLY_HERE.test(here.hostname);
  const root = published ? here.origin : site;
  if (root === undefined) return null;
  const address = new URL(path, root);
  address.hash = fragment;
  return address.href;
}
