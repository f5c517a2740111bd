import { distanceTable, type GivenDistance } from '@drumline/network';
import { useMemo } from 'react';
import { mayOfAll, type Read, useList, useMay, useMe, useRead } from '../../api/index.js';
import { bothOf } from '../../ui/index.js';
import { type Moved, movedOn } from './day-legs.js';
import {
  bookedOfDaySchema,
  type Distance,
  distanceSchema,
  flightSchema,
  type Outlook,
  outlookSchema,
  type Place,
  placeSchema,
  type Report,
  reportsSchema,
  type StockItem,
  stockSchema,
} from './map-read.js';
import type { FilledDrums } from './place-rows.js';

/** What the chart is drawn from, whatever the day. */
export interface Network {
  readonly places: readonly Place[];
  readonly distances: readonly Distance[];
  readonly outlook: Outlook;
  readonly filled: ReadonlyMap<string, FilledDrums>;
  readonly reports: readonly Report[];
}

const changed = <A, B>(read: Read<A>, to: (value: A) => B): Read<B> => ({
  ...read,
  value: read.value === undefined ? undefined : to(read.value),
});

export const useNetwork = (): Read<Network> => {
  const ground = bothOf(useList('/api/places', placeSchema), useList('/api/distances', distanceSchema));
  const fuel = bothOf(useRead('/api/projections', outlookSchema), useRead('/api/stock', stockSchema));
  const reports = useRead('/api/surface-reports?limit=500', reportsSchema);
  return changed(
    bothOf(bothOf(ground, fuel), reports),
    ([[[places, distances], [outlook, stock]], heard]) => ({
      places: places.map(({ data }) => data),
      distances: distances.map(({ data }) => data),
      outlook,
      filled: new Map(stock.items.map((item) => [item.place, filledDrums(item)])),
      reports: heard.items.map(({ data }) => data),
    }),
  );
};

const filledDrums = ({ sealedDrums, sealedHeldDrums, sealedPastRetestDrums }: StockItem): FilledDrums => ({
  usable: sealedDrums - sealedHeldDrums - sealedPastRetestDrums,
  held: sealedHeldDrums,
  pastRetest: sealedPastRetestDrums,
});

export interface MovedRead extends Read<readonly Moved[]> {
  /** This person's role does not see flights. */
  readonly isHidden: boolean;
}

/** What flies on a day, of a crew its own; sling moves stand with the caches. */
export const useMoved = (day: string, outlook: Outlook): MovedRead => {
  const isHidden = !useMay()('approve flight', 'view');
  const flights = useList(isHidden ? null : `/api/flights?from=${day}&until=${day}`, flightSchema);
  const seesAll = mayOfAll(useMe(), 'approve flight', 'view');
  const week = useRead(seesAll ? `/api/week?from=${day}&days=1` : null, bookedOfDaySchema);
  const slings = useMemo(() => slingsOn(outlook, day), [outlook, day]);
  const read = seesAll
    ? changed(bothOf(flights, week), ([ofDay, { booked }]) => movedOn({ flights: ofDay, booked, slings }))
    : changed(flights, (own) => movedOn({ flights: own, booked: [], slings }));
  return isHidden
    ? { ...read, value: movedOn({ flights: [], booked: [], slings }), isHidden }
    : { ...read, isHidden };
};

/** Each stands with both of its places. */
const slingsOn = ({ items }: Outlook, day: string) =>
  items.flatMap(({ place, slings }) => slings.filter(({ date, from }) => date === day && from === place));

/** The operator's distance, else the shortest line over the ground. */
export const distancesOf = ({ places, distances }: Pick<Network, 'places' | 'distances'>) =>
  distanceTable(places, distances as unknown as readonly GivenDistance[]);
