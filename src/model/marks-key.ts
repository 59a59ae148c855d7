/** The studio's key for marks as it travels: a point of the curve P-256 (RFC 7518, section 6.2), in base64url. */
export interface PublicKey {
  readonly crv: 'P-256';
  readonly x: string;
  readonly y: string;
}
