/**
 * Passes marks on: as a file or as words through the phone's own sheet, else copied, else saved as a file. Nothing goes by
 * itself, and nobody knows whether it went: what is passed on is always the whole block so far, of which receiving
 * keeps each mark once, so that the next message makes good what became of the last.
 */
import { writeText } from '../marks/write-text.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { LogEvent } from '../model/log.js';
import type { Moment } from '../model/training.js';
import { saveFile } from './save-file.js';

export interface Sending {
  readonly plan: ClientPlan;
  /** This phone's name in logs. */
  readonly device: string;
  /** All of this booklet and phone. */
  readonly events: readonly LogEvent[];
  /** When marks were last passed on; `null` for never. */
  readonly passedAt: Moment | null;
}

/** One message; empty where there is nothing to pass on, and of a draft, whose marks belong to no booklet. */
export function messageOf({ plan, device, events, passedAt }: Sending): string {
  const { bookletId, starts } = plan;
  // Marks from before this block led to it, and so have come back: but for those never passed on.
  const own = events.filter(({ at }) => at.slice(0, 10) >= starts || passedAt === null || Date.parse(at) > passedAt);
  if (bookletId === undefined || own.length === 0) return '';
  const inOrder = [...own].sort((a, b) => a.seq - b.seq);
  return writeText({ schema: 1, bookletId, device, events: inOrder });
}

/** `today` is the local day. It names nobody. */
export const fileNameOf = (today: string): string => `marks-${today}.txt`;

export type Passed =
  | 'shared'
  | 'copied'
  | 'saved'
  /** The client turned back, or nothing of it could be done. */
  | 'not passed';

const fileOf = (text: string, name: string): File => new File([text], name, { type: 'text/plain' });

/** Asked anew at each tap: what a browser offers depends on where the page stands. */
export function waysOffered(): { readonly share: boolean; readonly copy: boolean } {
  return {
    share: typeof navigator.share === 'function',
    copy: typeof navigator.clipboard?.writeText === 'function' || document.queryCommandSupported?.('copy') === true,
  };
}

/** From within a tap, and before anything is waited for: the sheet opens for nothing else. */
export async function passOn(text: string, name: string): Promise<Passed> {
  const { share } = waysOffered();
  if (!share) return copyText(text);
  const file = fileOf(text, name);
  const asFile = navigator.canShare?.({ files: [file] }) === true;
  try {
    // A long text is cut short by some that it is shared with; a file is not.
    await navigator.share(asFile ? { files: [file] } : { text });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'not passed' : copyText(text);
  }
}

export async function copyText(text: string): Promise<Passed> {
  try {
    await navigator.clipboard.writeText(text);
    return 'copied';
  } catch {
    // Refused, or not there at all: as where a page lies on the phone itself.
    return copyByHand(text) ? 'copied' : 'not passed';
  }
}

/** The older way, through words that are chosen on the page. */
function copyByHand(text: string): boolean {
  const area = document.createElement('textarea');
  const before = document.activeElement;
  area.value = text;
  area.readOnly = true;
  document.body.append(area);
  area.select();
  let copied = false;
  try {
    copied = document.execCommand('copy');
  } catch {
    // Not offered: there is still the file.
  }
  area.remove();
  if (before instanceof HTMLElement) before.focus({ preventScroll: true });
  return copied;
}

/** Into the phone's own downloads. */
export function saveText(text: string, name: string): Passed {
  saveFile(fileOf(text, name));
  return 'saved';
}
