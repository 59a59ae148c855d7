/**
 * Content-security policies of the pages. Nothing is allowed that is not named; nothing inline runs or styles except
 * the very bytes whose digest is named; no page asks anything of another host.
 */
import type { Hashed } from './shell-parts.js';

/** An empty picture as data spares a request for an icon. */
const ALWAYS = ["default-src 'none'", "img-src 'self' data:", "base-uri 'none'", "form-action 'none'"];

const policy = (...directives: readonly string[]): string => [...ALWAYS, ...directives].join('; ');

const sources = (hashed: readonly Hashed[]): string => hashed.map(({ source }) => source).join(' ');

/** A booklet in one file. `styles` are those that stand in the page. */
export const filePolicy = (styles: readonly Hashed[], scripts: readonly Hashed[]): string =>
  policy(`style-src ${sources(styles)}`, `script-src ${sources(scripts)}`, 'font-src data:');

/** The shell of a folder: files beside it are faces, scripts, icons, and the client's part, which it fetches. */
export const shellPolicy = (styles: readonly Hashed[], script: Hashed): string =>
  policy(
    `style-src ${sources(styles)}`,
    `script-src ${script.source} 'self'`,
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
  );

/**
 * A page of the public library: style and faces beside it, and what it tells crawlers, which runs nothing. `styles` are
 * those that stand in the page.
 */
export const libraryPolicy = (data: Hashed | undefined, styles: readonly Hashed[] = []): string =>
  policy(
    `style-src ${["'self'", ...styles.map(({ source }) => source)].join(' ')}`,
    "font-src 'self'",
    ...(data === undefined ? [] : [`script-src ${data.source}`]),
  );

/** The library's first page: it also has a script beside it, which may start what keeps it for a time without a network. */
export const searchPolicy = (data: Hashed): string =>
  policy(`style-src 'self'`, "font-src 'self'", `script-src 'self' ${data.source}`, "worker-src 'self'");

/** Pages that run nothing at all. */
export const payloadPolicy = (): string => policy("style-src 'self'", "font-src 'self'");

/** A page of one file that runs nothing. */
export const sheetPolicy = (styles: readonly Hashed[]): string => policy(`style-src ${sources(styles)}`);
