/**
 * What is handed over with a booklet: a message to copy, a slip to cut out, and the days of the sessions for a calendar.
 * Of the client it says the first name and nothing else.
 */
import type { Booklet } from '../model/booklet.js';
import type { Client } from '../model/client.js';
import type { Edition } from '../model/edition.js';
import { firstNameOf } from '../model/first-name.js';
import type { HandOver, HandOverCalendar, HandOverDay, Opening } from '../model/hand-over.js';
import type { SealedBy } from '../model/state.js';
import type { Studio } from '../model/studio.js';
import type { HandOverMessage } from '../words/hand-over-words.js';
import { sayFullDate } from '../words/say-date.js';
import { type Speech, speechOf } from '../words/speech.js';

export interface HandOverOf {
  readonly studio: Studio;
  readonly client: Pick<Client, 'name' | 'language'>;
  readonly edition: Edition;
  readonly booklet: Booklet;
}

const speechFor = ({ client }: HandOverOf): Speech => speechOf(client.language);

function telling({ studio, client, edition }: HandOverOf, by: SealedBy, speech: Speech): HandOverMessage {
  return {
    client: firstNameOf(client.name),
    coach: firstNameOf(studio.coach),
    studio: studio.name,
    edition: edition.n,
    from: sayFullDate(edition.from, speech),
    by,
    emergencyNumber: studio.emergencyNumber,
  };
}

export function composeHandOver(of: HandOverOf, { by, link, words }: Opening): HandOver {
  const speech = speechFor(of);
  const { handOver } = speech.words;
  const told = telling(of, by, speech);
  return {
    language: speech.words.language,
    direction: speech.direction,
    by,
    ...(link === undefined
      ? {}
      : { link, message: `${[...handOver.before(told), link, ...handOver.after(told)].join('\n\n')}\n` }),
    slip: {
      title: handOver.slip.title,
      howTo: handOver.slip.howTo(told),
      codeTitle: handOver.slip.code,
      wordsTitle: handOver.slip.words,
      ...(words === undefined ? {} : { words }),
    },
  };
}

/** Every session of the plan, as the booklet calls it. */
export function composeCalendar(of: HandOverOf): HandOverCalendar {
  const speech = speechFor(of);
  const { calendar } = speech.words.handOver;
  const first = firstNameOf(of.client.name);
  const parts = new Map(
    of.booklet.parts.flatMap((part) => (part.kind === 'session' ? [[part.id, part] as const] : [])),
  );
  const coach = firstNameOf(of.studio.coach);
  const days = of.edition.plan.weeks.flatMap(({ sessions }) =>
    sessions.map((session): HandOverDay => {
      const part = parts.get(session.id);
      return {
        occurrence: session.occurrence,
        date: session.date,
        title: calendar.day(part?.title ?? session.name, first),
        text: calendar.text(part?.minutes ?? '', { coach }).trim(),
      };
    }),
  );
  return { title: calendar.title(of.studio.name, first), language: speech.words.language, days };
}
