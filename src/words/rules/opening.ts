/** What would open a version, as a coach would say it: `once the caution on balance ends, with a bar at home and your sign-off`. */

import { listed } from '../listed.js';
import { clause, type Figure } from '../rule-words.js';

/** Of a pair: `two bells`; of one: `a bell`. */
function piece(what: string): string {
  const pair = /^2 × (.*)$/.exec(what)?.[1];
  return pair === undefined ? `${/^[aeiou]/.test(what) ? 'an' : 'a'} ${what}` : `two ${pair}s`;
}

/** `a bell or a dumbbell`, `two bells or two dumbbells alike`. */
const pieces = (kit: string): string =>
  `${kit.split(' or ').map(piece).join(' or ')}${kit.includes('2 × ') ? ' alike' : ''}`;

/** Millimetres as metres. */
const metres = (figures: string): string =>
  `${figures.replace(/\d+/g, (n) => String(Number(n) / 1000)).replace(/\smm$/, '')} m`;

/** `shoulder (Maren Oakes)`, one or several. */
function cautions(figures: string): string {
  const what = figures.split(', ');
  return what.length === 1 ? `once the caution on ${figures} ends` : `once the cautions on ${listed(what)} end`;
}

/** What no clearance opens: the end of it, or what must come before. */
export function untilPast(because: string, from: string): string {
  switch (because) {
    case 'pregnancy':
      return 'not in this pregnancy';
    case 'birth':
      return from === '' ? 'not in the first 12 weeks after the birth' : `not before ${from}, 12 weeks after the birth`;
    case 'blood pressure':
      return 'not before a newer and lower reading of the blood pressure';
    case 'vertebral fracture':
      return 'not after a vertebral fracture';
    default:
      return 'not before three months of regular exercise, and a clearance for vigorous effort then';
  }
}

export const sayPast = (figures: string): string =>
  figures
    .split(', ')
    .map((because) => untilPast(because, ''))
    .join('; ');

/** In the order a coach can do something about it; all that is named must come. */
export function sayOpening(f: Figure): string {
  const had = [
    clause(f('unlock: clearance'), () => 'clearance for vigorous effort'),
    clause(f('unlock: thing'), (things) => `${listed(things.split(', ').map(piece))} at home`),
    clause(f('unlock: load'), (kit) => `${pieces(kit)} at home`),
    clause(f('unlock: ceiling'), (height) => `a clear height of ${metres(height)} on file`),
    clause(f('unlock: floor'), (floor) => `a clear floor of ${metres(floor)} on file`),
    clause(f('unlock: sign-off'), signedOff),
    clause(f('unlock: part'), (part) => `its part ${part} in the library`),
  ].filter((part) => part !== '');
  const said = [
    clause(f('unlock: caution'), cautions),
    clause(listed(had), (what) => `with ${what}`),
    clause(f('unlock: test'), () => 'after a test of it'),
    clause(f('unlock: cleared'), () => 'once you write that the pain is cleared'),
  ].filter((part) => part !== '');
  return said.join(', ') || 'when what it was refused for is past';
}

/** How it was told says how far: `passed beyond 16 kg`. */
const signedOff = (how: string): string =>
  `your sign-off${clause(how.replace(/(seen and )?passed ?/g, '').replace(/^, |, $/g, ''), (far) => ` ${far}`)}`;
