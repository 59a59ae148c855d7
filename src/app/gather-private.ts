/** All that may stand in no public file: of every client of whom a page lies in the folder, read in full or not, and of every key. */
import { type ClientId, clientId } from '../model/identity.js';
import { PRIVATE_MARK } from '../model/private-mark.js';
import type { Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { type PrivateWord, privateWordsOf } from '../publish/private-words.js';
import { readEditions } from './editions.js';
import type { Held } from './keep-state.js';
import { readLogs } from './read-history.js';
import type { ReadStudio } from './read-studio.js';

type Studio = Pick<ReadStudio, 'content' | 'files'>;

/**
 * `content` is the studio's folder, where editions and marks that came back lie beside each client. What of them cannot
 * be read is told, as `edition-unreadable` and `marks-unreadable`: nobody can look for it.
 */
export async function gatherPrivate(
  studio: Studio,
  content: string,
  { access, pairs }: Held,
): Promise<Result<readonly PrivateWord[]>> {
  const problems: Problem[] = [];
  const pages = new Map<ClientId, { readonly text: string; readonly isClient: boolean }>();
  for (const { path, bytes } of studio.files) {
    const id = /^clients\/([^/]+)\//.exec(path)?.[1];
    if (id === undefined || !path.endsWith('.md')) continue;
    const before = pages.get(clientId(id)) ?? { text: '', isClient: false };
    const isClient = path === `clients/${id}/client.md`;
    const text = new TextDecoder().decode(bytes);
    // Under another name, or a folder further down, it is nobody's page and tells of somebody all the same.
    pages.set(clientId(id), {
      text: isClient ? `${text}\n${before.text}` : `${before.text}\n${text}`,
      isClient: isClient || before.isClient,
    });
  }
  for (const client of access.keys()) pages.set(client, { text: pages.get(client)?.text ?? '', isClient: true });
  const studioKeys = pairs.map(({ d }): PrivateWord => ({ kind: 'key', text: d }));
  const words: PrivateWord[] = [{ kind: 'mark', text: PRIVATE_MARK }, ...studioKeys];
  for (const [client, { text, isClient }] of pages) {
    const name = studio.content.clients.find(({ id }) => id === client)?.name;
    const held = access.get(client);
    const lock = held?.lock;
    const { value: logs, problems: unreadMarks } = await readLogs(content, client);
    const { value: editions, problems: unreadEditions } = await readEditions(content, client);
    problems.push(...unreadEditions, ...unreadMarks);
    const ids = [...editions.map(({ edition }) => edition.bookletId), held?.folder];
    const own = privateWordsOf({
      client,
      text,
      ...(name === undefined ? {} : { name }),
      opaque: [...ids, ...logs.map(({ device }) => device)].flatMap((one) => one ?? []),
      keys: [lock?.key, lock?.link, lock?.words].flatMap((one) => one ?? []),
      sent: logs.flatMap(({ events }) => events.flatMap((event) => (event.kind === 'note' ? [event.text] : []))),
    });
    // A folder that is nobody's may be called by any word.
    words.push(...own.filter(({ kind }) => isClient || kind !== 'file-name'));
  }
  return { value: words, problems };
}
