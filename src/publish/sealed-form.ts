/**
 * Which part of a text is sealed, by its form alone and wherever it stands: the compact serialization of RFC 7516, five
 * parts in base64url of which the first, in clear, says how the rest was sealed.
 */
const COMPACT = /(?<![\w.-])[\w-]{16,}\.[\w-]*\.[\w-]{16}\.[\w-]{32,}\.[\w-]{22}(?![\w.-])/g;

/** The text with what stands in clear in the place of each envelope. */
export const cutEnvelopes = (text: string): string =>
  text.replace(COMPACT, (envelope) => clearPartOf(envelope) ?? envelope);

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
