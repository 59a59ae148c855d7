/**
 * What a writer is gently told of their own pages. Advice holds nothing back and changes no exit code; each kind goes
 * by its code, and is left unsaid with `advice off:` on the page it speaks of or in `studio.md`.
 */
export const EXERCISE_ADVICE = [
  'fault-unsaid',
  'many-cues',
  'long-cue',
  'stop-sign-everywhere',
  'easier-for-what',
  'easier-needs-kit',
  'exercise-unreached',
] as const;
export const PROGRAMME_ADVICE = ['hinges-without-pull', 'pushes-without-pull', 'legs-left-out'] as const;
export const CLIENT_ADVICE = ['partner-one-way', 'observation-unread', 'exercises-other-language'] as const;
export const ADVICE = [...EXERCISE_ADVICE, ...PROGRAMME_ADVICE, ...CLIENT_ADVICE] as const;
export type Advice = (typeof ADVICE)[number];

export const isAdvice = (code: string): code is Advice => ADVICE.some((one) => one === code);
