import type { Movement } from '@drumline/stock';
import { useRef } from 'react';
import { newId, put, useAct, useCalendar } from '../../../api/index.js';

/** How an entry came to the desk. */
export interface Source {
  readonly means: 'screen' | 'radio' | 'paper';
  /** Who reports it, where it is not the person at the screen. */
  readonly by: string;
  /** "06:50" of today, where it is not now. */
  readonly at: string;
}

export const atTheScreen: Source = { means: 'screen', by: '', at: '' };

/** The fields that every entry has; `happened` is the instant of `source.at`. */
export const writtenNow = (now: Date, source: Source, happened: string | null) => ({
  happenedAt: happened ?? now.toISOString(),
  writtenAt: now.toISOString(),
  means: source.means,
  ...(source.by.trim() === '' ? {} : { by: source.by.trim() }),
});

/** A time of today at the territory as an instant; null: not a time, or none was typed. */
export const instantToday = (at: string, instantOf: (clock: string) => string): string | null =>
  /^([01]\d|2[0-3]):[0-5]\d$/.test(at) ? instantOf(at) : null;

export interface Outcome {
  readonly outcome: 'in the ledger' | 'proposed';
  readonly raised?: readonly { readonly id: string; readonly what: string; readonly whatNext: string }[];
  readonly movement?: Movement;
}

/**
 * Sends one entry to the ledger. Its id is made with the form, so that a second press is the same entry; after it is in,
 * the next one gets another.
 */
export const useEntry = (path = '/api/movements') => {
  const id = useRef(newId());
  const { now } = useCalendar();
  const act = useAct(async (body: object, source: Source = atTheScreen, happened: string | null = null) => {
    const { body: answer } = await put<Outcome>(`${path}/${id.current}`, {
      ...writtenNow(now, source, happened),
      ...body,
    });
    id.current = newId();
    return answer;
  });
  return act;
};
