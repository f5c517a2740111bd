import type { MyDay, PhoneFlight } from '@drumline/contract';
import { type LoadSheetRequest, makeLoadSheet, type RouteRequest } from '@drumline/loading';
import {
  exampleLoad,
  examplePlace,
  exampleRequest,
  exampleSheetRequest,
  standing,
} from '@drumline/loading/examples';
import type { Place } from '@drumline/network';
import { feet, hours, knots } from '@drumline/units';

/** A one-way strip with a committal point. */
const xgan: Place = {
  ...examplePlace('XGAN'),
  elevationFt: feet(2400),
  stripClass: 3,
  runway: {
    lengthFt: feet(1250),
    slopePercent: 8,
    material: 'earth',
    oneWay: true,
    tailwindLimitKt: knots(3),
    committalPoint: '1.1 NM final, at the stream fork',
  },
  surface: { staleAfterHours: hours(6), expected: 'dry' },
};

const route = ['XMER', 'XGAN', 'XMER'];

/** The example flight, to XGAN and back. */
const routeRequest = ({ legs: [out, home], ...rest }: RouteRequest): RouteRequest => ({
  ...rest,
  legs: [
    { ...out!, to: { ...out!.to, place: xgan } },
    { ...home!, from: { ...home!.from, place: xgan } },
  ],
});

const example = exampleSheetRequest(
  exampleLoad(
    route,
    [standing('0434', 'R1L', 19), standing('0435', 'R1R', 19.7), standing('0437', 'R2L', 20.4)],
    routeRequest(exampleRequest(route)),
  ),
);

const request: LoadSheetRequest = {
  ...example,
  flight: { ...example.flight, id: 'F06', aircraft: 'A1', pilot: 'FW1' },
  goods: {
    ...example.goods,
    set: {
      reference: 'manual 9.1',
      packaging: 'steel drum 1A1',
      emergencyContact: 'desk 0000, day and night',
      fields: [],
    },
  },
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
  route,
  stops: [{ place: 'XGAN', drums: ['0434', '0435', '0437'], drumsIfSoft: 2, planned: null }],
  lastAct: 'give',
  changedAt: '2027-06-14T17:00:00Z',
  changedByName: 'D. Patcher',
  reason: null,
  sheet: makeLoadSheet(request),
  request,
  why: null,
};

const { latitudeDeg: _latitude, longitudeDeg: _longitude, ...phonePlace } = xgan;

/** The same day: 0436 of 182 kg stands at the base, one of the load too. */
export const exampleDay: MyDay = {
  format: 'my-day/1',
  at: '2027-06-15T06:00:00Z',
  serverAt: '2027-06-15T06:00:00Z',
  timeZone: 'UTC',
  today: '2027-06-15',
  crew: 'FW1',
  places: [{ ...phonePlace, drums: 6, capacityDrums: 24 }],
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
  brimLitres: 216,
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
