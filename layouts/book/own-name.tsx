/** A name as the author of an exercise gave it, told apart where the booklet speaks another language. */
import type { Book } from './leaves.js';

export const OwnName = ({ book, name }: { readonly book: Pick<Book, 'booklet'>; readonly name: string }) => {
  const { exerciseLanguage } = book.booklet;
  return exerciseLanguage === undefined ? name : <bdi lang={exerciseLanguage}>{name}</bdi>;
};
