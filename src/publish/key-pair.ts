/** The studio's pair of keys for marks: the public one travels with every booklet, the private one stays. */
import { exportJWK, generateKeyPair } from 'jose';
import { TO_HOLDER } from './seal-envelope.js';
import type { PrivateKey } from './seal-marks.js';

/** Of the curve P-256, which every browser served has. */
export async function makePair(): Promise<PrivateKey> {
  const { privateKey } = await generateKeyPair(TO_HOLDER.alg, { crv: 'P-256', extractable: true });
  const { x, y, d } = await exportJWK(privateKey);
  if (x === undefined || y === undefined || d === undefined) throw new Error('a private key of P-256 has x, y and d');
  return { crv: 'P-256', x, y, d };
}
