/** Serves a folder's files under a path of a host on this machine, and counts what was asked for. */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gzipSync } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  webmanifest: 'application/manifest+json',
  woff2: 'font/woff2',
};

/** Pressed together already. */
const PRESSED: ReadonlySet<string> = new Set(['png', 'woff2']);

export interface Served {
  /** Ends in `/`. */
  readonly address: string;
  /** Paths answered with 404. */
  readonly missed: string[];
  /** Names that are asked for in vain: no answer comes. */
  readonly silent: Set<string>;
  readonly close: () => Promise<void>;
}

export interface Host {
  /** Leads from every name that ends in `.html` to the one without, as some hosts do. */
  readonly leadsOn?: true;
  /** Texts go as gzip where that is asked for, as from nearly every host. */
  readonly gzip?: true;
}

const withoutEnding = (name: string): string => name.replace(/(^|\/)index\.html$/, '$1').replace(/\.html$/, '');

export async function serveFolder(
  files: ReadonlyMap<string, Uint8Array>,
  under: string,
  { leadsOn, gzip }: Host = {},
): Promise<Served> {
  const missed: string[] = [];
  const silent = new Set<string>();
  const server = createServer((request, response) => {
    const path = (request.url ?? '').replace(/[?#].*$/, '');
    const name = path === under ? 'index.html' : path.startsWith(under) ? path.slice(under.length) : '';
    if (silent.has(name)) return;
    if (leadsOn && path !== under && name.endsWith('.html')) {
      response.writeHead(301, { location: under + withoutEnding(name) }).end();
      return;
    }
    const bytes = files.get(name) ?? (leadsOn && name !== '' ? files.get(`${name}.html`) : undefined);
    if (bytes === undefined) {
      missed.push(path);
      response.writeHead(404).end();
      return;
    }
    const ending = name.split('.').at(-1) ?? '';
    const type = { 'content-type': TYPES[ending] ?? (leadsOn ? TYPES.html : undefined) ?? 'application/octet-stream' };
    if (gzip && !PRESSED.has(ending)) {
      response.writeHead(200, { ...type, 'content-encoding': 'gzip' }).end(gzipSync(bytes));
      return;
    }
    response.writeHead(200, type).end(bytes);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}${under}`,
    missed,
    silent,
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}
