/** The second script, for a booklet in English. */
import './fill-gaps.js';
import { englishPhoneSpeech } from '../words/english-phone-speech.js';
import { train } from './train.js';

train(englishPhoneSpeech);
