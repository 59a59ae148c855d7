/** What training screens are set from: a sheet, its bar of buttons, nodes of the booklet, and a line read aloud. */
import type { ComponentChildren } from 'preact';
import { OwnWords } from '../own-words.js';
import type { Shown } from './shown.js';

/** Nodes of the page shown again where they are needed, as copies. */
export function Again({ nodes, as: Tag = 'div', name }: AgainProps) {
  const put = (element: Element | null): void => {
    if (element) element.replaceChildren(...nodes.map((node) => node.cloneNode(true)));
  };
  return nodes.length === 0 ? null : <Tag class={name} ref={put} />;
}

interface AgainProps {
  readonly nodes: readonly Node[];
  readonly as?: 'div' | 'ol' | 'ul';
  readonly name?: string;
}

export interface TapProps {
  readonly on: () => void;
  readonly children: ComponentChildren;
  readonly pressed?: boolean;
}

/** One of several answers, or a lesser way on. */
export function Tap({ on, children, pressed }: TapProps) {
  return (
    <button type="button" class="tap" onClick={on} aria-pressed={pressed}>
      {children}
    </button>
  );
}

/** The one filled button of a screen. */
export function Main({ on, children }: TapProps) {
  return (
    <button type="button" class="tap filled" id="training-main" onClick={on}>
      {children}
    </button>
  );
}

/** At any time. */
export const Hurts = ({ shown: { act, speech } }: { readonly shown: Shown }) => (
  <Tap on={() => act({ act: 'something hurts' })}>{speech.words.phone.somethingHurts}</Tap>
);

/** A name or words of an exercise's author, told apart where the screens speak another language. */
export const Own = ({ shown, text }: { readonly shown: Pick<Shown, 'exerciseLanguage'>; readonly text: string }) => (
  <OwnWords lang={shown.exerciseLanguage}>{text}</OwnWords>
);

export interface SheetProps {
  readonly name: string;
  /** Small words above the heading. */
  readonly where?: ComponentChildren;
  /** What stands above the heading is read out elsewhere. */
  readonly whereIsSaid?: true;
  readonly title: ComponentChildren;
  readonly children?: ComponentChildren;
  /** Beneath, always in reach of a thumb. */
  readonly bar?: ComponentChildren;
  /** Answers that stand lowest on the sheet. */
  readonly answers?: ComponentChildren;
  readonly after?: ComponentChildren;
}

export function Sheet({ name, where, whereIsSaid, title, children, bar, answers, after }: SheetProps) {
  return (
    <div class={`training-sheet ${name}`}>
      <div class="training-page">
        <header>
          {where === undefined ? null : (
            <p class="where" aria-hidden={whereIsSaid}>
              {where}
            </p>
          )}
          <h2 tabIndex={-1}>{title}</h2>
        </header>
        {children}
        {answers === undefined ? null : <div class="answers">{answers}</div>}
      </div>
      {bar === undefined ? null : <div class="bar">{bar}</div>}
      {after}
    </div>
  );
}

export const Lines = ({ lines }: { readonly lines: readonly string[] }) => (
  <>
    {lines.map((line) => (
      <p>{line}</p>
    ))}
  </>
);
