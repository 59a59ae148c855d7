/**
 * The booklet as a tree of parts, made once from the plan; phone and paper draw the same tree. What is said and in which
 * order is decided here; the sentences are the catalogue's and the author's, and where things stand is the drawings'.
 *
 * Nothing private enters: no notes, body mass, screening, diagnosis or coach's reason. Of a caution only the words
 * the coach wrote for the client are shown.
 */
import type { Booklet } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import type { Client } from '../model/client.js';
import type { Plan } from '../model/plan.js';
import type { Library } from '../model/studio.js';
import { sayFullDate } from '../words/say-date.js';
import { type Speech, speechOf } from '../words/speech.js';
import { composeExercise } from './compose-exercise.js';
import {
  composeCalendar,
  composeCover,
  composeHowTo,
  composeRecord,
  composeSafety,
  firstDateOf,
} from './compose-front.js';
import { composePartner } from './compose-partner.js';
import { composeSession } from './compose-session.js';
import { reachExercises } from './reach-exercises.js';
import { stripsOf, subjectOf } from './subject.js';

export interface BookletWanted {
  readonly library: Library;
  readonly client: Client;
  /** Of this client, with the exercises of this library. */
  readonly plan: Plan;
  /** What is otherwise than in the edition before it; absent in a first one. */
  readonly changes?: readonly Change[];
  /** How the client is spoken to; by default in the language of their file. */
  readonly speech?: Speech;
}

export function composeBooklet(wanted: BookletWanted): Booklet {
  const { library, client, plan, changes, speech = speechOf(client.language) } = wanted;
  const subject = subjectOf({ library, client, plan, speech });
  const { words } = speech;
  const partner = composePartner(subject);
  const pages = reachExercises(subject);
  const reachable = new Set<string>(pages.map(({ id }) => id));
  return {
    schema: 1,
    language: speech.language,
    direction: speech.direction,
    ...(subject.foreign === undefined ? {} : { exerciseLanguage: subject.foreign }),
    largePrint: client.largePrint,
    paper: library.studio.paper,
    title: words.booklet.documentTitle(client.name, plan.weeks.length, sayFullDate(firstDateOf(plan), speech)),
    author: library.studio.name,
    date: plan.today,
    labels: words.labels,
    parts: [
      composeCover(subject, changes),
      composeSafety(subject),
      composeHowTo(subject),
      composeCalendar(subject),
      ...stripsOf(plan).map((strip) => composeSession(subject, strip)),
      ...pages.map((exercise) => composeExercise(subject, exercise, reachable)),
      ...(partner === undefined ? [] : [partner]),
      composeRecord(subject),
    ],
  };
}
