/** What is private to a client and stands in a page for everybody too: publishing would refuse it, so it is told here. */
import { clientId } from '../model/identity.js';
import type { Place } from '../model/place.js';
import { placeIn } from '../prose/source-text.js';
import { lookFor } from '../publish/leak-check.js';
import { type PrivateWord, privateWordsOf } from '../publish/private-words.js';
import type { OpenFile } from './open-file.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** What a programme expects of clients names them, and is printed nowhere. */
const UNPRINTED = /^## +Expect[ \t]*\n[\s\S]*?(?=^#{1,2} |(?![\s\S]))/gim;

/** With as many lines as before, so that a line is found again. */
const publicPart = (text: string): string => text.replace(UNPRINTED, (part) => part.replace(/[^\n]+/g, ''));

function checkPrivacy({ clients, files }: ReadThings): void {
  const owners = new Map<PrivateWord, OpenFile>();
  for (const { id, client, file } of clients) {
    const name = client === undefined ? {} : { name: client.name };
    for (const word of privateWordsOf({ client: clientId(id), text: file.source.text, ...name }))
      owners.set(word, file);
  }
  // All at once: a page is long, and clients are many.
  const look = lookFor([...owners.keys()]);
  const own = new Set<OpenFile>(clients.map(({ file }) => file));
  for (const { path, source } of files.filter((file) => !own.has(file))) {
    const page = publicPart(source.text);
    for (const { word } of look({ path, texts: [{ inside: 'its bytes', text: page }] })) {
      const file = owners.get(word);
      if (file === undefined) continue;
      owners.delete(word);
      const data = { kind: word.kind, text: word.text, page: path, line: lineOf(word, page) };
      file.report.add({ code: 'private-in-library', data }, placeOf(word, file));
    }
  }
}

/** 0 where it runs over lines. */
function lineOf(word: PrivateWord, page: string): number {
  const look = lookFor([word]);
  const holds = (text: string): boolean => look({ path: '', texts: [{ inside: 'its bytes', text }] }).length > 0;
  return 1 + page.split('\n').findIndex(holds);
}

function placeOf({ text }: PrivateWord, { source, place }: OpenFile): Place {
  const at = source.text.indexOf(text);
  return at < 0 ? place : placeIn(source, at, at + text.length);
}

export const privacyChecks: readonly FolderCheck[] = [
  { name: 'nothing private in the library', codes: ['private-in-library'], check: checkPrivacy },
];
