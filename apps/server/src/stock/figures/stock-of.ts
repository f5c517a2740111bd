import {
  type Batch,
  type BatchState,
  bookStandsAfter,
  carriedCount,
  toBatches,
  toDrums,
} from '@drumline/stock';
import type { CurrentStock } from '../stock.service.js';
import type { PlaceStock, StandingCount } from './kept-stock.js';

/** A count that its case has shown to be wrong says nothing of the stock. */
export const isInForce = ({ closedAs }: StandingCount): boolean =>
  closedAs === null || !bookStandsAfter(closedAs);

/** The stock of some places as the stock figures and a scenario read it, empty drums included. */
export const stockOf = (
  places: readonly PlaceStock[],
  batches: ReadonlyMap<string, BatchState>,
  registered: readonly Batch[],
  timeZone: string,
): CurrentStock => {
  const drums = new Map(places.flatMap((place) => [...place.drums]));
  return {
    drums: toDrums({ drums }, timeZone),
    batches: toBatches({ drums, batches }, registered),
    counts: places.flatMap(({ counts, balance }) =>
      counts
        .filter(isInForce)
        .map(({ counted, bookMillilitres }) =>
          carriedCount(counted, bookMillilitres, balance.bookMillilitres),
        ),
    ),
  };
};
