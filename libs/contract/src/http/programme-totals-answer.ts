import type { ProgrammeTotal } from '@drumline/planning';
import type { IsoDate } from '@drumline/units';

/** Answer of GET /api/programme-totals: between two days, both included. */
export interface ProgrammeTotalsAnswer {
  readonly from: IsoDate;
  readonly until: IsoDate;
  readonly items: readonly ProgrammeTotal[];
  readonly next: null;
}
