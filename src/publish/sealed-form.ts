/**
 * Which part of a text is sealed, by its form alone and wherever it stands: the compact serialization of RFC 7516, five
 * parts in base64url of which the first, in clear, says how the rest was sealed.
 */
const COMPACT = /(?<![\w.-])[\w-]{16,}\.[\w-]*\.[\w-]{16}\.[\w-]{32,}\.[\w-]{22}(?![\w.-])/g;

/** Whether a text of this form is one that was sealed here; of any other nobody knows what it holds. */
export type IsOurs = (envelope: string) => boolean;

/** The text with what stands in clear in the place of each envelope of ours. */
export const cutEnvelopes = (text: string, isOurs: IsOurs): string =>
  text.replace(COMPACT, (envelope) => (isOurs(envelope) ? clearPartOf(envelope) : null) ?? envelope);

export const envelopesIn = (text: string): readonly string[] => text.match(COMPACT) ?? [];

/** `null` where it only looks like an envelope. */
function clearPartOf(envelope: string): string | null {
  const head = envelope.slice(0, envelope.indexOf('.')).replaceAll('-', '+').replaceAll('_', '/');
  try {
    const clear = new TextDecoder().decode(Uint8Array.from(atob(head), (sign) => sign.charCodeAt(0)));
    const header: unknown = JSON.parse(clear);
    const isHeader = typeof header === 'object' && header !== null && 'alg' in header && 'enc' in header;
    return isHeader ? clear : null;
  } catch {
    return null;
  }
}
