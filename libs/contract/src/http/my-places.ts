import type { HelicopterTask, SlingMove } from '@drumline/planning';
import type { DipTable, StockOutlook } from '@drumline/stock';
import type { IsoDate, IsoInstant, KilogramsPerLitre } from '@drumline/units';

/**
 * Answer of GET /api/my-places: everything that a helicopter crew's phone needs at a cache while it has no line. From the
 * outlook and its own reports the phone works out the stock and where it leads by the same rules as the server.
 */
export interface MyPlaces {
  /** A phone that was away through a change of the program reads this first. */
  readonly format: 'my-places/1';
  /** By the territory's clock. */
  readonly at: IsoInstant;
  /** By the server's own clock: a demo's territory has another day. */
  readonly serverAt: IsoInstant;
  readonly timeZone: string;
  readonly today: IsoDate;
  /** Null: this person is no crew of a helicopter of the territory. */
  readonly helicopter: { readonly id: string; readonly name: string; readonly drumsPerLift: number } | null;
  /** This helicopter's, from today on. */
  readonly tasks: readonly HelicopterTask[];
  readonly slings: readonly SlingMove[];
  /** `isRecharged`: to a customer; the operator's own are not. */
  readonly programmes: readonly {
    readonly code: string;
    readonly name: string;
    readonly isRecharged: boolean;
  }[];
  readonly places: readonly { readonly code: string; readonly name: string }[];
  /** Every cache, with the flights that somebody has approved, and what is left to draw of each day. */
  readonly outlook: StockOutlook;
  /** Litres by the stick, the usual one first; absent from a phone that was told before there were any. */
  readonly dipTables?: readonly DipTable[];
  readonly bookDensityKgPerLitre: KilogramsPerLitre;
  /** Ids of what this person has reported in the last days: the outlook has them in it. */
  readonly known: readonly string[];
}
