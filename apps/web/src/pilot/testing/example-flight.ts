import type { MyDay, PhoneFlight } from '@drumline/contract';
import {
  checkLoad,
  type LoadPlace,
  type LoadSheetRequest,
  makeLoadSheet,
  type RouteRequest,
  routeLoad,
} from '@drumline/loading';
import {
  cents,
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

const place = (code: string) => ({
  code,
  name: code,
  kind: 'strip' as const,
  latitudeDeg: 0,
  longitudeDeg: 0,
  elevationFt: feet(2400),
  stripClass: 3 as const,
  runway: {
    lengthFt: feet(1250),
    slopePercent: 8,
    material: 'earth',
    oneWay: true,
    tailwindLimitKt: knots(3),
    committalPoint: '1.1 NM final, at the stream fork',
  },
  landingCapacityDrumsPerDay: null,
  surface: { staleAfterHours: hours(6), expected: 'dry' as const },
});

const end = (code: string) => ({
  place: place(code),
  surface: 'dry' as const,
  limit: {
    place: code,
    type: 'T',
    takeoffLb: pounds(7900),
    landingLb: pounds(7700),
    whenSoft: { takeoffLessLb: pounds(500), landingLessLb: pounds(450) },
    reference: 'made up',
  },
});

const drumPlace = (row: number, side: string): LoadPlace => ({
  id: `R${row}${side}`,
  armIn: inches(150 + 30 * row),
  limitLb: pounds(450),
  unloadOrder: 3 - row,
});

/** A made-up aeroplane with round figures and two rows of two, to XGAN and back. */
const routeRequest: RouteRequest = {
  type: {
    id: 'T',
    name: 'example',
    maxTakeoffLb: pounds(8000),
    maxLandingLb: pounds(7800),
    maxZeroFuelLb: pounds(7500),
    cruiseKt: knots(150),
    fuelFlowLbPerHour: poundsPerHour(300),
    climbAllowanceLb: pounds(20),
    taxiFuelLb: pounds(30),
    fuelCapacityLb: pounds(2000),
    fuelArmIn: inches(190),
    envelope: [
      { weightLb: pounds(4000), forwardIn: inches(170), aftIn: inches(200) },
      { weightLb: pounds(8000), forwardIn: inches(178), aftIn: inches(200) },
    ],
    configurations: [
      {
        id: 'drums',
        name: 'seats out',
        operatingWeightLb: pounds(4500),
        operatingArmIn: inches(185),
        drumPositions: [1, 2].flatMap((row) => [drumPlace(row, 'L'), drumPlace(row, 'R')]),
        seats: [],
        freightPlaces: [],
      },
    ],
    drumConfiguration: 'drums',
    tipArmIn: null,
    costPerBlockHour: cents(100_000),
    landingFee: cents(2_500),
    turnRoundMinutes: minutes(30),
    reference: 'made up',
  },
  configuration: 'drums',
  legs: ['XMER', 'XGAN'].map((from, leg) => ({
    from: end(from),
    to: end(leg === 0 ? 'XGAN' : 'XMER'),
    distanceNm: nauticalMiles(75),
    windKt: null,
    passengers: 0,
    passengersKg: kilograms(0),
    freightKg: kilograms(0),
    upliftOnArrival: false,
  })),
  fuelPolicy: {
    reference: 'made up',
    contingencyPercent: 10,
    finalReserveMinutes: minutes(45),
    roundUpToLb: pounds(10),
    fixedMinutesPerLeg: minutes(3),
  },
  passengerRule: { drumsWithPassengers: 'refused', reference: 'manual 8.2' },
  drum: { grossKg: kilograms(180), tareKg: kilograms(20), emptyKg: kilograms(20) },
};

const drum = (number: string, position: string, grossKg: number) => ({
  number,
  position,
  batch: 'J27-012',
  grossKg: kilograms(grossKg),
  tareKg: kilograms(20),
  litres: litres(200),
  offAfterLeg: 0,
});

const particularsSet = {
  reference: 'manual 9.1',
  packaging: 'steel drum 1A1',
  emergencyContact: 'desk 0000, day and night',
  fields: [],
};

const request: LoadSheetRequest = {
  flight: {
    id: 'F06',
    aircraft: 'A1',
    date: '2027-06-15',
    departs: '07:10',
    pilot: 'FW1',
    version: 3,
    replaces: 2,
  },
  load: {
    request: routeRequest,
    route: routeLoad(routeRequest),
    drums: [drum('0434', 'R1L', 179), drum('0435', 'R1R', 179.7), drum('0437', 'R2L', 180.4)],
    cargo: [],
  },
  landingHours: { timeZone: 'UTC', lastLanding: '20:00', daylightMarginMinutes: minutes(30) },
  alternates: [[], []],
  goods: {
    set: particularsSet,
    others: [],
    citedApproval: null,
    approvalsOnFile: [],
  },
  tieDown: null,
  toleranceLb: pounds(10),
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
};

/** F06 with three drums for XGAN: 395, 396 and 398 lb on its sheet. */
export const exampleFlight: PhoneFlight = {
  id: 'F06',
  state: 'given',
  version: 3,
  needsDecision: null,
  date: '2027-06-15',
  departs: '07:10',
  aircraft: 'A1',
  route: ['XMER', 'XGAN', 'XMER'],
  stops: [{ place: 'XGAN', drums: ['0434', '0435', '0437'], drumsIfSoft: 2, planned: null }],
  lastAct: 'give',
  changedAt: '2027-06-14T17:00:00Z',
  changedByName: 'D. Patcher',
  reason: null,
  sheet: makeLoadSheet(request),
  request,
  why: null,
  balance: checkLoad(request.load).balance.moments,
};

const { latitudeDeg: _latitude, longitudeDeg: _longitude, ...xgan } = place('XGAN');

/** The same day: 0436 of 182 kg stands at the base, one of the load too. */
export const exampleDay: MyDay = {
  format: 'my-day/1',
  at: '2027-06-15T06:00:00Z',
  serverAt: '2027-06-15T06:00:00Z',
  timeZone: 'UTC',
  today: '2027-06-15',
  crew: 'FW1',
  places: [{ ...xgan, drums: 6, capacityDrums: 24 }],
  surfaceReports: [],
  drums: ['0434', '0436'].map((number, at) => ({
    number,
    place: 'XMER',
    batch: 'J27-012',
    kg: 179 + 3 * at,
    tareKg: 20,
    litres: 200,
    held: null,
  })),
  sameReports: [],
  flights: [exampleFlight],
};

let made = 0;

/** Whoever reports, at 06:21 by base's clock. */
export const exampleReporter = {
  by: 'A. Pilot',
  clock: {
    phoneAt: '2027-06-15T06:21:30.500Z',
    at: '2027-06-15T06:21:30.500Z',
    serverAheadMs: 0,
  },
  newId: () => {
    made += 1;
    return `id-${made}`;
  },
};
