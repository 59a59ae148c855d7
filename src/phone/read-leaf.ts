/** What the booklet's own leaves say, for the screens that say it again: nothing is written twice in what travels. */
import type { Movement } from '../../layouts/movement.js';
import type { LeafSays } from '../../layouts/training/shown.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { SessionPlace } from '../model/training.js';

const NOTHING: LeafSays = {
  id: '',
  page: '',
  cues: [],
  stop: [],
  faults: [],
  why: [],
  gate: [],
  choose: [],
  test: [],
  pieces: [],
  led: [],
  picture: [],
};

const byId = (id: string): HTMLElement | null => document.getElementById(id);
const within = (leaf: Element, selector: string): readonly Node[] => [...leaf.querySelectorAll(selector)];
const textOf = (element: Element | null | undefined): string => element?.textContent?.trim() ?? '';

/** The leaf of a session on its day: the second of the same name in a week has a number. */
export function sessionLeafId(
  { weeks }: ClientPlan,
  { session, week, occurrence }: Pick<SessionPlace, 'session' | 'week' | 'occurrence'>,
): string {
  const own = weeks.find(({ number }) => number === week)?.sessions.filter(({ id }) => id === session) ?? [];
  const nth = own.findIndex((one) => one.occurrence === occurrence);
  return `w${week}-${session}${nth > 0 ? `.${nth + 1}` : ''}`;
}

export function readTurn(plan: ClientPlan, place: SessionPlace, row: string, exercise: string): LeafSays {
  const id = `${sessionLeafId(plan, place)}--${row}`;
  const leaf = byId(id);
  const page = byId(`exercise-${exercise}`);
  const says = leaf === null ? NOTHING : { ...NOTHING, id, ...ofTurn(leaf) };
  const own =
    page === null ? says : { ...says, page: page.id, picture: within(page, 'svg.figure'), faults: faultsIn(page) };
  // Of another version than the leaf's own, what is said of that one.
  return page === null || isOf(leaf, exercise) ? own : { ...own, ...ofPage(page) };
}

const isOf = (leaf: HTMLElement | null, exercise: string): boolean =>
  leaf?.querySelector(`footer .ways a[href="#exercise-${CSS.escape(exercise)}"]`) != null;

const ofTurn = (leaf: HTMLElement): Partial<LeafSays> => ({
  cues: within(leaf, '.cues > li'),
  stop: within(leaf, '.stop > ul'),
  why: within(leaf, 'details.why > p'),
  gate: within(leaf, '.gate'),
  choose: within(leaf, 'table.choose'),
  test: within(leaf, '.test .trial'),
  led: within(leaf, '.manner .led'),
  pieces: within(leaf, '.doses:not(.before) > .pieces').slice(0, 1),
});

const ofPage = (page: HTMLElement): Partial<LeafSays> => ({
  cues: within(page, 'ol.cues > li').slice(0, 3),
  stop: within(page, '.stop > ul'),
});

const faultsIn = (page: HTMLElement): readonly Node[] => [
  ...(page.querySelector('section > table.pairs')?.closest('section')?.children ?? []),
];

/** What makes the drawings move, as it came with the booklet; read once. */
export function readMovements(): (exercise: string) => Movement | null {
  const text = byId('movements')?.textContent ?? '';
  const movements: ReadonlyMap<string, Movement> = new Map(text === '' ? [] : Object.entries(JSON.parse(text)));
  const still = matchMedia('(prefers-reduced-motion: reduce)');
  // Browsers of the oldest years served cannot be given styles without breaking the page's policy: there it stands as a row.
  const cannot = !('adoptedStyleSheets' in document);
  return (exercise) => (cannot || still.matches ? null : (movements.get(exercise) ?? null));
}

/** The heading of a leaf; empty where there is none. */
export const headingOf = (id: string): string => textOf(byId(id)?.querySelector('h2'));

export const nameOf = (exercise: string): string =>
  headingOf(`exercise-${exercise}`) || headingIn(exercise) || exercise;

/** An exercise without a page of its own is named by the leaf it stands on. */
const headingIn = (exercise: string): string => {
  const leaf = document.querySelector(`.turn[id$="--${CSS.escape(exercise)}"]`);
  return textOf(leaf?.querySelector('h2'));
};

/** Lines of a warm-up, which stand on the session's leaf, or of a cool-down, which has a leaf of its own. */
export function readAround(plan: ClientPlan, place: SessionPlace, which: 'warm-up' | 'cool-down'): readonly Node[] {
  const id = sessionLeafId(plan, place);
  if (which === 'warm-up') {
    const section = byId(id)?.querySelector('section');
    return section ? [...section.children].filter(({ tagName }) => tagName !== 'H3') : [];
  }
  const sheet = byId(`${id}-cool-down`)?.querySelector('.sheet');
  return sheet ? [...sheet.children].filter(({ tagName }) => tagName !== 'HEADER' && tagName !== 'FOOTER') : [];
}

/** What the cover says a new edition changes. */
export const readChanges = (): readonly Node[] => within(byId('cover') ?? document.body, '.notice > :not(h2)');

/** The language the exercises are written in, where the booklet marks them as of another than its own. */
export const readExerciseLanguage = (): string | undefined =>
  document.querySelector<HTMLElement>('.book .leaf.exercise h2 bdi[lang]')?.lang;

/** The line that says whom to call, and its number alone. */
export function readEmergency(): { readonly call: string; readonly number: string } {
  const line = byId('safety')?.querySelector('.call');
  const call = textOf(line);
  return { call, number: (/\+?\d[\d\s]*/.exec(call)?.[0] ?? '').replaceAll(/\s/g, '') };
}
