/**
 * The address of a page or file of this site, under whatever folder the site is put.
 * @param path from the site's root, with a leading slash; a page ends with a slash
 * @example href('/lessons/splitting-the-depth/') // '/woodshop/lessons/splitting-the-depth/'
 */
export function href(path: `/${string}`): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}${path}`;
}
