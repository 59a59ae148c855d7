/** The second script, for a booklet in Norwegian. */
import './fill-gaps.js';
import { norwegianPhoneSpeech } from '../words/norwegian-phone-speech.js';
import { train } from './train.js';

train(norwegianPhoneSpeech);
