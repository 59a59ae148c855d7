/** The ordinary booklet with every author's word replaced by one that tries to break out of the page. */
import type { Booklet } from '../../src/model/booklet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { HOSTILE } from './library-fixture.js';

/** Names of fields that hold an author's words. */
const WORDS = [
  'text',
  'name',
  'client',
  'title',
  'studio',
  'coach',
  'programme',
  'needs',
  'otherwise',
  'intro',
  'felt',
];

export const hostileBooklet: Booklet = JSON.parse(JSON.stringify(fixtureBooklet), (key: string, value: unknown) =>
  WORDS.includes(key) && typeof value === 'string' && value !== 'set-up' ? `${value} ${HOSTILE}` : value,
);
