/**
 * The command line: words in, a command run, an exit code out. Each command is loaded only when it is asked for,
 * so that `--help` and `check` never pay for drawing.
 */
import { join } from 'node:path';
import { Command, CommanderError } from 'commander';
import { dayOfIso } from '../model/day.js';
import { invariant } from '../model/result.js';
import { SEALED_BY, type SealedBy } from '../model/state.js';
import { type CommonOptions, EXIT } from './options.js';
import type { KeyAct } from './run-key.js';
import { VERSION } from './version.js';

const EXAMPLES = `
Examples
  chalkleaf begin ../my-studio          a first studio of your own, in a new folder
  chalkleaf check                       what is wrong in ./content, and what to write instead
  chalkleaf build                       everything, into ./output
  chalkleaf build --only rowan-ashby    one client drawn anew, the others as they were
  chalkleaf why rowan-ashby --week 4    where every number of week 4 comes from
  chalkleaf issue rowan-ashby           freeze this booklet as its next edition
  chalkleaf withdraw nell-fane --why ill  nobody trains from her edition any more
  chalkleaf receive tuesday.txt         file what a client marked, as a message or from paper
  chalkleaf publish                     look for clients in what was built, then write what to upload
  chalkleaf pose goblet-squat --out look  its positions, large, with angles and what is wrong
  chalkleaf key new                     a key for each client whose booklet is to go online
  chalkleaf review                      whom to speak to this week, and what is proposed

Exit codes
  0   all is well
  1   something in the content needs you; the rest was done
  2   the command line was not understood
  3   nothing could be written where it should stand; the last output still stands
  70  a fault in chalkleaf itself

A booklet is not medical advice, and does not take the place of a doctor, midwife or physiotherapist.`;

function readDay(text: string): string {
  if (dayOfIso(text) === undefined) {
    throw new CommanderError(
      2,
      'chalkleaf.day',
      `error: --today wants a day that exists, as 2027-01-04; “${text}” is not one`,
    );
  }
  return text;
}

/** The weeks of a block are counted from 1. */
function readWeek(text: string): number {
  if (/^[1-9]\d?$/.test(text)) return Number(text);
  throw new CommanderError(2, 'chalkleaf.week', `error: --week wants a week by its number, as 4; “${text}” is not one`);
}

/** Editions are counted from 1. */
function readEdition(text: string): number {
  if (/^[1-9]\d{0,5}$/.test(text)) return Number(text);
  throw new CommanderError(2, 'chalkleaf.edition', `error: an edition goes by its number, as 2; “${text}” is not one`);
}

function readWhy(text: string): string {
  if (text.trim() !== '') return text.trim();
  throw new CommanderError(2, 'chalkleaf.why', 'error: --why wants a few words');
}

function readBy(text: string): SealedBy {
  const by = SEALED_BY.find((one) => one === text);
  if (by !== undefined) return by;
  throw new CommanderError(2, 'chalkleaf.by', `error: --by wants link, words or both; “${text}” is none of them`);
}

/** The one place where the clock is asked: the local calendar day, in the computer's own zone. */
async function localDay(): Promise<string> {
  const { DateTime } = await import('luxon');
  const day = DateTime.local().toISODate();
  invariant(day !== null, 'the computer has a day');
  return day;
}

function withCommon(command: Command): Command {
  return command
    .option('--content <folder>', 'the studio’s folder of Markdown', 'content')
    .option('--out <folder>', 'where the pages and booklets go (else output, beside the content)')
    .option('--state <folder>', 'what is never uploaded: keys, public folder names (else state, beside the content)')
    .option('--today <day>', 'plan as if it were this day, as 2027-01-04 (else the computer’s day)', readDay)
    .option('--only <client>', 'this client alone; what is wrong with others is not told')
    .option('--json', 'print what was found as JSON, for other programs');
}

type Given = Partial<CommonOptions> & Pick<CommonOptions, 'content'>;

async function common(given: Given): Promise<CommonOptions> {
  return {
    content: given.content,
    // Beside it from wherever it is named: of `.` too.
    out: given.out ?? join(given.content, '..', 'output'),
    state: given.state ?? join(given.content, '..', 'state'),
    today: given.today ?? (await localDay()),
    json: given.json === true,
    ...(given.only === undefined ? {} : { only: given.only }),
  };
}

function describeCommands(finish: (code: number) => void): Command {
  const program = new Command('chalkleaf')
    .description(
      'Turns a folder of Markdown (exercises, programmes, clients) into a booklet of two to six weeks for each client, for the phone and on paper, and a library of exercises for the studio.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('--help', 'print this page, or a command’s own')
    .helpCommand(false)
    .addHelpText('after', EXAMPLES)
    .showSuggestionAfterError(true)
    .exitOverride();

  program
    .command('begin')
    .description('make a small first studio of your own, in a new or empty folder')
    .argument('<folder>', 'the new folder')
    .option('--json', 'print what was done as JSON, for other programs')
    .action(async (folder: string, given: { readonly json?: boolean }) => {
      const { runBegin } = await import('./run-begin.js');
      finish(await runBegin(folder, given.json === true));
    });
  withCommon(program.command('build').description('check, plan, draw, and put everything in place at once')).action(
    async (given: Given) => finish(await (await import('./run-build.js')).runBuild(await common(given))),
  );
  withCommon(program.command('check').description('read and plan everything, write nothing, say what is wrong')).action(
    async (given: Given) => finish(await (await import('./run-check.js')).runCheck(await common(given))),
  );
  withCommon(
    program
      .command('why')
      .description('say where a client’s numbers come from')
      .argument('[client]', 'the client’s folder name'),
  )
    .option('--week <n>', 'one week', readWeek)
    .option('--session <id>', 'one session')
    .option('--exercise <id>', 'one exercise')
    .action(async (client: string | undefined, given: Given & WhyGiven) => {
      const { runWhy } = await import('./run-why.js');
      finish(await runWhy(withClient(await common(given), client), given));
    });
  withCommon(
    program
      .command('issue')
      .description('freeze a client’s plan and words as the next numbered edition')
      .argument('[client]', 'the client’s folder name'),
  ).action(async (client: string | undefined, given: Given) => {
    const { runIssue } = await import('./run-issue.js');
    finish(await runIssue(withClient(await common(given), client)));
  });
  withCommon(
    program
      .command('withdraw')
      .description('say of an issued edition that nobody is to train from it any more')
      .argument('<client>', 'the client’s folder name')
      .argument('[n]', 'the edition by its number (else the latest)', readEdition)
      .requiredOption('--why <words>', 'why, for yourself alone; the client is told to ask you', readWhy),
  ).action(async (client: string, n: number | undefined, given: Given & { readonly why: string }) => {
    const { runWithdraw } = await import('./run-withdraw.js');
    const edition = n === undefined ? {} : { n };
    finish(await runWithdraw(withClient(await common(given), client), { why: given.why, ...edition }));
  });
  program
    .command('receive')
    .description('file marks that came back: a client’s message, a log file, or a table typed from a pencilled booklet')
    .argument('[files...]', 'what came back; standard input where none is named')
    .option('--content <folder>', 'the studio’s folder of Markdown', 'content')
    .option('--state <folder>', 'the studio’s keys, which open marks that came sealed (else state, beside the content)')
    .option('--today <day>', 'file as if it were this day, as 2027-01-04 (else the computer’s day)', readDay)
    .option('--json', 'print what was filed as JSON, for other programs')
    .action(async (files: readonly string[], given: Given) => {
      const { runReceive } = await import('./run-receive.js');
      finish(await runReceive(files, await common(given)));
    });
  program
    .command('publish')
    .description('hold what was built against all that is private, then write the folder to upload')
    .option('--content <folder>', 'the studio’s folder of Markdown', 'content')
    .option('--out <folder>', 'where the pages and booklets were built (else output, beside the content)')
    .option('--state <folder>', 'keys and public folder names, which are looked for (else state, beside the content)')
    .option('--json', 'print what was done as JSON, for other programs')
    .option('--to <folder>', 'where the folder to upload is to stand (else upload, in the output folder)')
    .action(async (given: Given & { readonly to?: string }) => {
      const { runPublish } = await import('./run-publish.js');
      finish(await runPublish(await common(given), given.to === undefined ? {} : { to: given.to }));
    });
  program
    .command('pose')
    .description('a large sheet of an exercise’s positions for its author: angles, ranges, balance, what is wrong')
    .argument('[exercise]', 'the name of the exercise’s file, without .md')
    .option('--all', 'every exercise, and a contact sheet of all of them')
    .option('--flick', 'with a sheet of twelve leaves to cut, staple and flick through')
    .option('--content <folder>', 'the studio’s folder of Markdown', 'content')
    .requiredOption('--out <folder>', 'where the sheets go')
    .option('--json', 'print what was drawn as JSON, for other programs')
    .action(
      async (exercise: string | undefined, given: Given & { readonly all?: boolean; readonly flick?: boolean }) => {
        refuseUnlessOne(exercise, given.all);
        const { runPose } = await import('./run-pose.js');
        finish(await runPose(exercise, { ...(await common(given)), flick: given.flick === true }));
      },
    );
  withCommon(
    program
      .command('review')
      .description('go through what came back: what to do first, what was done, what is proposed')
      .argument('[client]', 'the client’s folder name; everybody in order of need where none is named'),
  )
    .option(
      '--apply [rules]',
      'write what is proposed on the client’s page: all of it, or that of rules named, with commas',
    )
    .action(async (client: string | undefined, given: Given & ReviewGiven) => {
      const { runReview } = await import('./run-review.js');
      const { apply } = given;
      const rules = typeof apply === 'string' ? apply.split(',').map((rule) => rule.trim()) : apply;
      const wanted = rules === undefined ? {} : { apply: rules };
      finish(await runReview(withClient(await common(given), client), wanted));
    });
  describeKeys(program, finish);
  for (const command of program.commands) command.helpOption('--help', 'print this page').exitOverride();
  return program;
}

type ByGiven = Given & { readonly by?: SealedBy };

/** What opens booklets and marks; each of these is a command of its own. */
function describeKeys(program: Command, finish: (code: number) => void): void {
  const key = program.command('key').description('what opens the booklets of clients, and marks that come sealed');
  const withBy = (command: Command): Command =>
    withCommon(command.argument('[client]', 'the client’s folder name')).option(
      '--by <what>',
      'what opens the booklet: link, words or both',
      readBy,
    );
  const run = async (options: CommonOptions, act: KeyAct): Promise<void> => {
    const { runKey } = await import('./run-key.js');
    finish(await runKey(options, act));
  };
  withBy(
    key
      .command('new')
      .description('make what is missing: the studio’s key for marks, and a public folder and a key for each client'),
  ).action(async (client: string | undefined, given: ByGiven) =>
    run(withClient(await common(given), client), { act: 'new', by: given.by }),
  );
  withBy(
    key
      .command('rotate')
      .description('another folder and key for a client, so that the old link and words open nothing; or for marks'),
  ).action(async (client: string | undefined, given: ByGiven) =>
    run(withClient(await common(given), client), { act: 'rotate', by: given.by }),
  );
  withCommon(
    key
      .command('end')
      .description('take a client’s public folder and key away for good')
      .argument('<client>', 'the client’s folder name'),
  ).action(async (client: string, given: Given) => run(withClient(await common(given), client), { act: 'end' }));
  for (const act of ['backup', 'restore'] as const) {
    withCommon(
      key
        .command(act)
        .description(
          act === 'backup'
            ? 'all keys in one sealed file, and the words that open it on a sheet to print'
            : 'put a backup’s keys where there are none; its words come on standard input',
        )
        .argument('<file>', 'the backup'),
    ).action(async (file: string, given: Given) => run(await common(given), { act, file }));
  }
  for (const command of key.commands) command.helpOption('--help', 'print this page').exitOverride();
}

interface WhyGiven {
  readonly week?: number;
  readonly session?: string;
  readonly exercise?: string;
}

interface ReviewGiven {
  readonly apply?: true | string;
}

function withClient(options: CommonOptions, client: string | undefined): CommonOptions {
  refuseTwoClients(client, options.only);
  return client === undefined ? options : { ...options, only: client };
}

/** A client named twice over, and not the same one. */
function refuseTwoClients(client: string | undefined, only: string | undefined): void {
  if (client === undefined || only === undefined || client === only) return;
  const message = `error: two clients are named, ${client} and --only ${only}; name one`;
  throw new CommanderError(EXIT.usage, 'chalkleaf.clients', message);
}

/** One exercise, or all of them. */
function refuseUnlessOne(exercise: string | undefined, all: boolean | undefined): void {
  if ((exercise === undefined) !== (all === undefined)) return;
  const message = 'error: pose wants the name of one exercise, or --all';
  throw new CommanderError(EXIT.usage, 'chalkleaf.pose', message);
}

/** Commander reports help and version as errors too: those are the user’s wish, not a mistake. */
const exitOfCommander = (fault: CommanderError): number =>
  ['commander.help', 'commander.helpDisplayed', 'commander.version'].includes(fault.code) && fault.exitCode === 0
    ? EXIT.well
    : EXIT.usage;

/** `words`: what was typed after the program's name. Gives the exit code; throws nothing. */
export async function runCommandLine(words: readonly string[]): Promise<number> {
  let code: number = EXIT.well;
  const program = describeCommands((done) => {
    code = done;
  });
  try {
    await program.parseAsync([...words], { from: 'user' });
    return code;
  } catch (fault) {
    if (fault instanceof CommanderError) {
      if (fault.code.startsWith('chalkleaf.')) process.stderr.write(`${fault.message}\n`);
      return exitOfCommander(fault);
    }
    const what = fault instanceof Error ? (process.env.CHALKLEAF_TRACE === '1' ? fault.stack : fault.message) : fault;
    process.stderr.write(
      `chalkleaf: a fault of its own, not of your files: ${String(what)}\nNothing was changed. Run again with CHALKLEAF_TRACE=1 to see where, and report it with the file you were writing.\n`,
    );
    return EXIT.fault;
  }
}
