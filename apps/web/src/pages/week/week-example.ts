import type { Week, WeekBooked, WeekFlight } from './week-read.js';

/** For tests: F1 of A1 to XNOR on the first morning. */
export const exampleFlight = (changes: Partial<WeekFlight> = {}): WeekFlight => ({
  id: 'F1',
  kind: 'positioning',
  state: 'offered',
  version: 1,
  revision: 1,
  needsDecision: null,
  heldInPlace: false,
  unheard: false,
  date: '2031-03-03',
  departs: '08:00',
  aircraft: 'A1',
  pilot: 'FW1',
  route: ['XHOM', 'XNOR', 'XHOM'],
  drums: 4,
  drumsPossible: 4,
  binding: { name: 'strip landing limit', place: 'XNOR' },
  lastAct: 'offer',
  changedAt: '2031-03-03T05:00Z',
  changedByName: 'K. Aske',
  ...changes,
});

export const exampleBooked = (changes: Partial<WeekBooked> = {}): WeekBooked => ({
  id: 'X1',
  date: '2031-03-03',
  aircraft: 'A1',
  purpose: 'mail',
  departs: null,
  heldHours: 1.6,
  route: ['XHOM', 'XSOU', 'XHOM'],
  passengers: 0,
  spareDrums: 3,
  needsDecision: null,
  ...changes,
});

const nothing = { flight: 0, fuel: 0, handling: 0, total: 0, litres: 0, perLitre: null };
const enough = { litreDays: 0, first: null };

/** Three days, two aircraft, no flight. */
export const exampleWeek = (changes: Partial<Week> = {}): Week => ({
  asOf: '2031-03-03T05:00Z',
  today: '2031-03-03',
  days: ['2031-03-03', '2031-03-04', '2031-03-05'].map((date) => ({ date, noFlying: false })),
  aircraft: ['A1', 'A2'].map((tail) => ({ tail, type: 'A', home: 'XHOM', absences: [] })),
  caches: ['XNOR', 'XSOU'],
  flights: [],
  booked: [],
  landings: [],
  cost: nothing,
  flightsCosted: 0,
  tally: { belowCritical: enough, belowMinimum: enough, drums: 0, expectedDrums: 0, bases: [] },
  lastDay: '2031-03-05',
  stripLimitsFrom: ['strip table, revision 12'],
  plan: null,
  heardSince: [],
  stockIsBehind: false,
  ...changes,
});
