import type { AircraftType } from '@drumline/loading';
import type { Place } from '@drumline/network';
import type { Cache, Drum } from '@drumline/stock';
import {
  cents,
  centsPerLitre,
  feet,
  hours,
  inches,
  kilograms,
  kilogramsPerLitre,
  knots,
  litres,
  minutes,
  nauticalMiles,
  pounds,
  poundsPerHour,
} from '@drumline/units';
import type { HelicopterTask, Scenario } from './scenario.js';

/**
 * For tests: one base (HOM), two strips (NOR at 50 NM, SOU at 80 NM), one aeroplane of one type that takes four
 * drums, one pilot, five days. NOR starts with 4 drums, SOU with 3; each wants a minimum of 400 L.
 */
export function tinyTerritory(changes: Partial<Scenario> = {}): Scenario {
  return {
    format: 'drumline-scenario/1',
    title: 'Tiny territory',
    timeZone: 'Etc/GMT',
    asOf: '2031-03-03T05:00Z',
    firstDay: '2031-03-03',
    days: 5,
    offeredDays: 3,
    currency: 'cr',
    policy: tinyPolicy,
    places: [tinyPlace('HOM', 60), tinyPlace('NOR', 60.83), tinyPlace('SOU', 58.67)],
    distances: [
      tinyDistance('HOM', 'NOR', 50),
      tinyDistance('HOM', 'SOU', 80),
      tinyDistance('NOR', 'SOU', 125),
    ],
    winds: [],
    surfaceReports: [],
    notices: [],
    noFlyingDays: [],
    weather: [],
    aircraftTypes: [tinyType],
    stripLimits: ['HOM', 'NOR', 'SOU'].map((place) => ({
      place,
      type: 'T',
      takeoffLb: pounds(7000),
      landingLb: pounds(6800),
      whenSoft: { takeoffLessLb: pounds(500), landingLessLb: pounds(900) },
      reference: 'tiny table',
    })),
    aircraft: [{ tail: 'T1', type: 'T', home: 'HOM', absences: [] }],
    helicopters: [{ id: 'H', name: 'helicopter', fuelLitresPerHour: 100, drumsPerLift: 3 }],
    pilots: [{ id: 'P1', types: ['T'], stripClasses: [1, 2], lastLandings: [], daysOff: [], flown: [] }],
    batches: [tinyBatch],
    drums: [...tinyDrums('NOR', 4, 100), ...tinyDrums('SOU', 3, 200), ...tinyDrums('HOM', 20, 300)],
    caches: [tinyCache('NOR'), tinyCache('SOU')],
    bases: [
      {
        place: 'HOM',
        bulkLitres: litres(20_000),
        pricePerLitre: centsPerLitre(150),
        fillDrumsPerDay: 10,
        emptiesFitForUse: 30,
        resupplies: [],
      },
    ],
    counts: [],
    programmes: [{ code: 'P', name: 'survey', recharge: { kind: 'not recharged' } }],
    helicopterTasks: [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-05', 'SOU', 300)],
    slings: [],
    plannedUplifts: [],
    bookedFlights: [],
    flights: [],
    handPlan: [],
    ...changes,
  };
}

export function tinyTask(date: string, place: string, amount: number): HelicopterTask {
  return { date, helicopter: 'H', programme: 'P', place, hours: hours(amount / 100), litres: litres(amount) };
}

export function tinyCache(place: string, changes: Partial<Cache> = {}): Cache {
  return {
    place,
    minimumLitres: litres(400),
    criticalLitres: litres(200),
    medevacReserveLitres: litres(0),
    capacityDrums: 12,
    empties: 0,
    ...changes,
  };
}

/** Full sealed drums of the tiny batch, numbered from `firstNumber`. */
export function tinyDrums(place: string, count: number, firstNumber: number): Drum[] {
  return Array.from({ length: count }, (_, i) => ({
    number: String(firstNumber + i).padStart(4, '0'),
    batch: tinyBatch.id,
    place,
    content: 'filled sealed',
    litres: litres(200),
    tareKg: kilograms(20),
    grossKg: kilograms(180),
  }));
}

export function tinyPlace(code: string, latitudeDeg: number, changes: Partial<Place> = {}): Place {
  return {
    code,
    name: code,
    kind: code === 'HOM' ? 'base' : 'strip',
    latitudeDeg,
    longitudeDeg: 0,
    elevationFt: feet(500),
    stripClass: code === 'HOM' ? 1 : 2,
    runway: {
      lengthFt: feet(2000),
      slopePercent: 0,
      material: 'gravel',
      oneWay: false,
      tailwindLimitKt: knots(10),
      committalPoint: null,
    },
    landingCapacityDrumsPerDay: code === 'HOM' ? null : 8,
    surface: { staleAfterHours: hours(24), expected: 'dry' },
    ...changes,
  };
}

const tinyDistance = (from: string, to: string, distance: number) => ({
  between: [from, to] as const,
  distanceNm: nauticalMiles(distance),
});

const tinyBatch = {
  id: 'B1',
  grade: 'Jet A-1',
  filledOn: '2031-01-01',
  retestDue: '2032-01-01',
  densityAt15KgPerLitre: kilogramsPerLitre(0.8),
  filledAt: ['HOM'],
};

const tinyPlaces = (arms: readonly number[]) =>
  arms.map((arm, i) => ({
    id: `R${i + 1}`,
    armIn: inches(arm),
    limitLb: pounds(450),
    unloadOrder: arms.length - i,
  }));

const tinyType: AircraftType = {
  id: 'T',
  name: 'single turboprop',
  maxTakeoffLb: pounds(7000),
  maxLandingLb: pounds(6800),
  maxZeroFuelLb: pounds(6500),
  cruiseKt: knots(125),
  fuelFlowLbPerHour: poundsPerHour(300),
  climbAllowanceLb: pounds(20),
  taxiFuelLb: pounds(20),
  fuelCapacityLb: pounds(2000),
  fuelArmIn: inches(140),
  envelope: [
    { weightLb: pounds(3800), forwardIn: inches(120), aftIn: inches(160) },
    { weightLb: pounds(7000), forwardIn: inches(120), aftIn: inches(160) },
  ],
  configurations: [
    {
      id: 'drums',
      name: 'drums on boards',
      operatingWeightLb: pounds(4000),
      operatingArmIn: inches(138),
      drumPositions: tinyPlaces([130, 135, 150, 155]),
      seats: [],
      freightPlaces: tinyPlaces([140]),
    },
  ],
  drumConfiguration: 'drums',
  tipArmIn: null,
  costPerBlockHour: cents(90_000),
  landingFee: cents(500),
  turnRoundMinutes: minutes(30),
  reference: 'tiny handbook',
};

const tinyPolicy: Scenario['policy'] = {
  drum: {
    grossKg: kilograms(180),
    tareKg: kilograms(20),
    emptyKg: kilograms(20),
    fillLitres: litres(200),
    brimLitres: litres(216),
    handlingCost: cents(900),
  },
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
  fuel: {
    reference: 'tiny fuel policy',
    contingencyPercent: 10,
    finalReserveMinutes: minutes(45),
    roundUpToLb: pounds(10),
    fixedMinutesPerLeg: minutes(3),
  },
  passengers: { drumsWithPassengers: 'refused', reference: 'tiny manual' },
  crew: {
    reference: 'tiny crew rules',
    flightHoursPerDay: hours(7),
    dutyHoursPerDay: hours(12),
    flightHoursPer7Days: hours(32),
    recencyDays: [{ stripClass: 3, days: 90 }],
  },
  flyingDay: { firstDeparture: '07:00', lastLanding: '17:00', daylightMarginMinutes: minutes(30) },
  countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'tiny count rule' },
  changePrice: cents(10_000),
};
