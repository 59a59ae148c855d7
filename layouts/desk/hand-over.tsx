/** What is handed over with one client's booklet: the message to copy, the days, and a slip to cut out. For the coach alone. */
import { firstNameOf } from '../../src/model/first-name.js';
import type { HandOver, HandOverCode } from '../../src/model/hand-over.js';
import { StudioPage } from '../studio-page.js';
import type { Desk } from './desk.js';

export interface HandOverSheet {
  readonly id: string;
  readonly name: string;
  readonly handOver: HandOver;
  /** Of the link; absent where there is none. */
  readonly code?: HandOverCode;
  /** The calendar file, from the desk's own folder. */
  readonly calendar: string;
}

/** Millimetres of a module: the least that older cameras read from paper is 0.6 (common practice, no source). */
const MODULE_MM = 0.7;

function Code({ code, says }: { readonly code: HandOverCode; readonly says: string }) {
  const side = `${code.size * MODULE_MM}mm`;
  return (
    <svg
      role="img"
      aria-label={says}
      class="code"
      viewBox={`0 0 ${code.size} ${code.size}`}
      width={side}
      height={side}
      shape-rendering="crispEdges"
    >
      <rect width={code.size} height={code.size} fill="#fff" />
      <path d={code.path} fill="#000" />
    </svg>
  );
}

/** Where link and words are both needed they never stand on one slip. */
function Slip({ sheet: { handOver, code, name } }: { readonly sheet: HandOverSheet }) {
  const { slip, language, direction } = handOver;
  return (
    <div class="slip" lang={language} dir={direction}>
      <h3>{slip.title}</h3>
      <p class="soft">{firstNameOf(name)}</p>
      {slip.howTo.map((line) => (
        <p>{line}</p>
      ))}
      {slip.words === undefined ? null : (
        <>
          <p class="soft">{slip.wordsTitle}</p>
          <p class="given-words" lang="en" dir="ltr">
            {slip.words}
          </p>
        </>
      )}
      {code === undefined || handOver.by === 'both' ? null : (
        <>
          <p class="soft">{slip.codeTitle}</p>
          <Code code={code} says={slip.codeTitle} />
        </>
      )}
    </div>
  );
}

/** Letters in a line of the message: fewer than there is room for on a desk, so that all of it is seen. */
const A_LINE = 48;

const rowsOf = (message: string): number =>
  message.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / A_LINE)), 0);

export function HandOverPage({ desk, sheet }: { readonly desk: Desk; readonly sheet: HandOverSheet }) {
  const { words } = desk;
  const { handOver } = sheet;
  return (
    <div class="desk">
      <StudioPage
        title={words.handOver.title(sheet.name)}
        home={{ href: `../clients/${encodeURIComponent(sheet.id)}.html`, text: sheet.name }}
        foot={<p>{words.handOver.secret}</p>}
      >
        {handOver.message === undefined ? (
          <p>{words.handOver.noAddress}</p>
        ) : (
          <section class="not-on-paper">
            <h2 id="message">{words.handOver.message}</h2>
            <p class="note">{words.handOver.messageHow}</p>
            <textarea
              class="to-copy"
              readonly
              rows={rowsOf(handOver.message)}
              lang={handOver.language}
              dir={handOver.direction}
              aria-labelledby="message"
            >
              {handOver.message}
            </textarea>
          </section>
        )}
        {handOver.by === 'both' && sheet.code !== undefined ? (
          <section class="not-on-paper">
            <h2>{words.handOver.code}</h2>
            <p class="note">{words.handOver.codeHow}</p>
            <Code code={sheet.code} says={words.handOver.code} />
          </section>
        ) : null}
        <section class="not-on-paper">
          <h2>{words.handOver.calendar}</h2>
          <p class="note">{words.handOver.calendarHow}</p>
          <p>
            <a href={`../${sheet.calendar}`}>{words.forms.calendar}</a>
          </p>
        </section>
        {handOver.link === undefined && handOver.slip.words === undefined ? null : (
          <section>
            <h2>{words.handOver.slip}</h2>
            <p class="note">{words.handOver.slipHow[handOver.by]}</p>
            <Slip sheet={sheet} />
          </section>
        )}
      </StudioPage>
    </div>
  );
}
