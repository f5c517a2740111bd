import { printFault } from './faults/fault.js';
import { parseScenario } from './parse-scenario.js';

/** A document before it is read, for tests to spoil. */
// biome-ignore lint/suspicious/noExplicitAny: a test breaks the form on purpose, so that no type can hold it
type Spoilable = any;

/** For tests: one base (XHOM), a strip (XNOR) and a pad (XPAD), one aeroplane, one helicopter, without fault or doubt. */
export const tinyDocument = (): Spoilable => JSON.parse(JSON.stringify(tiny));

/** The faults and doubts of the tiny document after it was spoilt, each as "path: problem remedy". */
export const afterSpoiling = (spoil: (document: Spoilable) => void) => {
  const document = tinyDocument();
  spoil(document);
  const parsed = parseScenario(document);
  return { faults: parsed.ok ? [] : parsed.faults.map(printFault), doubts: parsed.doubts.map(printFault) };
};

/** What a test spoils in the tiny document, and the one thing said of it. */
export type SpoiltCase = readonly [name: string, spoil: (document: Spoilable) => void, said: string];

const surface = { staleAfterHours: 12, expected: 'dry' };
const runway = {
  lengthFt: 2000,
  slopePercent: 1,
  material: 'gravel',
  oneWay: false,
  tailwindLimitKt: 5,
  committalPoint: null,
};
const held = { reason: 'haze', by: 'fuel quality', at: '2031-03-02T09:00Z' };

const tiny = {
  format: 'drumline-scenario/1',
  title: 'Tiny territory',
  timeZone: 'Etc/GMT',
  asOf: '2031-03-03T05:00Z',
  firstDay: '2031-03-03',
  days: 5,
  offeredDays: 3,
  currency: 'cr',
  policy: {
    drum: { grossKg: 180, tareKg: 20, emptyKg: 20, fillLitres: 200, brimLitres: 216, handlingCost: 900 },
    bookDensityKgPerLitre: 0.8,
    fuel: {
      reference: 'tiny fuel policy',
      contingencyPercent: 10,
      finalReserveMinutes: 45,
      roundUpToLb: 10,
      fixedMinutesPerLeg: 3,
    },
    passengers: { drumsWithPassengers: 'refused', reference: 'tiny cargo rules' },
    crew: {
      reference: 'tiny crew rules',
      flightHoursPerDay: 7,
      dutyHoursPerDay: 12,
      flightHoursPer7Days: 32,
      recencyDays: [{ stripClass: 3, days: 90 }],
    },
    flyingDay: { firstDeparture: '07:00', lastLanding: '18:00', daylightMarginMinutes: 30 },
    countTolerance: { percentOfBook: 2, litresPerOpenDrum: 10, reference: 'tiny counts' },
    changePrice: 10000,
  },
  places: [
    {
      code: 'XHOM',
      name: 'Home',
      kind: 'base',
      latitudeDeg: 60,
      longitudeDeg: -10,
      elevationFt: 30,
      stripClass: 1,
      runway,
      landingCapacityDrumsPerDay: null,
      surface,
    },
    {
      code: 'XNOR',
      name: 'North',
      kind: 'strip',
      latitudeDeg: 61,
      longitudeDeg: -10,
      elevationFt: 300,
      stripClass: 2,
      runway,
      landingCapacityDrumsPerDay: 6,
      surface,
    },
    {
      code: 'XPAD',
      name: 'Pad',
      kind: 'pad',
      latitudeDeg: 61.2,
      longitudeDeg: -10,
      elevationFt: 1300,
      stripClass: null,
      runway: null,
      landingCapacityDrumsPerDay: null,
      surface,
    },
  ],
  distances: [{ between: ['XHOM', 'XNOR'], distanceNm: 60 }],
  winds: [{ from: 'XHOM', to: 'XNOR', componentKt: -10 }],
  surfaceReports: [
    { place: 'XNOR', state: 'dry', at: '2031-03-02T18:00Z', by: 'strip helper', untilDate: '2031-03-04' },
  ],
  notices: [
    {
      id: 'N1',
      places: ['XPAD'],
      from: '2031-03-06T06:00Z',
      until: '2031-03-06T18:00Z',
      source: 'safety desk',
      text: 'blasting',
    },
  ],
  noFlyingDays: ['2031-03-07'],
  weather: [{ place: 'XNOR', morningCancel: 0.1, afternoonCancel: 0.2 }],
  aircraftTypes: [
    {
      id: 'A',
      name: 'single turboprop',
      maxTakeoffLb: 7150,
      maxLandingLb: 7000,
      maxZeroFuelLb: 6650,
      cruiseKt: 140,
      fuelFlowLbPerHour: 330,
      climbAllowanceLb: 25,
      taxiFuelLb: 25,
      fuelCapacityLb: 1900,
      fuelArmIn: 142,
      envelope: [
        { weightLb: 4000, forwardIn: 131, aftIn: 143.8 },
        { weightLb: 7150, forwardIn: 134.5, aftIn: 143.8 },
      ],
      configurations: [
        {
          id: 'drums',
          name: 'drum boards',
          operatingWeightLb: 4250,
          operatingArmIn: 138,
          drumPositions: [
            { id: 'R1', armIn: 132, limitLb: 450, unloadOrder: 2 },
            { id: 'R2', armIn: 157, limitLb: 450, unloadOrder: 1 },
          ],
          seats: [{ id: 'S1', armIn: 120, limitLb: 250, unloadOrder: 3 }],
          freightPlaces: [],
        },
      ],
      drumConfiguration: 'drums',
      tipArmIn: null,
      costPerBlockHour: 98000,
      landingFee: 0,
      turnRoundMinutes: 35,
      reference: 'tiny type card',
    },
  ],
  stripLimits: [
    {
      place: 'XHOM',
      type: 'A',
      takeoffLb: 7150,
      landingLb: 7000,
      whenSoft: 'closed',
      reference: 'tiny table',
    },
    {
      place: 'XNOR',
      type: 'A',
      takeoffLb: 6900,
      landingLb: 6900,
      whenSoft: { takeoffLessLb: 500, landingLessLb: 450 },
      reference: 'tiny table',
    },
  ],
  aircraft: [
    {
      tail: 'A1',
      type: 'A',
      home: 'XHOM',
      absences: [{ from: '2031-03-06', until: '2031-03-06', reason: 'inspection' }],
    },
  ],
  helicopters: [{ id: 'H1', name: 'light helicopter', fuelLitresPerHour: 110, drumsPerLift: 3 }],
  pilots: [
    {
      id: 'P1',
      types: ['A'],
      stripClasses: [1, 2],
      lastLandings: [{ place: 'XNOR', date: '2031-02-20' }],
      daysOff: [],
      flown: [],
    },
  ],
  batches: [
    {
      id: 'J31',
      grade: 'Jet A-1',
      filledOn: '2030-09-01',
      retestDue: '2031-09-01',
      densityAt15KgPerLitre: 0.8,
      filledAt: ['XHOM'],
    },
  ],
  drums: [
    {
      number: '001',
      batch: 'J31',
      place: 'XHOM',
      content: 'filled sealed',
      litres: 200,
      tareKg: 20,
      grossKg: 180,
    },
    {
      number: '002',
      batch: 'J31',
      place: 'XNOR',
      content: 'filled sealed',
      litres: 200,
      tareKg: 20,
      grossKg: 180,
    },
    {
      number: '003',
      batch: 'J31',
      place: 'XNOR',
      content: 'part used',
      litres: 100,
      openedOn: '2031-03-01',
      tareKg: 20,
      grossKg: 100,
      held,
    },
  ],
  caches: [
    {
      place: 'XNOR',
      minimumLitres: 200,
      criticalLitres: 100,
      medevacReserveLitres: 100,
      capacityDrums: 10,
      empties: 1,
    },
    {
      place: 'XPAD',
      minimumLitres: 0,
      criticalLitres: 0,
      medevacReserveLitres: 0,
      capacityDrums: 4,
      empties: 0,
    },
  ],
  bases: [
    {
      place: 'XHOM',
      bulkLitres: 9000,
      pricePerLitre: 150,
      fillDrumsPerDay: 5,
      emptiesFitForUse: 10,
      resupplies: [],
    },
  ],
  counts: [
    {
      place: 'XNOR',
      at: '2031-03-02T18:00Z',
      litres: 300,
      openDrums: 1,
      by: 'strip helper',
      seenFrom: 'ground',
    },
  ],
  programmes: [{ code: 'P1', name: 'survey', recharge: { kind: 'delivered cost', marginPercent: 8 } }],
  helicopterTasks: [
    { date: '2031-03-04', helicopter: 'H1', programme: 'P1', place: 'XNOR', hours: 1, litres: 110 },
  ],
  slings: [{ date: '2031-03-05', helicopter: 'H1', from: 'XNOR', to: 'XPAD', drums: 1, distanceNm: 12 }],
  plannedUplifts: [{ date: '2031-03-04', place: 'XNOR', litres: 20, for: 'A1 top-up' }],
  bookedFlights: [
    {
      id: 'X1',
      date: '2031-03-04',
      aircraft: 'A1',
      configuration: 'drums',
      purpose: 'one guest',
      legs: [
        { from: 'XHOM', to: 'XNOR', passengers: 1, passengersKg: 90, freightKg: 0 },
        { from: 'XNOR', to: 'XHOM', passengers: 0, passengersKg: 0, freightKg: 0 },
      ],
      heldHours: 1.5,
    },
  ],
  flights: [
    {
      id: 'F1',
      state: 'approved',
      date: '2031-03-03',
      aircraft: 'A1',
      from: 'XHOM',
      stops: [{ place: 'XNOR', drums: 2 }],
      to: 'XHOM',
      pilot: 'P1',
    },
  ],
  handPlan: [],
};
