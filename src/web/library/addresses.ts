/** Whole addresses of the library's pages, where the studio says where it is hosted; under any path of any host. */

/** The page for what is not there: under this name most plain hosts look for it. */
export const NOT_HERE = '404.html';

/** Gives the whole address of a path below the library's root. The root itself is its first page. */
export function addressesAt(home: string): (path: string) => string {
  const root = new URL(home);
  root.hash = '';
  root.search = '';
  // A whole address of the first page's file is the folder it lies in.
  root.pathname = root.pathname.replace(/index\.html$/, '').replace(/([^/])$/, '$1/');
  return (path) =>
    new URL(
      path
        .split('/')
        .map(encodeURIComponent)
        .join('/')
        .replace(/(^|\/)index\.html$/, '$1'),
      root,
    ).href;
}
