import { type Random, randomFrom } from '@drumline/routing';
import type { AeroplaneType, CachesNetwork, NetworkCache } from './caches-network.js';

const limits = {
  dailyBlockHours: 8,
  dailyDutyHours: 10,
  sevenDayDutyHours: 48,
  reserveHours: 0.75,
  taxiKg: 15,
  baseTurnHours: 0.6,
  stopTurnHours: 0.35,
  hoursAddedPerLeg: 0.1,
};

const penalties = {
  belowMinimumPerDrumDay: 1500,
  belowCriticalPerDrumDay: 6000,
  unmetPerDrum: 60000,
  belowEndTargetPerDrum: 2500,
};

/** Drums that an aeroplane of a busy fleet brings out on a day, whatever the network. */
const DRUMS_PER_AEROPLANE = { from: 10, to: 15 };

/** An invented network with a busy fleet, varied in size, bases, fleet, weather and stocks; the same for the same seed. */
export function makeNetwork(seed: number): CachesNetwork {
  const random = randomFrom(seed);
  const days = pickOf([7, 14, 14, 21], random);
  const aeroplanes = whole(2, 9, random);
  const types = makeTypes(random);
  const bases = makeBases(aeroplanes > 3 ? whole(1, 3, random) : 1, random);
  const drumsADay = aeroplanes * between(DRUMS_PER_AEROPLANE.from, DRUMS_PER_AEROPLANE.to, random);
  const caches = makeCaches({ days, drumsADay, bases, count: whole(4, 8, random) * aeroplanes }, random);
  return {
    name: `V${seed}`,
    days,
    drumGrossKg: 180,
    limits,
    penalties,
    bases: bases.map((base) => ({ ...base, ...baseStock(days, drumsADay / bases.length) })),
    types,
    aircraft: Array.from({ length: aeroplanes }, (_, at) => ({
      id: `A${at}`,
      type: types[at % types.length]!.id,
      base: bases[at % bases.length]!.id,
      blockHoursByDay: hoursByDay(days, random),
    })),
    caches,
  };
}

function makeTypes(random: Random): AeroplaneType[] {
  return Array.from({ length: whole(1, 4, random) }, (_, at) => {
    const operatingWeightKg = whole(2300, 3400, random);
    const maxTakeoffKg = operatingWeightKg + whole(1600, 1950, random);
    return {
      id: `K${at + 1}`,
      cruiseKt: whole(145, 190, random),
      burnKgPerHour: whole(140, 185, random),
      operatingWeightKg,
      maxTakeoffKg,
      maxLandingKg: maxTakeoffKg - whole(100, 250, random),
      drumPositions: whole(5, 7, random),
      costPerBlockHour: 50 * whole(26, 44, random),
      feePerStop: 10 * whole(5, 9, random),
    };
  });
}

const makeBases = (count: number, random: Random) =>
  Array.from({ length: count }, (_, at) => ({
    id: `B${at}`,
    xNm: at * whole(120, 260, random),
    yNm: whole(-40, 40, random),
  }));

/** Drums for the first days and two resupplies: enough, but not at once. */
function baseStock(days: number, drumsADay: number) {
  const resupply = Math.ceil(drumsADay * 0.8 * 7);
  return {
    stockDrums: Math.ceil(drumsADay * 0.9 * 7),
    resupplyDrumsByDay: Array.from({ length: days }, (_, day) => (day % 7 === 3 ? resupply : 0)),
  };
}

/** Most days in full; now and then an aeroplane is away for maintenance. */
function hoursByDay(days: number, random: Random): number[] {
  const away = random() < 0.4 ? { from: whole(0, days - 1, random), days: whole(1, 3, random) } : null;
  return Array.from({ length: days }, (_, day) =>
    away && day >= away.from && day < away.from + away.days ? 0 : limits.dailyBlockHours,
  );
}

interface Field {
  readonly days: number;
  readonly drumsADay: number;
  readonly bases: readonly { readonly xNm: number; readonly yNm: number }[];
  readonly count: number;
}

function makeCaches({ days, drumsADay, bases, count }: Field, random: Random): NetworkCache[] {
  const shares = Array.from({ length: count }, () => between(0.4, 2.2, random));
  const total = shares.reduce((sum, share) => sum + share, 0);
  const wetOdds = between(0.1, 0.35, random);
  return shares.map((share, at) => {
    const daily = (drumsADay * share) / total;
    const minimumDrums = Math.max(2, Math.round(daily * between(2, 3, random)));
    const home = bases[at % bases.length]!;
    const bearing = between(0, 2 * Math.PI, random);
    const distance = between(40, 170, random);
    return {
      id: `C${at}`,
      xNm: home.xNm + distance * Math.cos(bearing),
      yNm: home.yNm + distance * Math.sin(bearing),
      takeoffFactor: between(0.88, 1, random),
      landingFactor: Math.min(1, between(0.92, 1.05, random)),
      wetTakeoffFactor: between(0.89, 0.95, random),
      wetByDay: Array.from({ length: days }, () => random() < wetOdds),
      closedByDay: Array.from({ length: days }, () => random() < 0.06),
      stockDrums: twentieths(minimumDrums + daily * between(1, 4, random)),
      minimumDrums,
      criticalDrums: Math.max(1, Math.round(minimumDrums * 0.4)),
      capacityDrums: minimumDrums * 3 + 8,
      endTargetDrums: Math.round(minimumDrums * between(1.5, 2, random)),
      demandDrumsByDay: Array.from({ length: days }, () => twentieths(daily * between(0.2, 1.8, random))),
    };
  });
}

const between = (from: number, to: number, random: Random) => from + (to - from) * random();
const whole = (from: number, to: number, random: Random) => Math.floor(between(from, to + 1, random));
const pickOf = (list: readonly number[], random: Random) => list[whole(0, list.length - 1, random)]!;
const twentieths = (drums: number) => Math.round(drums * 20) / 20;
