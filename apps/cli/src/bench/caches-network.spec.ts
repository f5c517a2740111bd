import { describe, expect, it } from 'vitest';
import { type CachesNetwork, problemOfNetwork } from './caches-network.js';

/** One base, one strip 155 NM away that is dry, wet, then closed; 180 kg a drum. */
const network: CachesNetwork = {
  name: 'one strip',
  days: 3,
  drumGrossKg: 180,
  limits: {
    dailyBlockHours: 8,
    dailyDutyHours: 10,
    sevenDayDutyHours: 48,
    reserveHours: 0.75,
    taxiKg: 15,
    baseTurnHours: 0.6,
    stopTurnHours: 0.35,
    hoursAddedPerLeg: 0.1,
  },
  penalties: {
    belowMinimumPerDrumDay: 1500,
    belowCriticalPerDrumDay: 6000,
    unmetPerDrum: 60000,
    belowEndTargetPerDrum: 2500,
  },
  bases: [{ id: 'B', xNm: 0, yNm: 0, stockDrums: 10, resupplyDrumsByDay: [0, 4, 0] }],
  types: [
    {
      id: 'K',
      cruiseKt: 155,
      burnKgPerHour: 150,
      operatingWeightKg: 2330,
      maxTakeoffKg: 3970,
      maxLandingKg: 3800,
      drumPositions: 9,
      costPerBlockHour: 1400,
      feePerStop: 60,
    },
  ],
  aircraft: [{ id: 'A', type: 'K', base: 'B', blockHoursByDay: [8, 0, 8] }],
  caches: [
    {
      id: 'C',
      xNm: 155,
      yNm: 0,
      takeoffFactor: 0.68,
      landingFactor: 1,
      wetTakeoffFactor: 0.95,
      wetByDay: [false, true, false],
      closedByDay: [false, false, true],
      stockDrums: 5.5,
      minimumDrums: 3,
      criticalDrums: 1,
      capacityDrums: 12,
      endTargetDrums: 5,
      demandDrumsByDay: [1, 0.5, 2],
    },
  ],
};

describe('problemOfNetwork', () => {
  it('drums on a leg are what take-off and landing room leave after own fuel', () => {
    const [route] = problemOfNetwork(network).routes;
    // Two legs of 1.1 h. Fuel: 112.5 at the end, 285 at the strip, 465 at the start; landing room
    // 3800 - 2330 - 285 = 1185, take-off room 3970 - 2330 - 465 = 1175: six drums.
    expect(route).toMatchObject({ source: 0, stops: [1], end: 0, crewGroup: -1 });
    expect(route?.conditions).toEqual([
      { blockHours: 2.2, dutyHours: 2.2 + 0.6 + 0.35, cost: 2.2 * 140_000 + 6000, legPacks: [6], ownUse: 0 },
    ]);
  });

  it('no flight to a closed strip, nor to one too wet to leave again', () => {
    expect(problemOfNetwork(network).routes[0]?.conditionByDay).toEqual([0, -1, -1]);
  });

  it('drums ready at the base grow with its resupply; an aeroplane that is away has no hours', () => {
    const { stores, vehicles } = problemOfNetwork(network);
    expect(stores[0]?.supply?.packsByDay).toEqual([10, 14, 14]);
    expect(vehicles[0]).toMatchObject({ home: 0, blockHours: [8, 0, 8], dutyHours: [10, 0, 10] });
  });
});
