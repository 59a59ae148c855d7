/** What is worth knowing in a terminal: what each client asks of the coach, a line a matter, and how much more there is. */

import type { Plan } from '../model/plan.js';
import { coachSpeechOf } from './coach-speech.js';
import { apart, type Gathered, gatherFindings, plansBy } from './gather-findings.js';
import { ASKS, OPENS } from './matters.js';
import { counted } from './problems/said.js';
import type { Finding } from './say-findings.js';

/** Lines a client, the last of them apart. What the coach must decide is never left out. */
const MOST_LINES = 12;

/** Lines of plain text under a heading, and an empty line after them; nothing where nothing was found. */
export function sayFindings(findings: readonly Finding[], plans: readonly Plan[]): readonly string[] {
  const speech = coachSpeechOf('en-GB');
  const known = plansBy(plans);
  const { studio, own } = apart(findings);
  const clients = [...new Set(own.map(({ client }) => client))];
  const told = [
    ...linesOf('', gatherFindings(studio, known, speech)),
    ...clients.flatMap((client) =>
      linesOf(
        client,
        gatherFindings(
          own.filter((one) => one.client === client),
          known,
          speech,
        ),
      ),
    ),
  ];
  return told.length === 0 ? [] : [speech.coach.why.findings, ...told, ''];
}

/** Under the client's id; what is about the studio has none. */
function linesOf(client: string, gathered: readonly Gathered[]): readonly string[] {
  const { why } = coachSpeechOf('en-GB').coach;
  const decide = gathered.filter(({ asks }) => asks === 'decide');
  const look = gathered.filter(({ asks }) => asks === 'look');
  const shown = [...decide, ...look.slice(0, Math.max(0, MOST_LINES - decide.length))];
  const left = gathered.filter((one) => !shown.includes(one));
  const lines = ASKS.flatMap((asks) =>
    shown.filter((one) => one.asks === asks).map(({ says }) => `${why.asks[asks]}: ${says}`),
  );
  const more = left.length === 0 ? [] : [sayMore(left)];
  const indent = client === '' ? '  ' : '    ';
  const all = [...lines, ...more].map((line) => `${indent}${line}`);
  return client === '' || all.length === 0 ? all : [`  ${client}`, ...all];
}

/** `On the desk: 9 more, with what would open 31 exercises.` */
function sayMore(left: readonly Gathered[]): string {
  const { why } = coachSpeechOf('en-GB').coach;
  const opened = left.filter(({ matter }) => matter === OPENS).flatMap((one) => one.findings);
  const exercises = new Set(opened.map(({ figure }) => figure('exercise')));
  const more = left.filter(({ matter }) => matter !== OPENS).length;
  const said = [
    ...(more === 0 ? [] : [`${more} more`]),
    ...(exercises.size === 0 ? [] : [`what would open ${counted(exercises.size, 'more exercise')}`]),
  ];
  return `${why.asks.desk}: ${said.join(', and ')}.`;
}
