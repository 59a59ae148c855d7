/** An id as it is written in a file. */
import { isId, slugOf } from '../model/slug.js';
import { good, type Reader, refuse } from './read-value.js';

export const readId: Reader<string> = (text) => {
  const id = text.trim();
  return isId(id) ? good(id) : refuse({ code: 'bad-id', data: { id, suggestion: slugOf(id) } }, text);
};
