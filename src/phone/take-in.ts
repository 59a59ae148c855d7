/**
 * Takes the client's part into the page, leaf by leaf: read in one go it would hold up a slow phone for a third of a second.
 * The cover can be read before the rest has come.
 */
import { nextTask, takingTurns } from './give-way.js';
import { showOneByOne } from './show-leaves.js';

/** A document of its own, in which nothing runs. */
export const readApart = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');

/** Nothing a client's part says can end a leaf or begin a drawing: of what is written in it `<` is never written as itself. */
const END_OF_LEAF = '</article>';
const DRAWING = '<div hidden>';

/** The leaves one by one, then what comes after them, drawing by drawing. */
function piecesOf(text: string): readonly string[] {
  const leaves = text.split(END_OF_LEAF);
  const [before = '', ...drawings] = (leaves.pop() ?? '').split(DRAWING);
  return [...leaves.map((leaf) => leaf + END_OF_LEAF), before, ...drawings.map((drawing) => DRAWING + drawing)];
}

/** `undefined` where it is no booklet. `begun` is called once something of it can be read. */
export async function takeIn(text: string, begun: () => void): Promise<HTMLElement | undefined> {
  const [first = '', ...more] = piecesOf(text);
  await nextTask();
  const apart = readApart(first);
  await nextTask();
  const book = apart.querySelector<HTMLElement>('.book');
  const main = document.getElementById('booklet');
  if (!book || !main) return undefined;
  document.adoptNode(book);
  document.title = apart.title;
  document.documentElement.lang = apart.documentElement.lang;
  document.documentElement.dir = apart.documentElement.dir;
  showOneByOne(book);
  await nextTask();
  // Whoever comes for another leaf is not shown the cover on the way.
  if (!namesLeaf(text, location.hash)) {
    book.classList.add('arriving', 'arriving-on');
    main.replaceChildren(book);
    begun();
    afterFrame(() => {
      book.classList.remove('arriving');
      afterFrame(() => book.classList.remove('arriving-on'));
    });
    // Seen before anything else is begun.
    await nextTask();
  }
  const inTurn = takingTurns();
  for (const piece of more) {
    await inTurn();
    add(book, piece);
  }
  await nextTask();
  if (!book.isConnected) {
    // Until the leaf that was come for is the one that is shown.
    book.hidden = true;
    main.replaceChildren(book);
  }
  // Beside what is read stand the plan and what makes the drawings move, as data.
  book.after(...book.querySelectorAll(':scope > script'));
  return book;
}

/** With the next frame but one: the one before it has been drawn as the page stands now. */
const afterFrame = (work: () => void): void => {
  requestAnimationFrame(() => requestAnimationFrame(work));
};

const namesLeaf = (text: string, hash: string): boolean => {
  const id = hash.slice(1);
  return id !== '' && id !== 'cover' && (text.includes(` id=${id}>`) || text.includes(` id="${id}"`));
};

function add(book: HTMLElement, piece: string): void {
  book.insertAdjacentHTML('beforeend', piece);
  const leaf = book.lastElementChild;
  // Put away at once, so that the phone never lays out what nobody looks at.
  if (leaf?.matches('.leaf')) leaf.setAttribute('hidden', 'until-found');
}
