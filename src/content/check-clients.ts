/** What a client's file says of dates, of programmes and partners, and of exercises tested. */
import type { Client } from '../model/client.js';
import { addDays, type Day, dayOfDate, isoOfDay } from '../model/day.js';
import { bookletLanguage, primaryLanguage } from '../model/languages.js';
import type { Place } from '../model/place.js';
import { nearestOf } from './nearest.js';
import { type OpenFile, placeOf, placeOfEntry } from './open-file.js';
import { knownPhases } from './phases.js';
import type { ReadClient } from './read-client.js';
import type { FolderCheck, ReadThings } from './read-things.js';

const each =
  (check: (client: Client, file: OpenFile, things: ReadThings) => void) =>
  (things: ReadThings): void => {
    for (const { client, file } of things.clients) if (client) check(client, file, things);
  };

const eachRead =
  (check: (read: ReadClient, things: ReadThings) => void) =>
  (things: ReadThings): void => {
    for (const read of things.clients) check(read, things);
  };

const checkProgramme = each(({ programme }, file, { programmes }) => {
  const ids = programmes.map(({ id }) => id);
  if (ids.includes(programme)) return;
  const data = { id: programme, nearest: nearestOf(programme, ids) };
  file.report.add({ code: 'unknown-programme', data }, placeOf(file, 'programme'));
});

const checkRotation = each((client, file, { programmes }) => {
  const read = programmes.find(({ id }) => id === client.programme);
  const days = new Set(client.days).size;
  if (!read?.programme || !read.wholeBody || read.sessions.length === days) return;
  if (read.programme.rotations.some((rotation) => rotation.days === days)) return;
  const data = { days, sessions: read.sessions.length };
  file.report.add({ code: 'rotation-not-stated', data }, placeOf(file, 'days'));
});

const checkDays = each((client, file) => {
  // Days are kept in the order of training; a day named twice is told of the key.
  const twice = client.days.find((day, index) => client.days.indexOf(day) !== index);
  if (twice === undefined) return;
  const entry = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'][twice - 1] ?? '';
  file.report.add({ code: 'entry-twice', data: { entry } }, placeOf(file, 'days'));
});

const checkMainBells = each(({ mainBells }, file) => {
  const patterns = mainBells.map(({ pattern }) => pattern);
  const twice = patterns.find((pattern, index) => patterns.indexOf(pattern) !== index);
  if (twice !== undefined)
    file.report.add({ code: 'entry-twice', data: { entry: twice } }, placeOf(file, 'main bells'));
});

const checkFilm = each(({ film }, file, { exercises }) => {
  if (film === undefined || exercises.some(({ id }) => id === film.exercise)) return;
  const nearest = nearestOf(
    film.exercise,
    exercises.map(({ id }) => id),
  );
  file.report.add(
    { code: 'unknown-exercise', data: { id: film.exercise, nearest } },
    placeOf(file, 'film', 'exercise'),
  );
});

const checkPartner = each((client, file, { clients }) => {
  const { partner } = client;
  if (partner === undefined) return;
  const ids = clients.map(({ id }) => id);
  const place = placeOf(file, 'partner');
  if (partner === client.id) file.report.add({ code: 'partner-self', data: {} }, place);
  else if (!ids.includes(partner)) {
    const others = ids.filter((id) => id !== client.id);
    file.report.add({ code: 'unknown-client', data: { id: partner, nearest: nearestOf(partner, others) } }, place);
  }
});

/** Each of two who train together is told that they are planned apart: so each page names the other. */
const checkPartners = each((client, file, { clients }) => {
  const other = clients.find(({ id }) => id === client.partner && id !== client.id)?.client;
  if (other === undefined || other.partner === client.id) return;
  const data = { partner: other.id, client: client.id };
  file.report.add({ code: 'partner-one-way', data }, placeOf(file, 'partner'));
});

/** Exercises are content: no catalogue speaks for them. A language that no booklet speaks yet is the planner's to refuse. */
const checkLanguage = each((client, file, { studio }) => {
  const spoken = bookletLanguage(client.language);
  if (studio === undefined || spoken === undefined || spoken === primaryLanguage(studio.language)) return;
  const data = { booklet: client.language, exercises: studio.language };
  file.report.add({ code: 'exercises-other-language', data }, placeOf(file, 'language'));
});

const checkDates = each(({ cautions, clearance, birthYear, starts, breaks, health }, file) => {
  const later = (from: Day, first: string, to: Day | undefined, second: string, place: Place): void => {
    if (to === undefined || to >= from) return;
    const data = { first: `${first} ${isoOfDay(from)}`, second: `${second} ${isoOfDay(to)}` };
    file.report.add({ code: 'dates-out-of-order', data }, place);
  };
  cautions.forEach(({ from, until, review }, index) => {
    later(from, 'from', until, 'until', placeOf(file, 'cautions', index, 'until'));
    later(from, 'from', review, 'review', placeOf(file, 'cautions', index, 'review'));
  });
  if (clearance) later(clearance.date, 'date', clearance.until, 'until', placeOf(file, 'clearance', 'until'));
  breaks.forEach(({ from, until }, index) => {
    later(from, 'from', until, 'until', placeOf(file, 'breaks', index, 'until'));
  });
  const { birth, pregnancy } = health;
  if (birth && pregnancy) {
    const began = addDays(pregnancy.due, -PREGNANCY_DAYS);
    later(birth.date, 'birth', began, 'the beginning of the pregnancy', placeOf(file, 'birth', 'date'));
  }
  if (birth) later(birth.date, 'date', birth.checked, 'checked', placeOf(file, 'birth', 'checked'));
  const born = dayOfDate(birthYear, 1, 1);
  if (born !== undefined) later(born, 'birth', starts, 'starts', placeOf(file, 'birth year'));
});

/** From the first day of the last period to the day a child is due (ACOG Committee Opinion 700, 2017). */
const PREGNANCY_DAYS = 280;
/** Years; an older age is a slip of the pen. */
const OLDEST = 110;

const checkAge = each(({ birthYear, starts }, file) => {
  const year = Number(isoOfDay(starts).slice(0, 4));
  if (year - birthYear <= OLDEST) return;
  const data = { what: 'A birth year', figure: String(birthYear), least: String(year - OLDEST), most: String(year) };
  file.report.add({ code: 'out-of-range', data }, placeOf(file, 'birth year'));
});

const checkCautionPhases = each(({ cautions }, file, things) => {
  const known = knownPhases(things);
  if (!known) return;
  cautions.forEach(({ phases }, caution) => {
    phases.forEach((phase, index) => {
      if (known.includes(phase)) return;
      const data = { phase, known, nearest: nearestOf(phase, known) };
      file.report.add({ code: 'unknown-phase', data }, placeOfEntry(file, ['cautions', caution, 'phases'], index));
    });
  });
});

const checkTests = eachRead(({ tests, file }, { exercises }) => {
  for (const { exercise: id, load, side, place } of tests) {
    const exercise = exercises.find((read) => read.id === id)?.exercise;
    if (!exercise) continue;
    const { kit, sides } = exercise.facts;
    const weighed = kit.load.some(({ kind }) => kind !== 'band');
    const mustSay = weighed && !kit.unloaded && !kit.load.some(({ kind }) => kind === 'band');
    const name = { exercise: exercise.name };
    if (mustSay && !load) file.report.add({ code: 'test-load', data: { ...name, wanted: true } }, place);
    if (!weighed && load) file.report.add({ code: 'test-load', data: { ...name, wanted: false } }, place);
    if (sides === 'each' && side === 'both') {
      file.report.add({ code: 'test-side', data: { ...name, wanted: true } }, place);
    }
    if (sides === 'both' && side !== 'both') {
      file.report.add({ code: 'test-side', data: { ...name, wanted: false } }, place);
    }
  }
});

export const clientChecks: readonly FolderCheck[] = [
  { name: 'the programme is there', codes: ['unknown-programme'], check: checkProgramme },
  { name: 'days and sessions', codes: ['rotation-not-stated'], check: checkRotation },
  { name: 'days once', codes: ['entry-twice'], check: checkDays },
  { name: 'one main bell for a pattern', codes: ['entry-twice'], check: checkMainBells },
  { name: 'partners name each other', codes: ['partner-one-way'], check: checkPartners },
  { name: 'one language', codes: ['exercises-other-language'], check: checkLanguage },
  { name: 'the partner is there', codes: ['unknown-client', 'partner-self'], check: checkPartner },
  { name: 'the exercise to film is there', codes: ['unknown-exercise'], check: checkFilm },
  { name: 'dates in order', codes: ['dates-out-of-order'], check: checkDates },
  { name: 'an age that people reach', codes: ['out-of-range'], check: checkAge },
  { name: 'phases of cautions', codes: ['unknown-phase'], check: checkCautionPhases },
  { name: 'loads and sides of tests', codes: ['test-load', 'test-side'], check: checkTests },
];
