/** The script of the library's first page: looks for exercises as one types, and reads the filtering sentence back. */
import { saySearchWords } from '../words/search-words.js';
import { keepSentence } from './keep-sentence.js';
import { showFound } from './show-found.js';

const words = saySearchWords(document.documentElement.lang);
showFound(words, keepSentence(words));

// A page opened from a disk has all its files beside it already.
if (/^https?:$/.test(location.protocol) && 'serviceWorker' in navigator)
  navigator.serviceWorker.register('worker.js').catch(() => undefined);
