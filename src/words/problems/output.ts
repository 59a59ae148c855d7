/** Sentences for what is met while reading from disk, drawing and writing. */

import type { WhyNoEdit } from '../../model/edit.js';
import type { OutputProblems } from '../../model/problems-output.js';
import { counted, didYouMean, quoted, type Sayings } from './said.js';

export const outputSayings: Sayings<OutputProblems> = {
  'content-missing': ({ folder }) => ({
    message: `There is no content folder at ${quoted(folder)}.`,
    hint: 'the folder that holds studio.md, with --content',
  }),
  'file-unreadable': ({ path, why }) => ({
    message: `${quoted(path)} could not be read: ${why}.`,
    hint: 'run again once it is there and yours to read',
  }),
  'file-too-large': ({ path, megabytes, mostMegabytes }) => ({
    message: `${quoted(path)} is ${megabytes} MB; ${mostMegabytes} MB is the most.`,
    hint: path.endsWith('.md')
      ? 'a page of Markdown is a few thousand letters: take out what is not text'
      : 'the same picture made smaller: 1280 points across are all that is ever shown',
  }),
  'too-many-files': ({ most }) => ({
    message: `There are more than ${most} files in the content folder.`,
    hint: 'a folder with nothing in it but the studio’s pages',
  }),
  'folder-too-deep': ({ path, most }) => ({
    message: `${quoted(path)} is more than ${most} folders deep.`,
    hint: 'the folders of the content guide: exercises, programmes, clients',
  }),
  'link-not-followed': ({ path }) => ({
    message: `${quoted(path)} is a link to another place on the disk, and links are not followed.`,
    hint: 'the file itself in its place',
  }),
  'expectation-missed': ({ week, session, row, wanted, planned }) => ({
    message:
      planned === ''
        ? `Week ${week}, session ${session} has no set of ${quoted(row)}; ${quoted(wanted)} is expected.`
        : `Week ${week}, session ${session}, ${quoted(row)}: the plan says ${quoted(planned)}, not ${quoted(wanted)}.`,
    hint: 'look at `chalkleaf why`; then mend what moved the number, or write the number you now expect',
  }),
  'no-such-client': ({ client, nearest }) => ({
    message: `There is no client ${quoted(client)}.`,
    hint: didYouMean(nearest) || 'the name of a client’s folder',
  }),
  'no-such-exercise': ({ exercise, nearest }) => ({
    message: `There is no exercise ${quoted(exercise)}.`,
    hint: didYouMean(nearest) || 'the name of an exercise’s file, without .md',
  }),
  'no-poses': ({ exercise }) => ({
    message: `${quoted(exercise)} has no table of poses, and so no drawing.`,
    hint: 'a section Poses on its page, with a row for each position',
  }),
  'output-not-writable': ({ folder, why }) => ({
    message: `${quoted(folder)} cannot be written: ${why}. The last output stands.`,
    hint: 'another folder, with --out',
  }),
  'output-in-content': ({ folder }) => ({
    message: `The output ${quoted(folder)} and the content would lie inside one another.`,
    hint: 'a folder beside the content, with --out',
  }),
  'output-occupied': ({ path }) => ({
    message: `${quoted(path)} is something of your own, and the output would stand there.`,
    hint: 'move it, or choose another folder with --out',
  }),
  'edition-unreadable': ({ path, why }) => ({
    message: `The issued edition ${quoted(path)} is not as it was written: ${why}.`,
    hint: 'put it back from a copy; an issued edition is never changed',
  }),
  'no-such-edition': ({ client, edition, last }) => ({
    message: last === 0 ? `Nothing was issued to ${quoted(client)}.` : `${quoted(client)} has no edition ${edition}.`,
    hint: last === 0 ? '`chalkleaf issue` freezes a first edition' : `a number from 1 to ${last}`,
  }),
  'marks-unreadable': ({ path, why }) => ({
    message: `The marks on file in ${quoted(path)} are not as they were filed: ${why}. What was done is not known, and nothing is planned.`,
    hint: 'put the file back from a copy; or take it away, and receive the marks again',
  }),
  'mark-unknown': ({ edition, what }) => ({
    message:
      what === 'edition'
        ? `A mark was made in edition ${edition}, which was never issued. It counts for nothing.`
        : `A mark is of ${quoted(what)}, which edition ${edition} does not have. It counts for nothing.`,
    hint: 'the editions and the log of one and the same client; nothing where all of them are here',
  }),
  'edit-not-possible': ({ why, about }) => ({
    message: `Nothing was changed: ${NO_EDIT[why](quoted(about))}.`,
    hint: why === 'page-unreadable' ? 'mend the page first; `chalkleaf check` says where' : 'make this change by hand',
  }),
  'page-changed': ({ path }) => ({
    message: `${quoted(path)} was changed meanwhile. Nothing was written over it.`,
    hint: 'run again, and it starts from the page as it is now',
  }),
  'page-not-writable': ({ path, why }) => ({
    message: `${quoted(path)} could not be written: ${why}. It is as it was.`,
    hint: 'run again once it is yours to write and the disk has room',
  }),
  'edition-not-writable': ({ folder, why }) => ({
    message: `No edition can be written to ${quoted(folder)}: ${why}.`,
    hint: 'issue again once the folder can be written',
  }),
  'nothing-there': ({ week, session, exercise }) => ({
    message: `The plan has no such place:${[week && ` week ${week}`, session && ` session ${session}`, exercise && ` ${exercise}`].filter(Boolean).join(',')}.`,
    hint: 'a week of the block by its number, a session by its letter, an exercise by its name',
  }),
  'begin-not-empty': ({ folder, found }) => ({
    message: `${quoted(folder)} is not empty: ${quoted(found)} stands in it. A first studio is begun only where nothing is written over.`,
    hint: 'a folder that is empty, or not there yet',
  }),
  'begin-not-writable': ({ folder, why }) => ({
    message: `Nothing could be written in ${quoted(folder)}: ${why}.`,
    hint: 'a folder of your own, on a disk with room',
  }),
  'issue-whom': ({ clients }) => ({
    message: 'Issuing freezes the booklet of one client at a time, and none is named.',
    hint: `one of: ${clients}`,
  }),
  'state-not-writable': ({ folder, why }) => ({
    message: `The state in ${quoted(folder)} cannot be written: ${why}.`,
    hint: 'another folder, with --state',
  }),
  'state-unreadable': ({ folder, why }) => ({
    message: `The keys in ${quoted(folder)} cannot be read: ${why}.`,
    hint: 'put them back from a backup, in a new folder named with --state: `chalkleaf key restore`',
  }),
  'folder-misplaced': ({ what, folder, within }) => ({
    message: `${what === 'state' ? 'Keys' : 'What is uploaded'} would stand in ${quoted(folder)}, ${
      {
        content: 'among your pages',
        output: 'in the output, where the next build takes it away',
        state: 'among the keys',
      }[within]
    }.`,
    hint: what === 'state' ? 'a folder beside the content, with --state' : 'a folder of its own, with --to',
  }),
  'state-occupied': ({ folder }) => ({
    message: `${quoted(folder)} holds keys already. A backup is put back only where there are none.`,
    hint: 'a folder that is not there yet, with --state',
  }),
  'no-key': ({ client }) => ({
    message: `${quoted(client)} has no public folder and no key: the booklet is on this computer alone.`,
    hint: '`chalkleaf key new` makes both; where keys were lost, put them back from a backup first',
  }),
  'backup-not-writable': ({ path, why }) => ({
    message: `No backup could be written to ${quoted(path)}: ${why}.`,
    hint: 'a new file name, on a disk with room; a file that stands there is not written over',
  }),
  'backup-not-opened': ({ path, why }) => ({
    message: `The backup ${quoted(path)} ${NOT_OPENED[why]}. Nothing was put back.`,
    hint:
      why === 'wrong words'
        ? 'the words on the sheet that was printed with it, on standard input: `chalkleaf key restore FILE < words.txt`'
        : 'another copy of the same backup',
  }),
  'not-printable': ({ why, characters, where }) =>
    why === 'direction'
      ? {
          message: 'A booklet written from right to left cannot be set on paper yet.',
          hint: 'hand over the web booklet; it reads from right to left',
        }
      : {
          message: `The typefaces on paper lack ${characters.map(quoted).join(', ')}, in ${quoted(where)}.`,
          hint: 'the same in Latin, Greek, Cyrillic or Vietnamese letters; what was issued with them is mended by the next edition. Until then nothing of it is printed, and the web booklet shows every letter',
        },
  'too-many-pages': ({ pages, most, drawn }) =>
    drawn
      ? {
          message: `The booklet comes to ${counted(pages, 'page')}: too thick to fold in one (${most} fold).`,
          hint: 'staple it in two parts, or make it shorter: fewer exercises, or shorter words',
        }
      : {
          message: `The booklet comes to ${counted(pages, 'page')}, too many to carry; it is not drawn on paper.`,
          hint: 'hand over the web booklet; for paper, fewer exercises or shorter words',
        },
};

const NOT_OPENED = {
  unreadable: 'cannot be read',
  'wrong words': 'is not opened by these words',
  damaged: 'is not whole, or is no backup of this program',
  newer: 'was written by a newer Chalkleaf than this one',
  older: 'was written by an older Chalkleaf, and this one cannot read it any more',
} as const;

const NO_EDIT: Readonly<Record<WhyNoEdit, (about: string) => string>> = {
  'page-unreadable': () => 'the facts at the top of the page cannot be read',
  'not-one-line': (about) => `what is to stand at ${about} is not one line of words`,
  'other-shape': (about) => `${about} is written in another shape than this change needs`,
  'no-such-entry': (about) => `there is no such entry: ${about}`,
  'no-such-row': (about) => `there is no such row under ${about}`,
  'says-otherwise': (about) => `what stands there says something else: ${about}`,
  'no-column': (about) => `the table has no column ${about}`,
  form: (about) => `${about} is written in a form that cannot be changed alone`,
  'not-exact': (about) => `changing ${about} would change something else as well`,
  'would-be-wrong': (about) => `the page would then be wrong (${about})`,
};
