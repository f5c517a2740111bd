import type { MyDay } from '@drumline/contract';
import { useCallback } from 'react';
import { keepFact, kept, useKept } from '../../phone/index.js';
import type { OpenedFlight } from './opened-flight.js';

export const dayPath = '/api/my-day';

/** The day as base last told it. */
export interface KeptDay {
  readonly day: MyDay;
  /** Territory's time. */
  readonly at: string;
}

const readDay = async (): Promise<KeptDay | null> => {
  const read = await kept.reads.get(dayPath);
  const day = read?.body as MyDay | undefined;
  return read === undefined || day?.format !== 'my-day/1' ? null : { day, at: read.at };
};

/** Null: never read; undefined: the phone is looking. */
export const useDay = (): KeptDay | null | undefined => useKept(readDay);

const openedName = (flight: string): string => `opened ${flight}`;

/** The load that the person has open. It is never another one until they open another. */
export const useOpened = (flight: string): OpenedFlight | null | undefined =>
  useKept(
    useCallback(
      async () => ((await kept.facts.get(openedName(flight)))?.value as OpenedFlight | undefined) ?? null,
      [flight],
    ),
  );

export const open = (flight: OpenedFlight): Promise<void> => keepFact(openedName(flight.id), flight);

/** Loads that the person has opened, with those that base no longer names. */
export const useAllOpened = (): readonly OpenedFlight[] | undefined => useKept(readOpened);

const readOpened = async (): Promise<readonly OpenedFlight[]> =>
  (await kept.facts.where('name').startsWith('opened ').toArray()).map(({ value }) => value as OpenedFlight);
