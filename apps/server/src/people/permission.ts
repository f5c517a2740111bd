import type { Role } from '@drumline/contract';
import { Problem } from '../http/problem.js';

export const refuseUnlessPermitted = (roles: readonly Role[], act: string): void => {
  if (roles.includes('operations manager')) return;
  throw new Problem('not-allowed', `${roles.join(', ')} may not do this: ${act}. Ask somebody who may.`);
};

export const permittedActs = (_roles: readonly Role[]): readonly string[] => [];
