/** Where a client's sealed booklet stands on the web, for the code that paper carries. */
import type { Studio } from '../model/studio.js';
import type { WebAddress } from '../print/code.js';
import { writeLink } from '../publish/seal-booklet.js';
import { addressesAt } from '../web/library/addresses.js';
import type { Access } from './keep-state.js';

/** Absent where the studio does not say where it is hosted, or the client has no folder there. */
export function webAddressOf({ address }: Pick<Studio, 'address'>, access: Access | undefined): WebAddress | undefined {
  if (address === undefined || access === undefined) return undefined;
  const open = addressesAt(address)(`${access.folder}/`);
  return { whole: writeLink(open, access.lock.link), open };
}
