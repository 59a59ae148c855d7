/**
 * What is handed over with a booklet: a message to copy, a slip to cut out, and the days of the sessions for a calendar.
 * Of the client it says the first name and nothing else.
 */
import type { Booklet } from '../model/booklet.js';
import type { Client } from '../model/client.js';
import type { IsoDate } from '../model/day.js';
import type { Edition } from '../model/edition.js';
import { firstNameOf } from '../model/first-name.js';
import type { Studio } from '../model/studio.js';
import type { HandOverMessage, OpenedBy } from '../words/hand-over-words.js';
import { sayFullDate } from '../words/say-date.js';
import { type Speech, speechOf } from '../words/speech.js';

/** How a sealed booklet is opened; the link is whole, with whatever it carries. */
export interface Opening {
  readonly by: OpenedBy;
  readonly link: string;
  /** Absent where the link alone opens. */
  readonly words?: string;
}

export interface HandOverDay {
  /** The session's place in the queue of the block: the same in every edition. */
  readonly occurrence: number;
  readonly date: IsoDate;
  readonly title: string;
  readonly text: string;
}

export interface HandOverCalendar {
  readonly title: string;
  readonly language: string;
  readonly days: readonly HandOverDay[];
}

export interface HandOverSlip {
  readonly title: string;
  readonly howTo: readonly string[];
  readonly codeTitle: string;
  readonly wordsTitle: string;
  readonly words?: string;
}

export interface HandOver {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** Paragraphs between empty lines; the link stands on a line of its own. */
  readonly message: string;
  readonly slip: HandOverSlip;
  readonly link: string;
}

export interface HandOverOf {
  readonly studio: Studio;
  readonly client: Pick<Client, 'name' | 'language'>;
  readonly edition: Edition;
  readonly booklet: Booklet;
}

const speechFor = ({ client }: HandOverOf): Speech => speechOf(client.language);

function telling({ studio, client, edition }: HandOverOf, by: OpenedBy, speech: Speech): HandOverMessage {
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
    message: `${[...handOver.before(told), link, ...handOver.after(told)].join('\n\n')}\n`,
    slip: {
      title: handOver.slip.title,
      howTo: handOver.slip.howTo(told),
      codeTitle: handOver.slip.code,
      wordsTitle: handOver.slip.words,
      ...(words === undefined ? {} : { words }),
    },
    link,
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
