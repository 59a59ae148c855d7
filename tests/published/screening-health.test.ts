/**
 * Blood pressure, medicines, bones, falls and age, each limit on both sides.
 *
 * Blood pressure: above 180/110 absolutely, above 160/100 relatively against resistance exercise (Williams et al. 2007,
 * Circulation 116:572-584: from memory). Other tables differ with their purpose: above 200/110 against exercise
 * testing, above 180/110 against starting a session (ACSM guidelines, second-hand).
 * Bones: Giangregorio et al. 2014, Osteoporos Int 25:821-835, table 4 (confirmed, PMC5101068).
 */
import { describe, expect, it } from 'vitest';
import type { Clearance, Client, Health, Medicine } from '../../src/model/client.js';
import { addDays, type Day } from '../../src/model/day.js';
import { PLACE } from '../engine/generate-exercises.js';
import { on } from '../engine/make-block.js';
import { ASKED, derivedIn, FIRST, screen, TODAY, toldTo, withHealth } from '../engine/screen-made.js';

describe('blood pressure at rest', () => {
  const read = (systolic: number, diastolic: number, more: { date?: Day; cuff?: boolean } = {}): Health => ({
    ...ASKED,
    bloodPressure: { systolic, diastolic, date: TODAY, cuff: false, place: PLACE, ...more },
  });
  const cleared = (date: Day, of: 'moderate' | 'vigorous' = 'vigorous'): Partial<Client> => ({
    clearance: { by: 'Dr', date, for: of },
  });

  it.each([
    [180, 110, 'pressure-ask-first'],
    [181, 80, 'pressure-too-high'],
    [130, 111, 'pressure-too-high'],
    [160, 100, undefined],
    [161, 80, 'pressure-ask-first'],
    [130, 101, 'pressure-ask-first'],
    [120, 80, undefined],
  ])('%i/%i: %s', (systolic, diastolic, code) => {
    const { withheld, problems } = screen({ health: read(systolic, diastolic) });
    expect(withheld).toEqual(code === undefined ? [] : [code]);
    expect(problems.filter(({ unsafe }) => unsafe).map((problem) => problem.code)).toEqual(withheld);
  });

  it('above 160/100 a clearance of that day or later opens a moderate plan, above 180/110 none does', () => {
    const high = { health: read(165, 95) };
    expect(screen({ ...high, ...cleared(addDays(TODAY, -1)) }).withheld).toEqual(['pressure-ask-first']);
    const { withheld, standing } = screen({ ...high, ...cleared(TODAY) });
    expect(withheld).toEqual([]);
    expect(standing).toMatchObject({ moderate: true, moderateBecause: ['blood pressure'] });
    expect(screen({ health: read(181, 95), ...cleared(TODAY) }).withheld).toEqual(['pressure-too-high']);
  });

  it('a clearance that a high reading asks for holds for 12 months, and not beyond the day it names', () => {
    const high = { health: read(165, 95, { date: on('2026-01-15') }) };
    const given: Clearance = { by: 'Dr', date: on('2026-02-01'), for: 'vigorous' };
    const ends = screen({ ...high, clearance: given });
    expect(ends.withheld).toEqual([]);
    expect(ends.standing.lastDay).toEqual({ day: on('2027-02-01'), because: 'clearance' });
    expect(screen({ ...high, clearance: { ...given, until: on('2027-01-03') } }).withheld).toEqual([
      'clearance-lapses',
      'pressure-ask-first',
    ]);
  });

  it('a high reading counts however old it is', () => {
    expect(screen({ health: read(170, 90, { date: addDays(FIRST, -300) }) }).withheld).toEqual(['pressure-ask-first']);
  });

  it('a reading is taken again after 90 days (practice); where pressure matters the plan is moderate until it is', () => {
    const known = (date?: Day): Health => ({
      ...(date === undefined ? ASKED : read(130, 80, { date })),
      conditions: ['blood pressure'],
    });
    expect(screen({ health: known() }).standing.moderateBecause).toEqual(['blood pressure']);
    expect(screen({ health: known(addDays(FIRST, -91)) }).standing.moderateBecause).toEqual(['blood pressure']);
    const fresh = screen({ health: known(addDays(FIRST, -90)) });
    expect(fresh.standing.moderate).toBe(false);
    expect(toldTo(fresh, 'coach')).not.toContain('pressure-holds');
    const old = screen({ health: read(120, 80, { date: addDays(FIRST, -91) }) });
    expect(old.standing.moderate).toBe(false);
    expect(toldTo(old, 'coach')).toContain('pressure-holds');
  });

  it('where it matters the breath is never held', () => {
    const breath = 'avoid breath hold';
    expect(derivedIn(screen({ health: { ...read(120, 80), conditions: ['blood pressure'] } }))).toEqual([breath]);
    expect(derivedIn(screen({ health: read(161, 80), ...cleared(TODAY) }))).toEqual([breath]);
    expect(derivedIn(screen({ health: read(160, 100) }))).toEqual([]);
  });

  it('figures only for a client with a cuff', () => {
    const at = (cuff: boolean) => screen({ health: { ...read(130, 80, { cuff }), conditions: ['blood pressure'] } });
    expect(toldTo(at(false), 'client')).toEqual([]);
    expect(toldTo(at(true), 'client')).toEqual(['pressure-at-home']);
  });
});

describe('medicines (practice)', () => {
  const takes = (...medicines: readonly Medicine[]) => withHealth({ medicines });

  it('one that slows the heart, or nobody asked: the talk test, and no pulse', () => {
    expect(takes().standing.talk).toBeNull();
    expect(takes('slows the heart').standing.talk).toBe('phrases');
    expect(toldTo(takes('slows the heart'), 'client')).toEqual(['slows-the-heart']);
    const unasked = screen({ health: { conditions: [], falls: 0 } });
    expect(unasked.standing.talk).toBe('phrases');
    expect(unasked.told.find(({ rule }) => rule === 'not-asked')?.reason.inputs[0]?.value).toBe('medicines');
  });

  it('the others', () => {
    expect(toldTo(takes('lowers blood sugar'), 'client')).toContain('lowers-blood-sugar');
    expect(derivedIn(takes('thins the blood'))).toEqual(['avoid impact', 'take care balance']);
    expect(derivedIn(takes('lowers blood pressure'))).toEqual(['avoid breath hold', 'take care head down']);
    expect(toldTo(takes('other'), 'coach')).toEqual(['other-medicine']);
    expect(toldTo(takes(), 'coach')).toEqual([]);
  });
});

describe('bones', () => {
  it('low bone density: bending and twisting are changed where they are loaded, rapid or at the end of the range', () => {
    const low = withHealth({ conditions: ['low bone density'] });
    expect(derivedIn(low)).toEqual([
      'take care deep bend',
      'take care deep twist',
      'take care lifting from the floor',
      'take care loaded bend',
      'take care loaded twist',
      'take care speed',
    ]);
    expect(low.standing.moderate).toBe(false);
  });

  it('a vertebral fracture: avoided, nothing rapid, nothing from the floor, and moderate only', () => {
    for (const conditions of [['vertebral fracture'], ['low bone density', 'vertebral fracture']] as const) {
      const fracture = withHealth({ conditions });
      expect(derivedIn(fracture)).toEqual([
        'avoid deep bend',
        'avoid deep twist',
        'avoid impact',
        'avoid lifting from the floor',
        'avoid loaded bend',
        'avoid loaded twist',
        'avoid speed',
        'take care floor',
      ]);
      expect(fracture.standing.moderateBecause).toEqual(['vertebral fracture']);
    }
  });
});

describe('falls (practice)', () => {
  it.each([
    [0, [], []],
    [1, ['take care balance'], ['falls-support']],
    [2, ['take care balance'], ['falls-refer', 'falls-support']],
  ])('%i in a year', (falls, cautions, told) => {
    const screened = withHealth({ falls });
    expect(derivedIn(screened)).toEqual(cautions);
    expect(toldTo(screened, 'coach')).toEqual(told);
  });

  it('are asked of who may be 65 by the last day, born 1962 or before', () => {
    const unasked = (birthYear: number) =>
      toldTo(screen({ birthYear, health: { medicines: [], conditions: [] } }), 'coach');
    expect(unasked(1962)).toEqual(['not-asked']);
    expect(unasked(1963)).toEqual([]);
  });
});

describe('age by the birth year alone', () => {
  // On 4 January 2027 somebody born in 2008 is 18 at least; somebody born in 2009 may be 17.
  it.each([
    [2008, []],
    [2009, ['under-age']],
  ])('born in %i', (birthYear, codes) => {
    expect(screen({ birthYear }).withheld).toEqual(codes);
  });
});
