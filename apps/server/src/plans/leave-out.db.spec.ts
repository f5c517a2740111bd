import type { PlanDifferencesAnswer } from '@drumline/contract';
import type { FlightPlan, PlannedFlight } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk, type Refusal } from '../testing/flight-desk.js';
import { solvedRun } from '../testing/hand-plan.js';
import type { PlanAcceptance } from './plan-run.table.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const differences = (id: string, ...without: readonly string[]) =>
  desk.dispatcher.get<PlanDifferencesAnswer & Refusal>(
    `/api/plans/${id}/differences?without=${without.join(',')}`,
  );
const accept = (id: string, without: readonly string[]) =>
  desk.dispatcher.post<PlanAcceptance & Refusal>(`/api/plans/${id}/accept`, { without });
const flightOf = ({ flights }: FlightPlan, id: string): PlannedFlight =>
  flights.find((flight) => flight.id === id)!;
const lowestAt = ({ lowest }: PlanDifferencesAnswer, place: string) =>
  lowest.find((row) => row.place === place)!;

/** By how much the level falls, at the start and on the first three days. */
const fallsBy = ({ levels }: PlanDifferencesAnswer, place: string) => {
  const { before, after } = levels.find((row) => row.place === place)!;
  return before.slice(0, 4).map((litres, day) => litres - after[day]!);
};

describe('a plan taken without some of its lines', () => {
  it('a removed flight that is left out stays, and the levels are worked out anew before anything is accepted', async () => {
    const id = await solvedRun(desk.server, (plan) => ({
      ...plan,
      flights: plan.flights.filter((flight) => !['F05', 'F10'].includes(flight.id)),
    }));
    const whole = (await differences(id)).body;
    expect(whole.mayLeaveOut.toSorted()).toEqual(['F05', 'F10']);
    // It stood at 1,885 L at its lowest (product.md, T1): six drums less.
    expect(lowestAt(whole, 'XLOR')).toMatchObject({ beforeLitres: 1885, afterLitres: 685 });
    // Day by day the same: F05 would have landed 1,200 L on the second day.
    expect(fallsBy(whole, 'XLOR')).toEqual([0, 0, 1200, 1200]);
    const part = (await differences(id, 'F05')).body;
    expect(part).toMatchObject({ leftOut: ['F05'], faultsAfter: [] });
    expect(fallsBy(part, 'XLOR')).toEqual([0, 0, 0, 0]);
    expect(part.removed.map((flight) => flight.id)).toEqual(whole.removed.map((flight) => flight.id));
    expect(lowestAt(part, 'XLOR').afterLitres).toBe(1885);
    expect(part.totals.after.drums).toBe(whole.totals.after.drums + 6);
    expect(part.totals.after.cost.total).toBeGreaterThan(whole.totals.after.cost.total);
    // By the lines that are taken, as the levels beside it.
    expect(part.cannotKeep.map(({ text }) => text).join(' ')).not.toContain('XLOR');

    const accepted = await accept(id, ['F05']);
    expect(accepted.status).toBe(200);
    expect(accepted.body).toMatchObject({ leftOut: ['F05'], calledOff: ['F10'] });
    expect((await desk.flight('F05')).state).toBe('offered');
    expect((await desk.flight('F10')).state).toBe('called off');
    expect((await accept(id, ['F05'])).status).toBe(200);
    const otherwise = await accept(id, []);
    expect(otherwise.status).toBe(409);
    expect(otherwise.body.detail).toContain('has accepted this plan already, without F05.');
  });

  it('that breaks a limit without them says so beforehand, and is not accepted', async () => {
    // F05 lands the 6 drums that XLOR unloads in a day; the plan has them come from XMER instead.
    const id = await solvedRun(desk.server, (plan) => {
      const fromMer = { ...flightOf(plan, 'F02'), id: 'P01', date: '2027-06-15', day: 2, aircraft: 'A2' };
      return { ...plan, flights: [...plan.flights.filter((flight) => flight.id !== 'F05'), fromMer] };
    });
    const whole = (await differences(id)).body;
    expect(whole.removed.map((flight) => flight.id)).toContain('F05');
    const { faultsAfter } = (await differences(id, 'F05')).body;
    expect(faultsAfter.map(({ text }) => text).join(' ')).toContain('11 drums would be unloaded');
    const refused = await accept(id, ['F05']);
    expect(refused.status).toBe(422);
    expect(refused.body.faults.map(({ problem }) => problem).join(' ')).toContain('11 drums');
    expect((await desk.flight('F05')).state).toBe('offered');
  });

  it('with a line that it does not have is refused', async () => {
    const id = await solvedRun(desk.server);
    for (const answer of [await differences(id, 'F99'), await accept(id, ['F99'])]) {
      expect(answer.status).toBe(422);
      expect(answer.body.faults[0]?.problem).toContain('F99 is no line of this plan');
    }
  });
});
