import { type Pounds, pounds } from '@drumline/units';
import type { LegEnd, LimitName } from './route-load.js';

/** What a place lets a type take off and land with in its present state, or the name of the limit that forbids both. */
export type StripWeights =
  | { readonly forbiddenBy: null; readonly takeoffLb: Pounds; readonly landingLb: Pounds }
  | { readonly forbiddenBy: Extract<LimitName, 'type not approved' | 'closed' | 'closed when soft'> };

/** The operator's line for the type, less the soft penalty where the surface is soft; damp uses the dry figures. */
export function stripWeights({ limit, surface }: LegEnd): StripWeights {
  if (limit === null) return { forbiddenBy: 'type not approved' };
  if (surface === 'closed') return { forbiddenBy: 'closed' };
  if (surface !== 'soft')
    return { forbiddenBy: null, takeoffLb: limit.takeoffLb, landingLb: limit.landingLb };
  if (limit.whenSoft === 'closed') return { forbiddenBy: 'closed when soft' };
  return {
    forbiddenBy: null,
    takeoffLb: pounds(limit.takeoffLb - limit.whenSoft.takeoffLessLb),
    landingLb: pounds(limit.landingLb - limit.whenSoft.landingLessLb),
  };
}
