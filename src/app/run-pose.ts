/** `chalkleaf pose`: a large sheet of an exercise's positions, or of every exercise's, for whoever writes their tables. */
import { join, resolve } from 'node:path';
import { nearestOf } from '../content/nearest.js';
import { flickFrames } from '../figures/flick-frames.js';
import { poseSheet } from '../figures/pose-sheet.js';
import type { Exercise } from '../model/exercise.js';
import type { PoseSheet } from '../model/pose-sheet.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Studio } from '../model/studio.js';
import { counted } from '../words/problems/said.js';
import { sayDrawing } from '../words/say-drawing.js';
import { sayProblem } from '../words/say-problem.js';
import { speechOf } from '../words/speech.js';
import { checkFigures } from './check-figures.js';
import { diskFaultCode } from './disk-fault.js';
import { makeFolders } from './make-folders.js';
import type { CommonOptions } from './options.js';
import { progressOn } from './progress.js';
import { notWritable, outInContent } from './publish-build.js';
import { readStudio } from './read-studio.js';
import { printReport } from './report.js';
import { webSources } from './web-sources.js';
import { writeWhole } from './write-whole.js';

const error = { severity: 'error', scope: FOLDER } as const;

function chosen(exercises: readonly Exercise[], wanted: string | undefined): readonly Exercise[] | Problem {
  if (wanted === undefined) return exercises.filter(({ poses }) => poses.length > 0);
  const found = exercises.find(({ id }) => id === wanted);
  if (found === undefined) {
    const nearest = nearestOf(
      wanted,
      exercises.map(({ id }) => id),
    );
    return { code: 'no-such-exercise', ...error, data: { exercise: wanted, nearest } };
  }
  return found.poses.length > 0 ? [found] : { code: 'no-poses', ...error, data: { exercise: wanted } };
}

/** The sheet with what is wrong in each position said on it. */
function sheetOf(exercise: Exercise, problems: readonly Problem[]): PoseSheet | null {
  const sheet = poseSheet(exercise);
  if (sheet === null) return null;
  const positions = sheet.positions.map((position) => ({
    ...position,
    problems: problems
      .filter(({ data }) => 'position' in data && data.position === position.name)
      .map((problem) => sayProblem(problem)),
  }));
  return { ...sheet, positions };
}

/** `exercise` by its id; without one every exercise, with a contact sheet of them. `flick`: a sheet of leaves to cut with each. */
export async function runPose(
  exercise: string | undefined,
  options: CommonOptions & { readonly flick: boolean },
): Promise<number> {
  const progress = progressOn(process.stderr);
  progress.step('Reading …');
  const studio = await readStudio(options);
  const { exercises } = studio.content.library;
  const found = chosen(exercises, exercise);
  const drawn = 'code' in found ? [] : found;
  const files = new Set(drawn.map(({ place }) => place.file));
  // Of the folder only what concerns the pages that are drawn, or that keeps one from being read.
  const problems = studio.problems.filter(
    ({ place, severity }) =>
      place !== undefined && (files.has(place.file) || (severity === 'error' && drawn.length === 0)),
  );
  const told: Problem[] = [...problems, ...('code' in found ? [found] : [])];
  const sheets: PoseSheet[] = [];
  for (const one of drawn) {
    progress.step(`Drawing ${one.id} (${sheets.length + 1} of ${drawn.length}) …`);
    const wrong = checkFigures([one]);
    told.push(...wrong);
    const sheet = sheetOf(one, wrong);
    if (sheet !== null) sheets.push(sheet);
  }
  const shown = drawn.filter(({ id }) => sheets.some((sheet) => sheet.exercise === id));
  const books = options.flick ? await flickBooks(shown, studio.content.library.studio, options.today) : [];
  const written = sheets.length === 0 ? [] : await write(sheets, books, exercise === undefined, options);
  progress.done();
  if ('code' in written) told.push(written);
  const paths = 'code' in written ? [] : written;
  const first = paths[0];
  return printReport(
    {
      problems: told,
      sourceOf: studio.sourceOf,
      summary:
        first === undefined ? ['Nothing was drawn.'] : [`Drawn: ${counted(sheets.length, 'exercise')}. Open ${first}`],
      facts: { command: 'pose', drawn: paths },
    },
    options.json,
  );
}

interface FlickFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Of every exercise that has two positions and more, a sheet to cut and staple. */
async function flickBooks(
  exercises: readonly Exercise[],
  studio: Studio,
  today: string,
): Promise<readonly FlickFile[]> {
  const { drawFlickBook } = await import('../print/draw-flick-book.js');
  const { drawing } = speechOf(studio.language).words;
  const files: FlickFile[] = [];
  for (const exercise of exercises) {
    const leaves = flickFrames(exercise);
    if (leaves.length === 0) continue;
    const alt = sayDrawing(exercise.poses, drawing);
    const book = { exercise: exercise.name, alt, leaves, paper: studio.paper };
    const bytes = await drawFlickBook(book, { author: studio.name, language: studio.language, date: today });
    files.push({ path: `flick-${exercise.id}.pdf`, bytes });
  }
  return files;
}

/** Paths written, the one to open first. Reports `output-in-content`, `output-not-writable`. */
async function write(
  sheets: readonly PoseSheet[],
  books: readonly FlickFile[],
  whole: boolean,
  { out, content }: CommonOptions,
): Promise<readonly string[] | Problem> {
  const inside = await outInContent(out, content);
  if (inside !== undefined) return inside;
  const { renderPoses } = await import('../web/render-poses.js');
  const pages = await renderPoses(sheets, whole, webSources());
  try {
    await makeFolders(resolve(out));
    for (const { path, text } of pages) await writeWhole(join(out, path), text);
    for (const { path, bytes } of books) await writeWhole(join(out, path), bytes);
  } catch (fault) {
    if (diskFaultCode(fault) === undefined) throw fault;
    return notWritable(out, fault);
  }
  return [...pages, ...books].map(({ path }) => join(out, path));
}
