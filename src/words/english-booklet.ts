/** English for the fixed prose of a booklet. Safety sentences here are the product's own and are not to be softened. */

import type { BookletWords, Shows, WhoIsWho } from './booklet-words.js';
import { englishSets } from './english-sets.js';
import { listed } from './listed.js';
import { sessionLetter } from './session-letter.js';
import { NO_BREAK, unbroken } from './spacing.js';

const notMedical = (who: WhoIsWho): string =>
  `This booklet is not medical advice and does not take its place. ${who.coach} wrote it for ${who.client} alone, from what was known on ${who.date}. If your health or your treatment changes, or you are not sure, ask your doctor, midwife or physiotherapist before you train. What they tell you comes before anything printed here.`;

const dosesByWeek = (doses: readonly { readonly weeks: string; readonly dose: string }[]): string =>
  doses.map(({ weeks, dose }) => (weeks === '' ? dose : `${dose} in ${weeks}`)).join('; ');

/** Where a bell changes hands: on the floor, or on what it was lifted from. */
const bells: Readonly<Record<Shows['bells'], readonly string[]>> = {
  '': [],
  floor: ['Bells go by the floor, never from hand to hand. If a bell slips, let it go and step away.'],
  raised: [
    'Put a bell down before the other hand takes it; never pass it over. If a bell slips, let it go and step away.',
  ],
};

const FILMED = { front: 'from the front', side: 'from the side', behind: 'from behind' } as const;

export const englishBooklet: BookletWords = {
  title: 'Your booklet',
  documentTitle: (client, weeks, from) => `${client}: ${weeks} weeks from ${from}`,
  edition: (edition) => (edition === 0 ? 'Draft, not issued' : `Edition${NO_BREAK}${edition}`),
  studioAt: (studio, place) => (place === '' ? studio : `${studio}, ${place}`),
  notMedical,
  sessionSafety: (who) =>
    `Not medical advice. Pain of 4 or more: leave it, tell ${who.coach}. Emergency signs: stop, call ${who.emergencyNumber}.`,

  howToTitle: 'How to use this booklet',
  howTo: (shows) => [
    'Do the sessions in order. Missed one? Do it next. Never two in one day.',
    'Find your week in the session, then work down.',
    ...(shows.example === ''
      ? []
      : [
          `${shows.example} is one set: the load, then ${shows.exampleReps} reps. Under it stands one mark for each set.`,
        ]),
    'Leave 2 in reserve means: stop while 2 more good reps are left. Good means just like the first. Fewer than planned is fine; a rep you have to grind out is not.',
    ...(shows.sides ? ['One side at a time? Do the side named first, then give the other side the same.'] : []),
    ...(shows.feelers
      ? ['A feeler set finds your load. Do it, note how many more good ones were left, and read off the line.']
      : []),
    ...(shows.trials
      ? ['A try is one set of what may come next. If it does not look like the others, stop there.']
      : []),
    ...(shows.tests
      ? ['A test shows where you stand today. Stop where it says, and write the number on its line. One is enough.']
      : []),
    ...(shows.talk
      ? ['Say a sentence out loud while you work. If the words do not come as it says, slow down until they do.']
      : []),
    ...(shows.signals
      ? ['Where a set starts every minute, let a clock run. Not ready at the signal? Leave that set out.']
      : []),
    ...(shows.gates
      ? ['Where a step up says First, do what it says before you take it. If not, do the Otherwise line.']
      : []),
    'Not right today? Take the easier way under the exercise. It counts just the same.',
    ...(shows.short ? ['A bad day? Do what it says at the top of the session for one, and no more.'] : []),
    'After each set, make one stroke. Phone flat? A pencil here counts just the same.',
  ],
  key: [
    { mark: 'to do', text: 'Foot = to do.' },
    { mark: 'done', text: 'Stroke = done.' },
    { mark: 'easier', text: 'e = done, easier.' },
    { mark: 'left out', text: 'Empty = left out.' },
    { mark: 'extra', text: '+ = extra.' },
  ],

  safetyTitle: 'Before anything else',
  emergencyTitle: 'Stop at once and call for help',
  emergency: [
    'Pain, pressure or tightness in your chest, jaw or arm.',
    'You faint, or are about to.',
    'A sudden, severe headache.',
    'Weakness on one side of your face or body, or you cannot speak clearly.',
    'New numbness, or you lose control of your bladder or bowel.',
    'Breathlessness far beyond what the work explains.',
    'A swollen, painful calf: ring a doctor or your local health line the same day. Breathless, or chest pain with it? Call at once.',
  ],
  call: (number) => `Call ${number}. Do not train on. Do not wait to see whether it passes.`,
  painTitle: 'Pain, from 0 (none) to 10 (the worst you can think of)',
  pain: (who) => [
    { degree: '0 to 2', text: 'Carry on, gently.' },
    { degree: '3', text: 'Take the easier way.' },
    { degree: '4 and over', text: `Leave this exercise out, and tell ${who.coach}.` },
    { degree: 'Worse next morning', text: `Step back: the easier way next time. Tell ${who.coach}.` },
  ],
  safety: (who, shows) => [
    'This booklet is not medical advice: the front page says so in full.',
    `Your physiotherapist or doctor gave you other limits for pain? Theirs hold. Tell ${who.coach}.`,
    `Ask first, before you begin or go on, if you are ill, have been in hospital, are or may be pregnant, or have new symptoms. Do not train with a fever.`,
    `This booklet was made for ${who.client}. Nobody else should train from it.`,
    `Clear the floor. Wear shoes that grip, or bare feet. Water within reach, and a phone.`,
    `Keep breathing. Never hold your breath to force a rep.`,
    ...(shows.plates ? ['Plates on a handle or bar? Try every collar before each set. Nothing may slide.'] : []),
    ...(shows.bands
      ? ['Bands: look them over for cracks before each session, and keep your face out of their line.']
      : []),
    ...bells[shows.bells],
    `A partner watches, counts and speaks. No hands-on help.`,
    `Where local rules say who may give exercise to whom, those rules hold.`,
  ],
  forYouLead: 'For you',
  onlyLike: (way) => `Only like this: ${way}. Where this page says otherwise, that holds.`,
  forYou: (words) => `For you: ${words}`,

  calendarTitle: (weeks) => `Your ${weeks} weeks`,
  weekLabel: (week) => `Week${NO_BREAK}${week}`,

  sessionTitle: (id, name) => {
    const letter = `Session${NO_BREAK}${sessionLetter(id)}`;
    return name === '' || name.toLowerCase() === id.toLowerCase() ? letter : `${letter}: ${name}`;
  },
  again: (title) => `${title}, again`,
  minutes: (least, most) =>
    least === most ? `About ${unbroken(`${least} minutes`)}.` : `About ${least} to ${unbroken(`${most} minutes`)}.`,
  warmUp: (minutes, names) => [
    `${minutes === 0 ? '' : `${unbroken(`${minutes} minutes`)}. `}Walk or march until you are warm and your breath is a little quicker.`,
    ...(names.length === 0 ? [] : [`Then 6 slow ones of each, no load and only part of the way: ${listed(names)}.`]),
  ],
  inOrder: (minutes, walk, through) => {
    const said = through.map(({ weeks, rounds }) => {
      const times = rounds === 1 ? 'once' : rounds === 2 ? 'twice' : `${rounds} times`;
      return weeks === '' ? times : `${times} in ${weeks}`;
    });
    const order = `in this order${said.length === 0 ? '' : `, ${said.join(', ')}`}`;
    return `About ${unbroken(`${minutes} minutes`)}. ${walk ? `Walk or march until your breath is a little quicker, then ${order}:` : `${order.slice(0, 1).toUpperCase()}${order.slice(1)}:`}`;
  },
  drill: dosesByWeek,
  warmUpSet: (name, doses) => `Before the ${name}, one lighter set: ${dosesByWeek(doses)}.`,
  coolDown: (minutes) => [
    `${unbroken(`${minutes} minutes`)}. Walk slowly until your breath is quiet, then let your arms and legs hang loose.`,
  ],
  shortVersion: (minutes, warmUp, sets) => {
    const counted = sets.map(
      ({ name, sets: many, sides }) =>
        `${many}${NO_BREAK}${many === 1 ? 'set' : 'sets'} of the ${name}${sides ? ' on each side' : ''}`,
    );
    return `${warmUp ? 'A short warm-up, then ' : ''}${listed(counted)}. About ${unbroken(`${minutes} minutes`)}. That counts.`;
  },
  noSessions: 'No sessions.',
  inWeeks: (weeks, text) => `${weeks.slice(0, 1).toUpperCase()}${weeks.slice(1)}: ${text}`,
  askAfter: (date) => `Ask before you train on after ${date}. No session is planned after that day.`,

  sections: {
    parts: 'Made of',
    'set-up': 'Set-up',
    'pick up': 'Pick up',
    'put down': 'Put down',
    cues: 'Cues',
    breath: 'Breath',
    faults: 'You see, you say',
    easier: 'Easier',
    harder: 'Harder',
    film: 'A short film',
    partner: 'Your partner',
  },
  film: (coach, from) => [
    `${coach} asks for a film of one set, ${FILMED[from]}.`,
    'Lean the phone on something steady. All of you in the picture.',
    'Send it yourself. It goes nowhere on its own.',
  ],
  partsDone: {
    'as one': 'One after the other, and all of them make one rep.',
    'in turn': 'All reps of the first, then all reps of the next.',
  },
  stopTitle: 'Stop if',
  quotes: ['‘', '’'],

  whyLead: (where) =>
    where
      .map(({ session, weeks }) => {
        const said = weeks.length === 0 ? '' : englishSets.weekList(weeks);
        return session === ''
          ? `${said.slice(0, 1).toUpperCase()}${said.slice(1)}`
          : [session, said].filter((part) => part !== '').join(', ');
      })
      .join('; '),

  testAgain: (names) => `We test again, once you are warm: ${listed(names)}.`,

  partnerTitle: (partner) => `For ${partner}: count, watch, speak`,
  partner: (client) => [
    `You count, you watch, you speak. No hands-on help.`,
    `Stand to the side, where ${client} sees you. Never where a load could fall.`,
    `Bells go by the floor: set down, then picked up. Never hand to hand.`,
    `Say one thing at a time, in few words.`,
    `Never ask for one more. ${client} says when it is enough.`,
  ],
  partnerEmergency: [
    'Pain, pressure or tightness in the chest, jaw or arm.',
    'Fainting, or about to faint.',
    'A sudden, severe headache.',
    'Weakness on one side of face or body, or speech that is not clear.',
    'New numbness, or loss of control of bladder or bowel.',
    'Breathlessness far beyond what the work explains.',
    'A swollen, painful calf: a doctor or the local health line the same day. With chest pain or breathlessness, call at once.',
  ],
  partnerStop: (client) => `As ${client} reads it: stop if`,
  partnerCounts: {
    reps: 'Count the good reps aloud.',
    seconds: 'Watch the clock. Say the last five seconds aloud.',
    metres: 'Look ahead: is the way clear? Say when to turn.',
    rounds: 'Count the rounds aloud.',
  },
  partnerSides: 'Say which side is next.',

  recordTitle: 'What you noticed',
  record: (who) => [
    `After each session: the date, how hard it was from 0 to 10, and a word on what felt light, heavy or sore.`,
    `Bring it to ${who.coach}, or send it. It makes your next booklet better.`,
  ],
};
