import type { Cache } from '../caches-read.js';

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

export const dayRows = (cache: Cache, dates: readonly string[]): readonly DayRow[] =>
  dates.map((date, index) => ({
    date,
    landed: landedOn(cache, date),
    drawn: drawnOn(cache, date),
    levelLitres: cache.projections.offered.usableLitres[index + 1]!,
    withoutLitres: cache.projections.noDeliveries.usableLitres[index + 1]!,
    outOfReserveLitres: cache.projections.offered.outOfReserveLitres[index + 1] ?? 0,
    unmetLitres: cache.projections.offered.unmetLitres[index + 1] ?? 0,
  }));

const landedOn = ({ deliveries, slings, place }: Cache, date: string): readonly Part[] => [
  ...deliveries
    .filter((delivery) => delivery.date === date)
    .map(({ litres, flight, drums, heldDrums, needsDecision }) => ({
      litres,
      by: heldDrums === 0 ? flight : `${flight}, ${heldDrums} of ${drums} drums HOLD`,
      isAsked: needsDecision !== null,
    })),
  ...slings
    .filter((sling) => sling.date === date && sling.to === place)
    .map((sling) => slungPart(sling, sling.from)),
];

const drawnOn = ({ draws, slings, place }: Cache, date: string): readonly Part[] => [
  ...draws
    .filter((draw) => draw.date === date)
    .map(({ litres, for: programme, helicopter }) => ({
      litres,
      by: helicopter === null ? programme : `${programme} ${helicopter}`,
      isAsked: false,
    })),
  ...slings
    .filter((sling) => sling.date === date && sling.from === place)
    .map((sling) => slungPart(sling, sling.to)),
];

/** What the sling takes along; "2 of 6 drums" where its place has too few. */
const slungPart = ({ drums, load }: Cache['slings'][number], other: string): Part => ({
  litres: load.litres,
  by: load.drums < drums ? `sling ${other}, ${load.drums} of ${drums} drums` : `sling ${other}`,
  isAsked: false,
});

export const sumOf = (parts: readonly Part[]): number => parts.reduce((sum, { litres }) => sum + litres, 0);
