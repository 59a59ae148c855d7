/** What is not done in this session, and why. */
import type { TodayScreen } from '../../src/model/training.js';
import { sayDate } from '../../src/words/say-date.js';
import { Own } from './parts.js';
import type { Shown } from './shown.js';

export function LeftOut({ all, shown }: { readonly all: TodayScreen['leftOut']; readonly shown: Shown }) {
  const { speech } = shown;
  const { phone } = speech.words;
  return (
    <>
      {all.map(({ exercise, because, hurt }) => (
        <p class="paper">
          {phone.notToday} <Own shown={shown} text={shown.nameOf(exercise)} />.{' '}
          {hurt === undefined
            ? because.map(({ says }) => says).join(' ')
            : phone.hurtSo(hurt.degree, sayDate(hurt.date, speech))}
        </p>
      ))}
    </>
  );
}
