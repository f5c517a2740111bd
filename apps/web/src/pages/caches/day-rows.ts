import type { Cache } from './caches-read.js';

export interface Part {
  readonly litres: number;
  readonly by: string;
  readonly isAsked: boolean;
}

/** A day of a cache: what lands, what is drawn, where it ends. */
export interface DayRow {
  readonly date: string;
  readonly landed: readonly Part[];
  readonly drawn: readonly Part[];
  readonly levelLitres: number;
  readonly withoutLitres: number;
  readonly outOfReserveLitres: number;
  readonly unmetLitres: number;
}

export const dayRows = (cache: Cache, dates: readonly string[], fillLitres: number): readonly DayRow[] =>
  dates.map((date, index) => ({
    date,
    landed: landedOn(cache, date, fillLitres),
    drawn: drawnOn(cache, date, fillLitres),
    levelLitres: cache.projections.offered.usableLitres[index + 1]!,
    withoutLitres: cache.projections.noDeliveries.usableLitres[index + 1]!,
    outOfReserveLitres: cache.projections.offered.outOfReserveLitres[index + 1] ?? 0,
    unmetLitres: cache.projections.offered.unmetLitres[index + 1] ?? 0,
  }));

const landedOn = (
  { deliveries, slings, place }: Cache,
  date: string,
  fillLitres: number,
): readonly Part[] => [
  ...deliveries
    .filter((delivery) => delivery.date === date)
    .map(({ litres, flight, needsDecision }) => ({ litres, by: flight, isAsked: needsDecision !== null })),
  ...slings
    .filter((sling) => sling.date === date && sling.to === place)
    .map(({ drums, from }) => ({ litres: drums * fillLitres, by: `sling ${from}`, isAsked: false })),
];

const drawnOn = ({ draws, slings, place }: Cache, date: string, fillLitres: number): readonly Part[] => [
  ...draws
    .filter((draw) => draw.date === date)
    .map(({ litres, for: programme, helicopter }) => ({
      litres,
      by: helicopter === null ? programme : `${programme} ${helicopter}`,
      isAsked: false,
    })),
  ...slings
    .filter((sling) => sling.date === date && sling.from === place)
    .map(({ drums, to }) => ({ litres: drums * fillLitres, by: `sling ${to}`, isAsked: false })),
];

export const sumOf = (parts: readonly Part[]): number => parts.reduce((sum, { litres }) => sum + litres, 0);
