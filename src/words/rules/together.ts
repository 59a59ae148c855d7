/**
 * How one matter is told where it concerns several rows, weeks or clients: a sentence that names them, in place of the
 * same sentence over and over. A matter without one is told in its rule's own words, once for each wording.
 */

import { listed } from '../listed.js';
import { clause, type Figure } from '../rule-words.js';
import { sayOpening } from './opening.js';

/** One finding of several. */
export interface Told {
  readonly client: string;
  /** Of the row; empty where it is about none. */
  readonly exercise: string;
  /** `A and C`; empty where it is about the block. */
  readonly sessions: string;
  /** In the rule's own words. */
  readonly says: string;
  /** Empty where it holds whenever it could. */
  readonly weeks: string;
  readonly figure: Figure;
  /** A figure's values, one by one. */
  readonly values: (name: string) => readonly string[];
  /** What the version in the programme was refused for. */
  readonly refused: readonly string[];
}

export interface Together {
  /** What must be alike for two findings to be told together; all of the matter where it is absent. */
  readonly alike?: (figure: Figure) => string;
  readonly says: (told: readonly Told[]) => string;
}

const once = (words: readonly string[]): readonly string[] => [...new Set(words)];
const noted = (what: string, ...notes: readonly string[]): string => {
  const said = notes.filter((note) => note !== '');
  return said.length === 0 ? what : `${what} (${said.join(', ')})`;
};

/** The same thing of several, each with those it is said of. */
function bySaying(told: readonly Told[], saying: (of: Told) => string): ReadonlyMap<string, readonly Told[]> {
  const groups = new Map<string, Told[]>();
  for (const one of told) groups.set(saying(one), [...(groups.get(saying(one)) ?? []), one]);
  return groups;
}

/** `Fewer than 4 sets …: abdomen and shoulders (weeks 1 to 5); back (week 2).` */
const short =
  (least: string, said: (value: string) => string) =>
  (told: readonly Told[]): string => {
    const groups = told.map(({ values, weeks }) => noted(listed(values('group')), weeks));
    return `${said(told[0]?.figure('value') || least)}: ${groups.join('; ')}.`;
  };

const TOGETHER: Readonly<Record<string, Together>> = {
  // Its week is in the sentence.
  'start-moved': { says: (told) => once(told.map(({ says }) => says)).join(' ') },
  'not-asked': {
    says: (told) => {
      const several = new Set(told.map(({ client }) => client)).size > 1;
      const facts = [...bySaying(told, ({ figure }) => figure('not asked'))].map(([of, who]) =>
        several ? `${of} (${listed(once(who.map(({ client }) => client)))})` : of,
      );
      return `Not asked yet: ${facts.join('; ')}. Until you have, breath and words set the effort.`;
    },
  },
  'ladder-start-lightest': {
    says: (told) => {
      const loads = once(told.map(({ figure }) => figure('load')));
      const one = loads.length === 1 ? (loads[0] ?? '') : '';
      const names = told.map(({ exercise, sessions, figure }) =>
        noted(exercise, sessions, one === '' ? figure('load') : ''),
      );
      const begins = told.length === 1 ? 'it begins' : 'each begins';
      return `Nothing is known yet of the ${listed(names)}: ${begins} with the lightest there is${clause(one, (load) => ` (${load})`)}. Please look.`;
    },
  },
  'nothing-climbs': {
    says: (told) =>
      `Nothing climbs over the whole block: ${told
        .map(({ exercise, sessions, figure }) =>
          noted(
            exercise,
            sessions,
            clause(figure('reps'), (n) => `it stays at ${n}`),
          ),
        )
        .join(', ')}.`,
  },
  'version-chosen': {
    says: (told) =>
      `Not as the programme has it: ${told
        .map(({ figure, refused, weeks }) =>
          noted(`${figure('exercise')} for the ${figure('programme')}`, once(refused).join('; '), weeks),
        )
        .join(', ')}.`,
  },
  'row-left-out': {
    says: (told) =>
      `Left out for time: ${told.map(({ exercise, sessions, weeks }) => noted(exercise, sessions, weeks)).join(', ')}.`,
  },
  'minutes-cap': {
    says: (told) =>
      `Cut for time, as the programme lets it be: ${told.map(({ exercise, sessions, figure, weeks }) => noted(exercise, sessions, figure('sets'), weeks)).join(', ')}.`,
  },
  'audit-group-days': {
    says: short('2 days', (least) => `Trained on fewer than ${least} of the week, the least that is advised`),
  },
  'audit-weekly-sets': {
    says: short('4 sets', (least) => `Fewer than ${least} in a work week, the least that is advised`),
  },
  'audit-unknown-muscle': {
    says: (told) => {
      const muscles = once(told.flatMap(({ values }) => values('muscle')));
      const exercises = once(told.flatMap(({ values }) => values('exercise')));
      return `Counted nowhere, since no major group has ${muscles.length === 1 ? 'it' : 'them'}: ${listed(muscles)} (in the ${listed(exercises)}). Write the anatomical name.`;
    },
  },
  'would-unlock': {
    alike: sayOpening,
    says: (told) => {
      const exercises = once(told.map(({ figure }) => figure('exercise')));
      const opens = exercises.length === 1 ? 'Opens' : 'Open';
      return `${opens} ${sayOpening(told[0]?.figure ?? (() => ''))}: ${exercises.join(', ')}.`;
    },
  },
};

/** `undefined` where the rule's own words say it. */
export const togetherOf = (name: string): Together | undefined =>
  Object.hasOwn(TOGETHER, name) ? TOGETHER[name] : undefined;
