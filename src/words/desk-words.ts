/** Headings and short sentences of the coach's own pages. */
import type { MuscleGroup } from '../model/weekly-sets.js';

export interface DeskWords {
  readonly title: (studio: string) => string;
  readonly privatePages: string;
  readonly back: string;
  readonly clients: string;
  readonly client: string;
  readonly standing: string;
  readonly programme: string;
  readonly starts: string;
  readonly ready: string;
  readonly withheld: string;
  readonly forms: Readonly<
    Record<
      | 'phone'
      | 'paper'
      | 'plain'
      | 'large'
      | `${'fold' | 'fronts' | 'backs'}${'' | '-1' | '-2'}`
      | 'weeks'
      | 'partner'
      | 'partner-phone'
      | 'test-sheet'
      | 'calendar'
      | 'plan'
      | 'draft-phone'
      | 'draft-paper'
      | 'draft-plan',
      string
    >
  >;

  readonly notRead: string;
  readonly handOver: {
    /** Leads to the sheet. */
    readonly link: string;
    readonly title: (name: string) => string;
    readonly message: string;
    readonly messageHow: string;
    readonly code: string;
    readonly codeHow: string;
    readonly slip: string;
    readonly slipHow: Readonly<Record<'link' | 'words' | 'both', string>>;
    readonly calendar: string;
    readonly calendarHow: string;
    /** In the place of link and message. */
    readonly noAddress: string;
    readonly secret: string;
  };
  readonly draft: string;
  readonly edition: (edition: number) => string;
  readonly from: (date: string) => string;
  /** How the latest edition stands; the next one is what a draft would become. */
  readonly editionStands: (n: number, issued: string) => string;
  readonly editionEnded: (n: number) => string;
  readonly editionWithdrawn: (n: number, date: string, why: string) => string;
  /** Stands before the command. */
  readonly draftBeside: (next: number) => string;
  /** Over what the latest edition changed, and over what a draft would. */
  readonly changedBy: (n: number) => string;
  readonly changedSince: string;
  readonly sameWork: string;
  readonly changeFrom: string;
  readonly changeBefore: string;
  readonly changeAfter: string;
  readonly changeWhy: string;
  readonly folderProblems: string;
  readonly glance: string;
  readonly row: string;
  readonly week: (week: number) => string;
  readonly weekHead: string;
  readonly easier: string;
  readonly figures: string;
  readonly sessionMinutes: string;
  readonly atMost: (minutes: number) => string;
  readonly setsOfWork: string;
  readonly askedReserve: string;
  readonly loads: string;
  readonly reasons: string;
  readonly whyNot: string;
  readonly findings: string;
  /** Over what follows from the programme and the rules, folded away. */
  readonly asPlanned: (count: number) => string;
  /** Over what would open each version that is closed, folded away. */
  readonly wouldOpen: string;
  readonly problems: string;
  /** Said where there is nothing to list. */
  readonly none: Readonly<Record<'clients' | 'folder' | 'client' | 'findings', string>>;
  /** Over a set that goes up a step. */
  readonly ifEarned: string;
  readonly or: (dose: string) => string;
  /** Over the figures behind a sentence, folded away. */
  readonly inputs: string;
  readonly setsByMuscle: string;
  readonly setsByMovement: string;
  readonly muscle: string;
  readonly movement: string;
  readonly muscleGroups: Readonly<Record<MuscleGroup, string>>;
  readonly countedHow: string;
  /** Before what to write or do in place of what is wrong. */
  readonly instead: string;
  readonly severity: Readonly<Record<'error' | 'warning' | 'advice', string>>;
}

const englishDesk: DeskWords = {
  title: (studio) => `${studio}: the desk`,
  privatePages: 'These pages name clients. They stay on this machine.',
  back: 'All clients',
  clients: 'Clients',
  client: 'Client',
  standing: 'Standing',
  programme: 'Programme',
  starts: 'Starts',
  ready: 'Ready',
  withheld: 'Withheld',
  forms: {
    phone: 'On the phone',
    paper: 'On paper, page by page',
    plain: 'On paper, full page',
    large: 'On paper, large print',
    fold: 'To fold and staple',
    fronts: 'To fold, fronts alone',
    backs: 'To fold, backs alone',
    'fold-1': 'To fold and staple, first part',
    'fronts-1': 'First part, fronts alone',
    'backs-1': 'First part, backs alone',
    'fold-2': 'To fold and staple, second part',
    'fronts-2': 'Second part, fronts alone',
    'backs-2': 'Second part, backs alone',
    'test-sheet': 'Test sheet for the printer',
    weeks: 'Each week on a sheet',
    partner: 'The partner’s card',
    'partner-phone': 'The partner’s page, on a phone',
    calendar: 'The sessions for a calendar',
    plan: 'The plan as data',
    'draft-phone': 'Draft, on the phone',
    'draft-paper': 'Draft, on paper',
    'draft-plan': 'Draft, as data',
  },
  notRead: 'The file could not be read.',
  handOver: {
    link: 'Hand it over: link, message, slip',
    title: (name) => `Handing over: ${name}`,
    message: 'The message',
    messageHow:
      'Copy it into a message to this client alone. Change it as you like; leave the link as it is, to its last letter.',
    code: 'The code',
    codeHow: 'The link for a camera, to be scanned from this screen. It is on no slip: the words are.',
    slip: 'The slip',
    slipHow: {
      link: 'Print this page and cut along the line. Whoever scans the code can open the booklet.',
      words:
        'Print this page and cut along the line, or say the words on the telephone. Never write them in a message.',
      both: 'Print this page and cut along the line, or say the words on the telephone. Never write them in a message: link and words together open the booklet.',
    },
    calendar: 'The days',
    calendarHow: 'The sessions as whole days, for any calendar; the client can also take them from the booklet itself.',
    noAddress:
      'The studio’s page does not say yet where the library is hosted. Write it as address: in studio.md, then build again: the link, the message and the code follow from it.',
    secret: 'This page opens a client’s booklet. It stays on this machine, and its paper is cut up or burnt.',
  },
  draft: 'Draft',
  edition: (edition) => `Edition ${edition}`,
  from: (date) => `From ${date}`,
  editionStands: (n, issued) => `Edition ${n} stands, issued ${issued}.`,
  editionEnded: (n) => `Edition ${n} has ended, and says so on its first page.`,
  editionWithdrawn: (n, date, why) => `Edition ${n} was withdrawn on ${date}: ${why}`,
  draftBeside: (next) => `What changed since is not in it: see the draft. This makes it edition ${next}:`,
  changedBy: (n) => `What edition ${n} changed`,
  changedSince: 'What the draft would change',
  sameWork: 'The work is the same.',
  changeFrom: 'From',
  changeBefore: 'Before',
  changeAfter: 'Now',
  changeWhy: 'Why',
  folderProblems: 'In the folder',
  glance: 'The plan at a glance',
  row: 'Exercise',
  week: (week) => `Week ${week}`,
  weekHead: 'Week',
  easier: 'easier',
  figures: 'Figures',
  sessionMinutes: 'Minutes a session',
  atMost: (minutes) => `At most ${minutes} asked for.`,
  setsOfWork: 'Sets of work',
  askedReserve: 'Reserve asked',
  loads: 'Loads used',
  reasons: 'Every reason',
  whyNot: 'What stood open, and why not',
  findings: 'Worth knowing',
  asPlanned: (count) => `As the programme and the rules have it (${count})`,
  wouldOpen: 'What would open more exercises',
  problems: 'Problems',
  none: {
    clients: 'No client is in the folder yet.',
    folder: 'Nothing is wrong in the folder.',
    client: 'Nothing wrong was found for this client.',
    findings: 'Nothing beyond the reasons below.',
  },
  ifEarned: 'Only if earned:',
  or: (dose) => `or ${dose}`,
  inputs: 'Figures and source',
  setsByMuscle: 'Working sets a week, by muscle',
  setsByMovement: 'Working sets a week, by movement',
  muscle: 'Muscle',
  movement: 'Movement',
  muscleGroups: {
    legs: 'Legs',
    hips: 'Hips',
    back: 'Back',
    abdomen: 'Abdomen',
    chest: 'Chest',
    shoulders: 'Shoulders',
    arms: 'Arms',
  },
  countedHow:
    'A set counts half for a muscle that only assists, and once for a group. Of work on one side, the side with fewer counts.',
  instead: 'Instead:',
  severity: { error: 'Error', warning: 'Warning', advice: 'Advice' },
};

/** English until another language has them. */
export const sayDeskWords = (_language: string): DeskWords => englishDesk;
