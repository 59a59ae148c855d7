/** A load as printed and as read aloud. It always carries its unit, in the author's own unit, and names what makes it. */
import type { LoadText } from '../model/booklet.js';
import type { Plan, PlanLoad } from '../model/plan.js';
import { localFigures } from './say-number.js';
import { unbroken } from './spacing.js';
import type { SpeechWith } from './speech.js';

export type LoadSpeech = SpeechWith<'loads' | 'numbers'>;

export type KitLabels = Plan['inputs']['kit'];

/** The body alone. */
export const NO_LOAD: LoadText = { figure: '', unit: '', pieces: '' };

/** Before what is carried beside one's own body: `+ 8 kg`. */
const ADDED = '+\u00a0';

export const isLoaded = (load: LoadText): boolean => load.figure !== '';

/**
 * Figure and unit apart, from the label the engine gives: `16 kg` → `16` and `kg`, `2 × 16 kg` → `2 × 16` and `kg`.
 * `pieces` names bar or handle and plates; a bell is plain without.
 */
export function sayLoad(load: PlanLoad | undefined, kit: KitLabels, speech: LoadSpeech): LoadText {
  if (load === undefined || load.grams === 0) return NO_LOAD;
  const cut = load.label.lastIndexOf(' ');
  const unit = load.label.slice(cut + 1);
  // A band goes by its name and has no unit.
  const whole = cut < 0 || !/^(kg|lb)$/.test(unit);
  const plain = whole ? load.label : load.label.slice(0, cut);
  const figure = load.mode === 'added' ? `${ADDED}${plain}` : plain;
  return {
    figure: unbroken(localFigures(figure, speech)),
    unit: whole ? '' : unit,
    pieces: sayPieces(load, kit, speech),
  };
}

function sayPieces(load: PlanLoad, kit: KitLabels, speech: LoadSpeech): string {
  const { words } = speech;
  const items = load.pieces.flatMap(({ id }) => kit.find((item) => item.id === id) ?? []);
  const carriers = items.filter(({ kind }) => kind === 'bar' || kind === 'handle');
  const first = carriers[0];
  if (first === undefined) return '';
  const plates = items.filter(({ kind }) => kind === 'plate').sort((a, b) => (b.grams ?? 0) - (a.grams ?? 0));
  const labels = [...new Set(plates.map(({ label }) => label))];
  const rest = labels.map(
    (label) => `${plates.filter((plate) => plate.label === label).length} × ${localFigures(label, speech)}`,
  );
  const named = words.loads.kind[first.kind];
  return words.loads.pieces(carriers.length === 1 ? named : `${carriers.length} × ${named}`, rest.map(unbroken));
}

/** `16 kg`, `16 kg (35 lb)`, on one line; empty for the body alone. */
export function sayLoadText({ figure, unit, other }: LoadText): string {
  const own = unit === '' ? figure : `${figure} ${unit}`;
  return unbroken(other === undefined ? own : `${own} (${other.figure} ${other.unit})`);
}

/** `16 kilograms`, `2 times 16 kilograms`. */
export function sayLoadAloud(load: LoadText, speech: LoadSpeech): string {
  const { words } = speech;
  const { unit, other, ...own } = load;
  if (other !== undefined) {
    const { figure } = other;
    return words.loads.spokenOther(sayLoadAloud({ ...own, unit }, speech), words.loads.spokenUnit[other.unit](figure));
  }
  if (load.figure.startsWith(ADDED))
    return words.loads.spokenAdded(sayLoadAloud({ ...load, figure: load.figure.slice(ADDED.length) }, speech));
  const aloud = (figure: string): string =>
    unit === 'kg' || unit === 'lb' ? words.loads.spokenUnit[unit](figure) : figure;
  const [count = '', figure] = load.figure.split(/\s×\s/);
  return figure === undefined ? aloud(load.figure) : words.loads.spokenPair(count, aloud(figure));
}
