/** A PDF's objects as qpdf reports them in JSON: values looked up, streams decoded, and the whole written back for planted faults. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
export type Dict = { [key: string]: Json };

export const isDict = (value: unknown): value is Dict =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const REFERENCE = /^\d+ \d+ R$/;
/** `u:` stands before text, `b:` before hexadecimal bytes, `/` before a name. */
export const textOf = (value: Json | undefined): string =>
  typeof value === 'string' && value.startsWith('u:') ? value.slice(2) : '';

export class PdfObjects {
  readonly header: Json;
  readonly all: Dict;

  constructor(header: Json, all: Dict) {
    this.header = header;
    this.all = all;
  }

  /** What a reference leads to; anything else is itself. A stream is its dictionary. */
  at(value: Json | undefined): Json {
    if (typeof value !== 'string' || !REFERENCE.test(value)) return value ?? null;
    const found = this.all[`obj:${value}`];
    if (!isDict(found)) return null;
    const { stream } = found;
    return isDict(stream) ? (stream.dict ?? null) : this.at(found.value);
  }

  dict(value: Json | undefined): Dict | undefined {
    const found = this.at(value);
    return isDict(found) ? found : undefined;
  }

  list(value: Json | undefined): readonly Json[] {
    const found = this.at(value);
    return Array.isArray(found) ? found : found === null ? [] : [value ?? null];
  }

  bytes(reference: Json | undefined): Buffer {
    const found = typeof reference === 'string' ? this.all[`obj:${reference}`] : undefined;
    const data = isDict(found) && isDict(found.stream) ? found.stream.data : undefined;
    return Buffer.from(typeof data === 'string' ? data : '', 'base64');
  }

  setBytes(reference: Json | undefined, bytes: Buffer): void {
    const found = typeof reference === 'string' ? this.all[`obj:${reference}`] : undefined;
    if (isDict(found) && isDict(found.stream)) found.stream.data = bytes.toString('base64');
  }

  get trailer(): Dict {
    const { trailer } = this.all;
    return isDict(trailer) && isDict(trailer.value) ? trailer.value : {};
  }

  get catalog(): Dict {
    return this.dict(this.trailer['/Root']) ?? {};
  }

  /** Every dictionary that is an object of its own, with its reference. */
  dicts(): readonly (readonly [string, Dict])[] {
    return Object.keys(this.all).flatMap((key) => {
      const reference = key.replace(/^obj:/, '');
      const dict = REFERENCE.test(reference) ? this.dict(reference) : undefined;
      return dict ? [[reference, dict] as const] : [];
    });
  }

  /** Every dictionary, however deep inside another. */
  deep(): readonly Dict[] {
    const found: Dict[] = [];
    const walk = (value: Json): void => {
      if (Array.isArray(value)) for (const one of value) walk(one);
      else if (isDict(value)) {
        found.push(value);
        for (const one of Object.values(value)) walk(one);
      }
    };
    for (const [, dict] of this.dicts()) walk(dict);
    return found;
  }

  pages(): readonly Dict[] {
    return this.dicts().flatMap(([, dict]) => (dict['/Type'] === '/Page' ? [dict] : []));
  }

  /** A new object; its reference. */
  add(value: Json, bytes?: Buffer): string {
    const last = Math.max(...Object.keys(this.all).map((key) => Number(/^obj:(\d+)/.exec(key)?.[1] ?? 0)));
    const reference = `${last + 1} 0 R`;
    this.all[`obj:${reference}`] = bytes ? { stream: { dict: value, data: bytes.toString('base64') } } : { value };
    return reference;
  }
}

const folder = mkdtempSync(join(tmpdir(), 'conditions-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
let files = 0;
export function asFile(bytes: Uint8Array | string, ending: string): string {
  files += 1;
  const path = join(folder, `${files}.${ending}`);
  writeFileSync(path, bytes);
  return path;
}

export const run = (program: string, ...args: readonly string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 28, stdio: ['ignore', 'pipe', 'pipe'] });

export function readObjects(path: string): PdfObjects {
  const parsed: unknown = JSON.parse(
    run('qpdf', '--json=2', '--json-key=qpdf', '--json-stream-data=inline', '--decode-level=generalized', path),
  );
  const held = isDict(parsed) ? parsed.qpdf : undefined;
  const [header, all] = Array.isArray(held) ? held : [];
  if (header === undefined || !isDict(all)) throw new Error(`${path}: qpdf reports no objects`);
  return new PdfObjects(header, all);
}

/** The file that these objects make, written by qpdf. */
export function writeObjects({ header, all }: PdfObjects): Uint8Array {
  const from = asFile(
    JSON.stringify({ version: 2, parameters: { decodelevel: 'generalized' }, qpdf: [header, all] }),
    'json',
  );
  const to = asFile('', 'pdf');
  run('qpdf', '--json-input', '--static-id', from, to);
  return new Uint8Array(readFileSync(to));
}
