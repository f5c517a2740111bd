import type { Movement } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';

/** A count that a clock which is ahead has dated after the moment: it is not known yet. */
export const isCountAfter = (movement: Movement, at: IsoInstant): boolean =>
  movement.kind === 'counted' && Date.parse(movement.happenedAt) > Date.parse(at);
