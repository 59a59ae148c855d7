/** An author's lines as text on a page. An address becomes a link only where it cannot run anything. */
import type { ComponentChildren } from 'preact';
import type { Line, Run } from '../src/model/prose.js';
import { OwnWords } from './own-words.js';

/** Paths between content files mean nothing on a page of their own; only plain web addresses are kept. */
const isAddress = (link: string): boolean => /^https?:\/\//.test(link);

function Told({ run }: { readonly run: Run }) {
  const told = run.strong ? <strong>{run.text}</strong> : run.emphasis ? <em>{run.text}</em> : run.text;
  return run.link !== undefined && isAddress(run.link) ? (
    <a href={run.link} rel="noreferrer">
      {told}
    </a>
  ) : (
    told
  );
}

export function Words({ line }: { readonly line: Line }) {
  const told: ComponentChildren[] = [];
  for (let at = 0; at < line.length; ) {
    const { lang } = line[at] ?? {};
    const end = line.findIndex((run, i) => i > at && run.lang !== lang);
    const runs = line.slice(at, end < 0 ? line.length : end);
    const words = runs.map((run) => <Told run={run} />);
    told.push(<OwnWords lang={lang}>{words}</OwnWords>);
    at += runs.length;
  }
  return told;
}

/** The same line as a sentence of its own: an author may have gone on in small letters after a colon. */
export function sentence(line: Line): Line {
  const [first, ...rest] = line;
  if (first === undefined) return line;
  return [{ ...first, text: `${first.text.slice(0, 1).toUpperCase()}${first.text.slice(1)}` }, ...rest];
}

export function Paragraphs({ lines }: { readonly lines: readonly Line[] }) {
  return lines.map((line) => (
    <p>
      <Words line={line} />
    </p>
  ));
}

export function Bullets({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <ul>
      {lines.map((line) => (
        <li>
          <Words line={line} />
        </li>
      ))}
    </ul>
  );
}
