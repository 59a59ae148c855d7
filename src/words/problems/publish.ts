/** Sentences for what is met while the public folder is held against all that is private. */
import type { PublishProblems } from '../../model/problems-publish.js';
import { counted, quoted, type Sayings } from './said.js';

const KINDS: Readonly<Record<PublishProblems['leak-found']['kind'], (text: string) => string>> = {
  name: (text) => `the name of a client, ${quoted(text)}`,
  'file-name': (text) => `what a client’s folder is called, ${quoted(text)}`,
  'e-mail': (text) => `an e-mail address from a client’s page, ${quoted(text)}`,
  phone: (text) => `a telephone number from a client’s page, ${quoted(text)}`,
  opaque: (text) => `what only a client’s own files hold, ${quoted(text)}`,
  note: (text) => `a sentence of your notes on a client, ${quoted(text)}`,
  key: () => 'a key, or words that open a booklet',
  mark: () => 'a page of your own, which is not for others',
};

const REMEDIES: Readonly<Record<PublishProblems['leak-found']['kind'], string>> = {
  name: 'take it out of the library and build again; where it is a word of the library too, write the client’s name in full',
  'file-name':
    'take it out of the library and build again; where it is a word of the library too, rename the client’s folder',
  'e-mail': 'take it out of one of the two pages, and build again',
  phone: 'take it out of one of the two pages, and build again',
  opaque: 'take it out of one of the two pages, and build again',
  note: 'take it out of one of the two pages, and build again',
  key: 'give out another with `chalkleaf key rotate`, then build again',
  mark: 'build again, and put nothing into the public folder by hand',
};

export const publishSayings: Sayings<PublishProblems> = {
  'nothing-to-publish': ({ folder }) => ({
    message: `Nothing was built yet: there is no ${quoted(folder)}.`,
    hint: '`chalkleaf build` first, with the same --content and --out',
  }),
  'leak-found': ({ kind, text, path, inside, others }) => ({
    message: `${quoted(path)} holds ${KINDS[kind](text)}, in ${inside}${
      others === 0 ? '' : `; and so ${others === 1 ? 'does' : 'do'} ${counted(others, 'more file')}`
    }.`,
    hint: REMEDIES[kind],
  }),
  'public-unreadable': ({ path, why }) => ({
    message: `${quoted(path)} stands in the public folder and ${
      {
        link: 'is a link to another place on the disk',
        special: 'is no ordinary file',
        name: 'has a name that no list can carry',
        kind: 'is of a kind that cannot be looked through for clients',
      }[why]
    }.`,
    hint: 'build again, and put nothing into the public folder by hand',
  }),
  'sealed-folder-unknown': ({ folder }) => ({
    message: `The folder ${quoted(folder)} looks like a sealed booklet and is nobody’s: its key was changed or ended since it was built, or is not here.`,
    hint: 'build again; where the keys are in another folder, name it with --state',
  }),
  'sealed-folder-unlike': ({ folder, path, how }) => ({
    message: `The sealed folder ${quoted(folder)} is not as it was built: ${quoted(path)} ${
      { changed: 'was changed', missing: 'is missing', 'not-listed': 'was added' }[how]
    }.`,
    hint: 'build again',
  }),
};
