/**
 * What the coach is told of, and what a plan is withheld for, in the cases' words: with the ids of the rules, findings
 * and problems that say so. Any one of them will do.
 */
export const WITHHELD: Readonly<Record<string, readonly string[]>> = {
  age: ['under-age'],
  'screening not asked': ['screening-missing'],
  'screening not clear': ['screening-unclear'],
  'old screening': ['screening-out-of-date'],
  symptoms: ['symptoms'],
  clearance: ['clearance-needed'],
  'too long': ['session-too-long'],
  'days that do not fit': ['rotation-not-stated'],
  effort: ['effort-not-readable'],
  'a dose that does not fit': ['dose-for-way'],
  'blood pressure': ['pressure-too-high', 'pressure-ask-first'],
  pregnancy: ['pregnancy-refused', 'pregnancy-ask-first'],
  birth: ['birth-not-checked'],
  'an alarm': ['alarm-reported'],
};

export const MATTERS: Readonly<Record<string, readonly string[]>> = {
  'another version': ['version-chosen'],
  'pain to be looked at': ['pain-leave'],
  'what was tested going first': ['begin-tested'],
  'a row left out for a version that stands there already': ['refuge-once'],
  'plain sets': ['dose-of-version'],
  'the effort of the week': ['effort-of-version'],
  'an unknown start': ['ladder-start-lightest', 'feeler-rise'],
  'a moderate plan': ['moderate-only'],
  'a clearance that lapses': ['clearance-lapses'],
  'a sign-off that lapses': ['sign-off-lapses'],
  'a caution inside the block': ['caution-in-block'],
  'a review that has passed': ['caution-review'],
  'a gap between the sides': ['side-gap-told', 'side-gap-why'],
  'the break': [
    'break-away',
    'break-ill',
    'break-hurt',
    'missed-session',
    'queue-slides',
    'sessions-lost',
    'strength-kept',
    'strength-unknown',
  ],
  'the due date': ['pregnancy-last'],
  'too many bells in a circuit': ['circuit-bells'],
  'plates changed in a circuit': ['circuit-bells'],
};
