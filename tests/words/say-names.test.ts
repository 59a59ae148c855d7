/** How exercises and loads are called beside each other: never two things by one name. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { heldIn } from '../../src/words/say-figures.js';
import { namesAmong } from '../../src/words/say-names.js';
import { namesIn } from '../../src/words/say-plan.js';
import { speechOf } from '../../src/words/speech.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';

const speech = speechOf('en-GB');
const HEADINGS: Readonly<Record<string, string>> = {
  bar: 'Front squat, bar',
  bells: 'Front squat, two bells',
  dead: 'Deadlift',
  'dead-bar': 'Deadlift, bar, from blocks',
  press: 'Floor press, one arm',
  letters: 'YWT raise, sitting',
};
const called = (id: string): string => HEADINGS[id] ?? id;

describe('an exercise inside a sentence', () => {
  test('is short where nothing else goes by that name', () => {
    const name = namesAmong(['bar', 'press', 'letters'], called, speech);
    expect(['bar', 'press', 'letters'].map(name)).toEqual(['front squat', 'floor press', 'YWT raise']);
  });

  test('is told in full beside another of the same short name', () => {
    const name = namesAmong(Object.keys(HEADINGS), called, speech);
    expect(Object.keys(HEADINGS).map(name)).toEqual([
      'front squat (bar)',
      'front squat (two bells)',
      'deadlift',
      'deadlift (bar, from blocks)',
      'floor press',
      'YWT raise',
    ]);
  });

  test('one exercise known by two ids is no other', () => {
    const name = namesAmong(['press', 'former'], (id) => called(id === 'former' ? 'press' : id), speech);
    expect([name('press'), name('former')]).toEqual(['floor press', 'floor press']);
  });
});

test('one mass is one bell in one exercise and a pair in another', () => {
  const { library, client, today } = readCaseFile('aloud/strong', readLibrary());
  const { value: plan } = planBlock({ library, client, today, edition: 0 });
  if (plan === null) expect.fail('no plan');
  const versions = plan.inputs.strands.flatMap((strand) => strand.versions);
  const loads = [
    ...versions.flatMap(({ exercise, loads: own }) => own.map(({ grams, label }) => ({ exercise, grams, label }))),
    ...plan.inputs.ladders.flatMap(({ rungs }) =>
      rungs.flatMap(({ exercise, load }) =>
        load !== null && 'grams' in load ? [{ exercise, grams: load.grams, label: load.label }] : [],
      ),
    ),
  ];
  expect(loads.some(({ label }) => label.includes('×'))).toBe(true);
  expect(loads.some(({ label }) => !label.includes('×'))).toBe(true);
  const names = namesIn(plan);
  for (const { exercise, grams, label } of loads) {
    expect(names.load(grams, exercise).replaceAll('\u00a0', ' ')).toBe(label);
    expect(heldIn(exercise, names).load(grams)).toBe(names.load(grams, exercise));
  }
  for (const { grams, label } of plan.inputs.kit) {
    if (grams !== null) expect(names.load(grams).replaceAll('\u00a0', ' ')).toBe(label);
  }
});
