import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  await desk.act(desk.dispatcher, 'F07', 'approve');
});
afterAll(() => desk.server.close());

// Of one minute the report that came last counts.
const hear = (state: 'dry' | 'soft' | 'closed', place = 'XESK') =>
  desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
    ...{ place, state, at: '2027-06-14T06:00Z', by: 'strip helper, by radio' },
    ...(state === 'dry' ? {} : { untilDate: '2027-06-16' }),
  });
const markOf = async (id: string) => (await desk.flight(id)).needsDecision;
const history = async (id: string): Promise<readonly string[]> =>
  (
    await desk.server.database.query(
      'select act, reason from flight_history where flight_id = $1 order by revision',
      [id],
    )
  ).map(({ act, reason }: Record<string, string>) => (reason === null ? act : `${act}: ${reason}`));

it('a strip that is reported open again takes its mark off the flight; the history keeps both', async () => {
  await hear('closed');
  const mark = 'F07, Tue 15 Jun, XESK: XESK is reported closed. Wait for a report that it is open.';
  expect(await markOf('F07')).toBe(mark);
  await hear('dry');
  expect(await markOf('F07')).toBeNull();
  expect((await history('F07')).slice(-2)).toEqual([`mark: ${mark}`, `unmark: no longer so: ${mark}`]);
  expect((await desk.act(desk.dispatcher, 'F07', 'give')).body.state).toBe('given');
});

it('a closed strip that is soft then: the mark says what is wrong now', async () => {
  await hear('closed', 'XLOR');
  expect(await markOf('F05')).toContain('XLOR is reported closed');
  await hear('soft', 'XLOR');
  expect(await markOf('F05')).toContain('XLOR when soft accepts 7,600 lb landing');
  await hear('dry', 'XLOR');
  expect(await markOf('F05')).toBeNull();
});

it('a mark that a person set stands, whatever is reported', async () => {
  await hear('closed', 'XGAN');
  await desk.act(desk.dispatcher, 'F06', 'mark', { reason: 'the camp is not ready' });
  await hear('dry', 'XGAN');
  expect(await markOf('F06')).toBe('the camp is not ready');
});
