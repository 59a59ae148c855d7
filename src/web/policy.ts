/**
 * Content-security policies of the pages. Nothing is allowed that is not named; nothing inline runs or styles except
 * the very bytes whose digest is named; no page asks anything of another host.
 */
import type { Hashed, ShellParts } from './shell-parts.js';

/** An empty picture as data spares a request for an icon. */
const ALWAYS = ["default-src 'none'", 'img-src data:', "base-uri 'none'", "form-action 'none'"];

const policy = (...sources: readonly string[]): string => [...ALWAYS, ...sources].join('; ');

/** `styles` are those that stand in the page. */
export const filePolicy = (styles: readonly Hashed[], script: Hashed): string =>
  policy(`style-src ${styles.map(({ source }) => source).join(' ')}`, `script-src ${script.source}`, 'font-src data:');

/** A folder's style and faces are files beside the page; its script stands inside, named by its digest. */
export const shellPolicy = (parts: ShellParts): string =>
  policy("style-src 'self'", `script-src ${parts.script.source}`, "font-src 'self'", "connect-src 'self'");

/** Pages that run nothing at all. */
export const payloadPolicy = (): string => policy("style-src 'self'", "font-src 'self'");
