/** Sentences for what is wrong with a coach's own picture of an exercise. */
import type { ContentProblems } from '../../model/problems-content.js';
import type { PictureProblems } from '../../model/problems-pictures.js';
import { didYouMean, quoted, type Sayings } from './said.js';

const AS_WRITTEN = '![what is to be seen](goblet-squat.jpg), the file beside this page';

const NOT_TAKEN: Readonly<Record<string, string>> = {
  svg: 'An SVG can carry scripts and ask things of other hosts, and what is hidden in it cannot be taken out for sure.',
  heic: 'Most browsers do not show HEIC.',
  heif: 'Most browsers do not show HEIF.',
  gif: 'A GIF has too few colours for a photograph, and moves when nobody asks it to.',
};

const AWAY = {
  address: 'is an address: nothing is fetched from elsewhere',
  outside: 'leads out of the content folder',
  folder: 'is not beside the exercises',
} as const;

type ReadCodes = Extract<keyof ContentProblems, `picture-${string}`>;

export const pictureSayings: Sayings<Pick<ContentProblems, ReadCodes> & PictureProblems> = {
  'picture-missing': ({ file, nearest }) => ({
    message: `There is no picture ${quoted(file)} beside the exercises.`,
    hint: didYouMean(nearest) || 'the name of a file in exercises, with its capitals and its ending',
  }),
  'picture-undescribed': ({ text }) => ({
    message:
      text === ''
        ? 'Nothing says what is to be seen in this picture.'
        : `${quoted(text)} does not say what is to be seen in this picture.`,
    hint: 'in the square brackets, what somebody who cannot see it needs to know: body, kit and position',
  }),
  'picture-kind': ({ file, ending }) => ({
    message: `${quoted(file)} is not taken. ${NOT_TAKEN[ending] ?? 'Only JPEG, PNG and WebP are.'}`,
    hint: 'the same picture saved as JPEG (a photograph) or PNG (a drawing)',
  }),
  'picture-other-kind': ({ file, is }) => ({
    message:
      is === undefined
        ? `${quoted(file)} is no picture that can be read.`
        : `${quoted(file)} is not what its name says: it is ${is}.`,
    hint: 'the picture opened in a picture program and saved again as JPEG or PNG',
  }),
  'picture-elsewhere': ({ target, why }) => ({
    message: `${quoted(target)} ${AWAY[why]}.`,
    hint: AS_WRITTEN,
  }),
  'picture-twice': () => ({
    message: 'There is a picture of this exercise already.',
    hint: 'one of them',
  }),
  'picture-unused': ({ file }) => ({
    message: `No exercise shows the picture ${quoted(file)}.`,
    hint: `under Poses of its exercise: ![what is to be seen](${file}); or take the file out of the folder`,
  }),
  'picture-unreadable': ({ file }) => ({
    message: `${quoted(file)} cannot be read to its end: the file is damaged or cut off.`,
    hint: 'the picture from the camera once more, or saved again by a picture program',
  }),
  'picture-too-large': ({ file, megapixels, mostMegapixels }) => ({
    message: `${quoted(file)} has ${megapixels} million points; ${mostMegapixels} million are the most.`,
    hint: 'the same picture made smaller: 1280 points across are all that is ever shown',
  }),
};
