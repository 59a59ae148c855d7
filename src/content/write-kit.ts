/** The one spelling of a kit and of an exercise's load; `read-kit.ts` reads it back to the same. */
import type { KitItem, KitNeed } from '../model/kit.js';
import { LOAD_KEY_NAMES, LOAD_KEYS, THINGS } from './read-kit.js';

/** What stands after each key under `kit:`; keys with nothing are left out. Every mass says its unit. */
export function writeKit(items: readonly KitItem[]): Readonly<Record<string, string>> {
  const lines: Record<string, string> = {};
  for (const key of LOAD_KEY_NAMES) {
    const entries = items.flatMap((item) =>
      'mass' in item && item.kind === LOAD_KEYS[key].kind ? [`${item.mass.figure} ${item.mass.unit}`] : [],
    );
    if (entries.length > 0) lines[key] = countAlike(entries);
  }
  const bands = items.flatMap((item) => (item.kind === 'band' ? [item] : [])).sort((a, b) => a.step - b.step);
  if (bands.length > 0) lines.bands = countAlike(bands.map((band) => band.label));
  const things = THINGS.filter((thing) => items.some((item) => item.kind === thing));
  if (things.length > 0) lines.things = things.join(', ');
  return lines;
}

function countAlike(entries: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const entry of entries) counts.set(entry, (counts.get(entry) ?? 0) + 1);
  return [...counts].map(([entry, count]) => (count === 1 ? entry : `${entry} ×${count}`)).join(', ');
}

/** `two bells (may differ) or bell or nothing`; `none` where there is no load at all. */
export function writeLoadNeed({ load, unloaded }: Pick<KitNeed, 'load' | 'unloaded'>): string {
  if (load.length === 0) return 'none';
  const ways = load.map((need) => {
    if (need.kind === 'bar' || need.kind === 'band' || need.count === 1) return need.kind;
    return `two ${need.kind}s${need.unequal ? ' (may differ)' : ''}`;
  });
  return [...ways, ...(unloaded ? ['nothing'] : [])].join(' or ');
}
