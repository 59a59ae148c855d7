/** The checks across files, in the order they are made. Each stands alone: a test takes them out one by one. */
import { linkAdvice } from './advice-links.js';
import { pageAdvice } from './advice-pages.js';
import { programmeAdvice } from './advice-programmes.js';
import { clientChecks } from './check-clients.js';
import { exerciseChecks } from './check-exercises.js';
import { idChecks } from './check-ids.js';
import { linkChecks } from './check-links.js';
import { pictureChecks } from './check-pictures.js';
import { privacyChecks } from './check-privacy.js';
import { programmeChecks } from './check-programmes.js';
import { versionChecks } from './check-versions.js';
import type { FolderCheck } from './read-things.js';

export const CHECKS: readonly FolderCheck[] = [
  ...idChecks,
  ...linkChecks,
  ...exerciseChecks,
  ...versionChecks,
  ...pictureChecks,
  ...programmeChecks,
  ...clientChecks,
  ...privacyChecks,
  ...pageAdvice,
  ...linkAdvice,
  ...programmeAdvice,
];
