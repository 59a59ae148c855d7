/** Puts beside each exercise of a week the tally of what is marked of it on this phone. */
import { h, render } from 'preact';
import { WeekTally } from '../../layouts/training/week-tally.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { RowTally } from '../session/training/week-tallies.js';
import type { PhoneSpeech } from '../words/phone-speech.js';
import { sessionLeafId } from './read-leaf.js';

export function showWeek(
  leaf: Element,
  plan: ClientPlan,
  tallies: readonly RowTally[],
  { words }: Pick<PhoneSpeech, 'words'>,
): void {
  const links = [...leaf.querySelectorAll('.turns a')];
  for (const one of tallies) {
    const address = `#${sessionLeafId(plan, one)}--${one.row}`;
    const line = links.find((link) => link.getAttribute('href') === address)?.parentElement;
    if (!line) continue;
    const margin = line.querySelector('div') ?? line.appendChild(document.createElement('div'));
    render(h(WeekTally, { tally: one.tally, words }), margin);
  }
}
