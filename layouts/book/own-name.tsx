/** A name as the author of an exercise gave it, told apart where the booklet speaks another language. */
import { OwnWords } from '../own-words.js';
import type { Book } from './leaves.js';

export const OwnName = ({ book, name }: { readonly book: Pick<Book, 'booklet'>; readonly name: string }) => (
  <OwnWords lang={book.booklet.exerciseLanguage}>{name}</OwnWords>
);
