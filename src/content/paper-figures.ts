/** What was counted and held in a set, from a cell of a table from paper and what the plan asked there. */
import type { Item, PlanLoad, PlanSet } from '../model/plan.js';
import { gramsOf } from '../model/quantity.js';
import type { PaperSets } from './read-paper-cells.js';
import { sameName } from './sections.js';

const loadsOf = ({ sets }: Item): readonly PlanLoad[] =>
  sets.flatMap(({ load, otherwise = [], choose = [] }) =>
    [load, ...otherwise.map((one) => one.load), ...choose.map((one) => one.load)].flatMap((one) => (one ? [one] : [])),
  );

/** `8 × 2 × 16 kg` is eight reps with a pair, where a pair is what the plan holds. */
export function withPairs(said: PaperSets, item: Item): PaperSets {
  const pair = `${said.figure?.value ?? 0} × ${said.load ?? ''}`;
  if (said.figure === undefined || said.count === 'all') return said;
  if (!loadsOf(item).some(({ label }) => sameName(label) === sameName(pair))) return said;
  return { ...said, count: 1, figure: { ...said.figure, value: said.count }, load: pair };
}

type Figures = Partial<Record<'reps' | 'seconds' | 'metres', number>> & { readonly load?: PlanLoad };

interface Held {
  /** As planned: what is held where the cell says no load. */
  readonly load: PlanLoad | undefined;
  /** Another exercise was done in the row's place: of that one nothing was planned. */
  readonly other: boolean;
}

/** What was counted and held; the plan's own where a stroke alone says that it was done. `null`: no such load. */
export function figuresOf(
  said: PaperSets,
  set: PlanSet | undefined,
  item: Item,
  { load: held, other }: Held,
): Figures | null {
  if (said.did === 'left out') return {};
  const unplanned = other || said.did === 'easier';
  if (said.figure === undefined) return unplanned || set === undefined ? {} : plannedFigures(set);
  const counts = said.figure.counts === 'as asked' ? item.asked.unit : said.figure.counts;
  const load = said.load === undefined ? (unplanned ? undefined : held) : loadOf(said.load, item);
  return load === null ? null : { [counts]: said.figure.value, ...(load === undefined ? {} : { load }) };
}

function plannedFigures({ reps, seconds, metres, load }: PlanSet): Figures {
  const held = load === undefined ? {} : { load };
  if (reps !== undefined) return { reps, ...held };
  if (seconds !== undefined) return { seconds, ...held };
  return metres === undefined ? held : { metres, ...held };
}

/** The plan's own load of that name, or what one hand or both held as far as the cell says; bands only by the plan's names. */
function loadOf(text: string, item: Item): PlanLoad | null {
  const known = loadsOf(item);
  const own = known.find(({ label }) => sameName(label) === sameName(text));
  if (own !== undefined) return own;
  const [, pair, figure, unit] = /^(2 × )?(\d{1,4}(?:[.,]\d{1,3})?) ?(kg|lb)$/.exec(text) ?? [];
  if (figure === undefined) return null;
  const grams = gramsOf(Number(figure.replace(',', '.')), unit === 'lb' ? 'lb' : 'kg');
  const perHand = known.find(({ mode, grams: held }) => mode === 'per-hand' && held === grams);
  if (perHand !== undefined) return perHand;
  const planned = known.find(({ mode }) => mode !== 'band')?.mode;
  const mode = pair === undefined ? (planned ?? 'total') : 'per-hand';
  return { kg: grams / 1000, grams, mode, pieces: [], label: `${pair ?? ''}${figure.replace(',', '.')} ${unit ?? ''}` };
}
