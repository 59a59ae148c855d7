/** The checks across files, in the order they are made. */
import type { FolderCheck } from './read-things.js';

export const CHECKS: readonly FolderCheck[] = [];
