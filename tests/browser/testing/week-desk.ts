import { randomUUID } from 'node:crypto';
import type { WeekAnswer, WeekFlight } from '@drumline/contract';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, vi } from 'vitest';
import type { Client } from '../../../apps/server/src/testing/client.js';
import { openOffice } from './open-office.js';

export interface At {
  readonly width: number;
  readonly height: number;
}

export interface WeekDesk {
  readonly office: ReturnType<typeof openOffice>;
  readonly dispatcher: Client;
  readonly week: () => Promise<WeekAnswer>;
  /** A flight as it is now that the test can work on; each test takes another. */
  readonly takeOffered: (is?: (flight: WeekFlight) => boolean) => Promise<WeekFlight>;
  /** By the operations manager, elsewhere. */
  readonly approve: (flight: WeekFlight) => Promise<number>;
  readonly openWeek: (at?: At, flight?: string) => Promise<Page>;
  /** The card of a flight, read to its last line that a decision needs. */
  readonly openCard: (flight: WeekFlight) => Promise<Page>;
}

/** Call it at the top of a test file: a plan of the demo is accepted, the dispatcher looks at its week. */
export const openWeekDesk = (): WeekDesk => {
  const office = openOffice({ own: true });
  let dispatcher: Client;
  let manager: Client;

  // A plan of two seconds is enough: what is shown is asked of the server, not expected of the solver.
  beforeAll(async () => {
    dispatcher = await office.api('dispatcher');
    manager = await office.api('operations manager');
    const id = randomUUID();
    await dispatcher.put(`/api/plans/${id}`, { seconds: 2, seed: 3 });
    const isSolved = async () =>
      (await dispatcher.get<{ state: string }>(`/api/plans/${id}`)).body.state === 'solved';
    await vi.waitUntil(isSolved, { timeout: 90_000, interval: 500 });
    const accepted = await dispatcher.post(`/api/plans/${id}/accept`, {});
    if (accepted.status !== 200)
      throw new Error(`the plan was not accepted: ${JSON.stringify(accepted.body)}`);
  });

  const week = async (): Promise<WeekAnswer> => (await dispatcher.get<WeekAnswer>('/api/week')).body;

  const taken = new Set<string>();
  const takeOffered: WeekDesk['takeOffered'] = async (is = () => true) => {
    const flight = (await week()).flights.find(
      (each) => each.state === 'offered' && each.kind === 'positioning' && !taken.has(each.id) && is(each),
    );
    if (flight === undefined) throw new Error('the plan offers no such flight');
    taken.add(flight.id);
    return flight;
  };

  const approve: WeekDesk['approve'] = async ({ id, revision }) => {
    const headers = { 'If-Match': `"${revision}"` };
    return (await manager.post(`/api/flights/${id}/approve`, {}, { headers })).status;
  };

  const openWeek: WeekDesk['openWeek'] = async (at, flight = '') => {
    const page = await office.signIn('dispatcher', at);
    await page.goto(`/week/${flight}`);
    await page.getByRole('grid').waitFor();
    return page;
  };

  const openCard: WeekDesk['openCard'] = async ({ id }) => {
    const page = await openWeek(undefined, id);
    await cardOf(page).getByText('If declined', { exact: true }).waitFor();
    return page;
  };

  return {
    office,
    get dispatcher() {
      return dispatcher;
    },
    ...{ week, takeOffered, approve, openWeek, openCard },
  };
};

export const cardOf = (page: Page): Locator => page.getByRole('complementary', { name: 'Decision card' });

export const boxOf = (page: Page, id: string): Locator =>
  page.getByRole('grid').getByRole('button', { name: new RegExp(`\\b${id}\\b`) });

export const askToDecline = async (page: Page, { id }: WeekFlight): Promise<Locator> => {
  await page.keyboard.press('d');
  return page.getByRole('form', { name: `Decline ${id}` });
};
