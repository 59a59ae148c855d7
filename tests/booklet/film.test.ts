/** A film that the coach asks for stands on the page of its exercise, and nowhere else. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { ExercisePart } from '../../src/model/booklet.js';
import { exerciseId } from '../../src/model/identity.js';
import { plainText } from '../../src/model/prose.js';
import { client, library } from '../fixtures/library.js';
import { plan } from '../fixtures/plan.js';

const film = { exercise: exerciseId('goblet-squat'), from: 'side' } as const;
const pagesFor = (of: typeof client): readonly ExercisePart[] =>
  composeBooklet({ library, client: of, plan }).parts.flatMap((part) => (part.kind === 'exercise' ? [part] : []));
const askedIn = (pages: readonly ExercisePart[]) =>
  pages.flatMap(({ id, sections }) =>
    sections
      .filter(({ name }) => name === 'film')
      .map(({ lines }) => [id, ...lines.map(({ text }) => plainText(text))]),
  );

describe('a film of one set', () => {
  test('is asked for where it is to be made, with where to film from', () => {
    const [asked, ...others] = askedIn(pagesFor({ ...client, film }));
    expect(others).toEqual([]);
    expect(asked?.[0]).toBe('goblet-squat');
    expect(asked?.[1]).toMatch(/asks for a film of one set, from the side\.$/);
    const behind = askedIn(pagesFor({ ...client, film: { ...film, from: 'behind' } }));
    expect(behind[0]?.[1]).toMatch(/from behind\.$/);
    const nb = askedIn(pagesFor({ ...client, language: 'nb', film: { ...film, from: 'front' } }));
    expect(nb[0]?.[1]).toMatch(/ber om en film av ett sett, forfra\.$/);
  });

  test('is nowhere where none is asked for', () => {
    expect(askedIn(pagesFor(client))).toEqual([]);
  });
});
