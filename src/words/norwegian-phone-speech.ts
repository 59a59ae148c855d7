/** Norwegian as the training screens speak it. */
import {
  norwegianDates,
  norwegianDoses,
  norwegianLoads,
  norwegianNumbers,
  norwegianSides,
} from './norwegian-figures.js';
import { norwegianManner } from './norwegian-manner.js';
import { norwegianPhone } from './norwegian-phone.js';
import type { PhoneCatalogue } from './phone-speech.js';

export const norwegianPhoneSpeech: PhoneCatalogue = {
  language: 'nb',
  numbers: norwegianNumbers,
  dates: norwegianDates,
  sides: norwegianSides,
  loads: norwegianLoads,
  doses: norwegianDoses,
  sets: norwegianManner,
  phone: norwegianPhone,
};
