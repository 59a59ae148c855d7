/**
 * Reads a booklet back out of a browser, as far as a person could: every exercise on every day with its figures,
 * numbers of sets and sides, cues, easier versions and stop signs. Text that is only heard is read apart from what is seen.
 */
import type { Page } from 'playwright-core';

/** Sets that read the same, as they are shown: one figure, and how many of it. */
export interface ReadSets {
  readonly figure: string;
  /** `3 sets`, `3 sets each side, left first`. */
  readonly counted: string;
  readonly heard: string;
  /** The word above the figure: a warm-up, a feeler set, a try, a step to be earned; empty for plain work. */
  readonly above: string;
}

export interface ReadTurn {
  readonly id: string;
  readonly where: string;
  readonly name: string;
  readonly sets: readonly ReadSets[];
  readonly said: readonly string[];
  readonly cues: readonly string[];
  readonly stop: readonly string[];
  readonly easier: readonly string[];
}

/** One line of a week: where it leads to, what it is called, and its first figures: what is done otherwise has its own beneath. */
export interface ReadLine {
  readonly to: string;
  readonly said: string;
}

export interface ReadBooklet {
  readonly title: string;
  readonly language: string;
  /** Headings of all leaves, in order. */
  readonly heads: readonly string[];
  /** In the order one turns to them, from the cover on. */
  readonly turns: readonly ReadTurn[];
  /** Of all weeks at a glance, in order. */
  readonly lines: readonly ReadLine[];
  /** How many leaves one turns through from the cover to the last, and how many there are. */
  readonly turned: number;
  readonly leaves: number;
  /** All that stands at the openings and ends of sessions, by leaf. */
  readonly around: readonly { readonly id: string; readonly said: string }[];
  readonly plan: string;
  /** Exercises' own pages: what they are called, and what leads their lines and is no link. */
  readonly pages: readonly { readonly id: string; readonly called: string; readonly leads: readonly string[] }[];
}

export function readBookletBack(page: Page): Promise<ReadBooklet> {
  return page.evaluate((): ReadBooklet => {
    const text = (of: Element | null | undefined): string =>
      (of?.textContent ?? '').replaceAll(/[^\S\u00a0]+/g, ' ').trim();
    const texts = (within: Element, selector: string): readonly string[] =>
      [...within.querySelectorAll(selector)].map((one) => text(one));
    const readSets = (turn: Element): readonly ReadSets[] =>
      [...turn.querySelectorAll('.doses .load')].map((load) => {
        const above = load.previousElementSibling;
        let counted = load.nextElementSibling;
        while (counted && !counted.matches('.sets, .load')) counted = counted.nextElementSibling;
        return {
          figure: text(load.querySelector('[aria-hidden]')),
          counted: counted?.matches('.sets') ? text(counted) : '',
          heard: text(load.querySelector('.heard')),
          above: above?.matches('.kind, .trial') ? text(above) : '',
        };
      });
    const readTurn = (turn: Element): ReadTurn => ({
      id: turn.id,
      where: text(turn.querySelector('.where')),
      name: text(turn.querySelector('h2')),
      sets: readSets(turn),
      said: texts(
        turn,
        '.trial, .note, .pieces, .effort, .manner > p:not(.effort), .gate p, caption, .choose td, .why p',
      ),
      cues: texts(turn, '.cues li'),
      stop: texts(turn, '.stop li'),
      easier: texts(turn, '.easier li'),
    });
    const inOrder: Element[] = [];
    for (let leaf = document.querySelector('.leaf'); leaf && !inOrder.includes(leaf); ) {
      inOrder.push(leaf);
      const led = leaf.matches('.session') ? leaf.querySelector('.turns a') : null;
      const next = (leaf.querySelector('footer .on .main') ?? led)?.getAttribute('href');
      // One that stands right below it in the page needs no link to be read on.
      leaf = next == null ? leaf.nextElementSibling : document.getElementById(next.slice(1));
      if (leaf?.matches('.leaf') !== true) leaf = null;
    }
    return {
      title: document.title,
      turned: inOrder.length,
      leaves: document.querySelectorAll('.leaf').length,
      language: document.documentElement.lang,
      heads: texts(document.body, '.leaf > .sheet > header h2, .cover .sheet > h2'),
      around: [...document.querySelectorAll('.leaf.session, .leaf.cool-down')].map((leaf) => ({
        id: leaf.id,
        said: text(leaf),
      })),
      lines: [...document.querySelectorAll('.leaf.week .turns > li > a')].map((line) => ({
        to: line.getAttribute('href') ?? '',
        said: `${text(line.querySelector('.name'))} ${text(line.querySelector('b'))}`,
      })),
      turns: inOrder.filter((leaf) => leaf.matches('.turn')).map(readTurn),
      plan: document.getElementById('plan')?.textContent ?? '',
      pages: [...document.querySelectorAll('.leaf.exercise')].map((leaf) => ({
        id: leaf.id.replace('exercise-', ''),
        called: text(leaf.querySelector('h2')),
        leads: [...leaf.querySelectorAll('section li')]
          .filter((line) => line.querySelector('.lead a[href^="#"]') === null)
          .map((line) => text(line.querySelector('.lead'))),
      })),
    };
  });
}
