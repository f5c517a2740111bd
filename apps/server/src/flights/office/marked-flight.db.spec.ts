import type { CardAnswer } from '@drumline/contract';
import { expect, it } from 'vitest';
import { openFlightDesk } from '../../testing/flight-desk.js';

it('an offered flight that needs a decision is not approved while another offered one wants the same aircraft', async () => {
  const desk = await openFlightDesk();
  try {
    const { database } = desk.server;
    const faults = async () =>
      (await desk.dispatcher.get<CardAnswer>('/api/flights/F02/card')).body.faults.map(
        ({ problem }) => problem,
      );
    await database.query(
      `update flights set (date, departs, aircraft, pilot, from_place, to_place, stops) =
         (select date, departs, aircraft, pilot, from_place, to_place, stops from flights where id = 'F01')
       where id = 'F02'`,
    );
    await database.query(`delete from flight_loads where flight_id = 'F02'`);
    expect(await faults()).toEqual([]);
    await database.query(`update flights set needs_decision = 'F01 has the aircraft' where id = 'F02'`);
    expect(await faults()).not.toEqual([]);
    expect((await desk.act(desk.dispatcher, 'F02', 'approve')).status).toBe(422);
  } finally {
    await desk.server.close();
  }
});
