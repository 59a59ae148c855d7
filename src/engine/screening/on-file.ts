/** What a condition or a medicine on file says, whatever was answered elsewhere. */
import type { Health } from '../../model/client.js';

/** What `diabetes-is-disease` says. */
export const diseaseOnFile = ({ conditions, medicines }: Health): boolean =>
  (conditions ?? []).includes('diabetes') || (medicines ?? []).includes('lowers blood sugar');

export const knownPressure = ({ conditions, medicines }: Health): boolean =>
  (conditions ?? []).includes('blood pressure') || (medicines ?? []).includes('lowers blood pressure');
