/** The load of so many days: effort of 10 times minutes, summed; monotony is their mean over their population SD, strain the sum times that. Nothing is decided by it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const REVIEW_LOAD: Rule = {
  id: ruleId('review-load'),
  value: 7,
  unit: 'days',
  source: 'Foster 1998, Med Sci Sports Exerc 30:1164-1168',
  locator: 'session load, monotony and strain; the SD is here that of the population',
  standing: 'published',
  date: '2026-11-28',
};
