/**
 * A public file as every text that can be read in it: its bytes, what a browser shows, what stands in the metadata of
 * pictures, the words of a PDF, and whatever is written into it as data. What was sealed here is left out.
 * What cannot be read is told, never passed by.
 */
import { decodeHTML } from 'entities';
import { gunzipSync, unzlibSync } from 'fflate';
import type { FileText } from './leak-check.js';
import { asBytes, tryTo } from './read-bytes.js';
import { gifTexts, jpegTexts, pngTexts, riffTexts } from './read-picture-texts.js';
import { cutEnvelopes, type IsOurs } from './sealed-form.js';
import { spelledTexts } from './spelled-texts.js';

export type PdfReader = (bytes: Uint8Array) => Promise<readonly string[]>;

/** `null` where nothing can be said of the file: of a kind that is not known, or broken. */
export async function readTexts(
  bytes: Uint8Array,
  readPdf: PdfReader,
  isOurs: IsOurs = () => false,
): Promise<readonly FileText[] | null> {
  if (begins(bytes, '%PDF-')) return pdfTexts(bytes, readPdf);
  if (begins(bytes, '\x1f\x8b')) return unpressed(bytes, readPdf);
  const picture = PICTURES.find(([start]) => begins(bytes, start));
  if (picture !== undefined) return picture[1](bytes);
  if (FACES.some((start) => begins(bytes, start))) return asBytes(bytes, 'its metadata');
  const whole = textOf(bytes);
  if (whole === null) return null;
  const text = cutEnvelopes(whole, isOurs);
  const views = viewsOf(text);
  return [...views, ...(await writtenInto(text, readPdf)), ...spelledTexts(views)];
}

/** By what a file begins with. */
const PICTURES = [
  ['\x89PNG\r\n\x1a\n', pngTexts],
  ['\xff\xd8\xff', jpegTexts],
  ['GIF8', gifTexts],
  ['RIFF', riffTexts],
] as const;
const FACES = ['wOF2', 'wOFF'];

const begins = (bytes: Uint8Array, start: string): boolean =>
  [...start].every((sign, index) => bytes[index] === sign.charCodeAt(0));

/** UTF-8, or UTF-16 that says so; `null` for anything else. */
function textOf(bytes: Uint8Array): string | null {
  const utf16 = begins(bytes, '\xff\xfe') ? 'utf-16le' : begins(bytes, '\xfe\xff') ? 'utf-16be' : null;
  try {
    const text = new TextDecoder(utf16 ?? 'utf-8', { fatal: true }).decode(bytes);
    return text.includes('\0') ? null : text;
  } catch {
    return null;
  }
}

const CONTROL = /\\u\{([0-9a-f]{1,6})\}|\\u([0-9a-f]{4})|\\x([0-9a-f]{2})|\\([0-9a-f]{1,6})\s?/gi;

/** Scripts, JSON and styles may write a letter by its number. */
const unescaped = (text: string): string =>
  text.replace(CONTROL, (whole, braced, four, two, style) => {
    const code = Number.parseInt(braced ?? four ?? two ?? style, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });

/** There, `\n` and its like part words; in a style the same letters may be part of one, so this is a view of its own. */
const parted = (text: string): string => unescaped(text.replace(/\\[bfnrtv]/g, ' '));

const fromAddress = (text: string): string =>
  text.replace(/(?:%[0-9a-f]{2})+/gi, (run) => {
    try {
      return decodeURIComponent(run);
    } catch {
      return run;
    }
  });

/** Calendars and cards go on with a word on the next line (RFC 5545, section 3.1; RFC 6350, section 3.2), and so do letters by mail (RFC 2045, section 6.7). */
const joinedLines = (text: string): string => text.replace(/(?:\r?\n[ \t]|=\r?\n)/g, '');

/** The same text as bytes, as a browser shows it with its marks left out or parting words, and with nothing disguised. */
function viewsOf(text: string): readonly FileText[] {
  const isMarkedUp = text.includes('<');
  const views: readonly FileText[] = [
    { inside: 'its bytes', text },
    ...(isMarkedUp
      ? [asShown(text), text.replace(MARK, ' ')].map(
          (shown): FileText => ({ inside: 'its text', text: decodeHTML(shown) }),
        )
      : []),
    { inside: 'its text', text: fromAddress(unescaped(decodeHTML(text))) },
    { inside: 'its text', text: fromAddress(parted(decodeHTML(text))) },
    { inside: 'its text', text: joinedLines(text) },
  ];
  const seen = new Set<string>();
  return views.filter((view) => !seen.has(view.text) && seen.add(view.text));
}

const MARK = /<!--|-->|<[^>]*>/g;
/** Elements of HTML and SVG that part no word. */
const WITHIN_A_LINE =
  /^<\/?(?:a|abbr|b|bdi|bdo|cite|code|dfn|em|font|i|kbd|mark|q|s|samp|small|span|strong|sub|sup|time|tspan|u|var|wbr)\b/i;

const asShown = (text: string): string => text.replace(MARK, (mark) => (WITHIN_A_LINE.test(mark) ? '' : ' '));

/** What stands in a text as data: pictures and faces in an address. */
async function writtenInto(text: string, readPdf: PdfReader): Promise<readonly FileText[]> {
  const found: FileText[] = [];
  for (const [, data = ''] of text.matchAll(/data:[^,"'\s]*;base64,([A-Za-z0-9+/]+=*)/g)) {
    const bytes = Uint8Array.from(atob(data.slice(0, data.length - (data.length % 4))), (sign) => sign.charCodeAt(0));
    const texts = (await readTexts(bytes, readPdf)) ?? asBytes(bytes, 'what is written into it');
    found.push(...texts.map((one): FileText => ({ ...one, inside: 'what is written into it' })));
  }
  return found;
}

async function unpressed(bytes: Uint8Array, readPdf: PdfReader): Promise<readonly FileText[] | null> {
  const inner = tryTo(() => gunzipSync(bytes));
  if (inner === null) return null;
  const texts = await readTexts(inner, readPdf);
  return texts === null ? null : [...asBytes(bytes, 'its metadata'), ...texts];
}

/** The words a reader of PDFs finds, and every stream that can be opened, as bytes. */
async function pdfTexts(bytes: Uint8Array, readPdf: PdfReader): Promise<readonly FileText[] | null> {
  try {
    const read = await readPdf(bytes);
    return [
      ...read
        .flatMap((text) => [text, fromAddress(unescaped(text)), fromAddress(parted(text))])
        .map((text): FileText => ({ inside: 'its text', text })),
      ...asBytes(bytes, 'its bytes'),
      ...streamsOf(bytes).flatMap((stream) => asBytes(stream, 'its bytes')),
    ];
  } catch {
    return null;
  }
}

function streamsOf(bytes: Uint8Array): readonly Uint8Array[] {
  const text = new TextDecoder('latin1').decode(bytes);
  return [...text.matchAll(/stream\r?\n/g)].flatMap(({ index, 0: word }) => {
    const from = index + word.length;
    const end = text.indexOf('endstream', from);
    const read = tryTo(() => unzlibSync(bytes.subarray(from, end < 0 ? undefined : end)));
    return read === null ? [] : [read];
  });
}
