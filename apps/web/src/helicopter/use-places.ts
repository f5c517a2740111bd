import type { MyPlaces } from '@drumline/contract';
import { kept, type Person, type ShownEntry, useEntries, useKept, useTerritoryNow } from '../phone/index.js';
import { type KeptPlaces, notInYet } from './own-movements.js';
import { type PlacesNow, placesNow } from './places-now.js';

export const placesPath = '/api/my-places';

/** What a page of the helicopter's phone is made from. */
export interface PlacesHere extends PlacesNow {
  /** When base last told. Territory's time. */
  readonly readAt: string;
  readonly entries: readonly ShownEntry[];
  /** By the territory's clock, as well as the phone can tell. */
  readonly at: Date;
}

/** A page about one place. */
export interface AtPlace {
  readonly here: PlacesHere;
  readonly person: Person;
  readonly place: string;
}

const readPlaces = async (): Promise<KeptPlaces | null> => {
  const read = await kept.reads.get(placesPath);
  const places = read?.body as MyPlaces | undefined;
  return read === undefined || places?.format !== 'my-places/1' ? null : { places, at: read.at };
};

/** Undefined: the phone is looking; null: base has never told it. */
export const usePlaces = (): PlacesHere | null | undefined => {
  const read = useKept(readPlaces);
  const entries = useEntries();
  const at = useTerritoryNow();
  if (read === undefined || entries === undefined) return undefined;
  if (read === null) return null;
  return {
    ...placesNow(read.places, notInYet(read, entries), at),
    readAt: read.at,
    entries,
    at,
  };
};
