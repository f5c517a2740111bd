import {
  decide,
  decideIf,
  decideOwn,
  decideWithSecond,
  enter,
  enterIf,
  enterWithSecond,
  type Line,
  view,
  viewOwn,
} from './permission.js';

const ownToCrews: Line = { pilot: viewOwn, 'helicopter crew': viewOwn };
const seenByOffice: Line = { 'fuel quality': view, accounts: view, engineering: view };
const seenByTheField: Line = {
  dispatcher: view,
  pilot: view,
  'helicopter crew': view,
  storekeeper: view,
};
const draftedAtSetUp: Line = { ...seenByTheField, 'set-up': enterIf('as a draft') };
const decidedByTwo: Line = { 'operations manager': decideWithSecond, 'fuel quality': decideWithSecond };
const reportedAnywhere: Line = { dispatcher: enterIf('by radio'), pilot: enter, 'helicopter crew': enter };

/** Who may do what. What a customer's field leader sees stands in the last two lines, and is all that he sees. */
export const permissionTable = {
  'run plan': {
    'operations manager': decide,
    dispatcher: decideIf('from now, inside the week'),
    ...seenByOffice,
  },
  'approve flight': {
    'operations manager': decide,
    dispatcher: decide,
    ...ownToCrews,
    storekeeper: view,
    'fuel quality': view,
    accounts: view,
  },
  // No line of the operator's table: who takes a flight to its end stands in docs/flight-states.md.
  'close flight': { 'operations manager': decide, dispatcher: view, ...ownToCrews, accounts: decide },
  'let go flight': { 'operations manager': decide, dispatcher: decide },
  'assign crew': { 'operations manager': view, dispatcher: decide, ...ownToCrews },
  'report surface': {
    'operations manager': enter,
    dispatcher: enter,
    pilot: enter,
    'helicopter crew': enter,
    'fuel quality': view,
  },
  'strip limits': { ...decidedByTwo, ...draftedAtSetUp },
  load: {
    'operations manager': view,
    dispatcher: enter,
    pilot: decideIf('as commander'),
    'helicopter crew': decideOwn,
    storekeeper: enter,
    'fuel quality': view,
  },
  delivery: {
    'operations manager': view,
    ...reportedAnywhere,
    storekeeper: enterIf('at base'),
    'fuel quality': view,
    accounts: view,
  },
  draw: {
    'operations manager': view,
    ...reportedAnywhere,
    storekeeper: enter,
    'fuel quality': view,
    accounts: view,
  },
  fill: {
    'operations manager': view,
    dispatcher: view,
    storekeeper: enter,
    'fuel quality': view,
    accounts: view,
  },
  count: {
    'operations manager': enter,
    dispatcher: enter,
    pilot: enter,
    'helicopter crew': enter,
    storekeeper: enter,
    'fuel quality': enter,
  },
  'close difference case': { ...decidedByTwo, storekeeper: enter, accounts: view },
  'look at raised': {
    'operations manager': enter,
    dispatcher: enter,
    storekeeper: enter,
    'fuel quality': enter,
    accounts: view,
  },
  // No line of the operator's table either: those who sit at the dispatcher's desk.
  'hand over': { 'operations manager': enter, dispatcher: enter },
  hold: {
    'operations manager': decide,
    dispatcher: decide,
    pilot: enterIf('one drum'),
    'helicopter crew': enterIf('one drum'),
    storekeeper: enterIf('one drum'),
    'fuel quality': decide,
    accounts: view,
  },
  'release hold': { 'fuel quality': decideWithSecond },
  'medevac draw': {
    'operations manager': enter,
    dispatcher: enter,
    pilot: enter,
    'helicopter crew': enter,
    storekeeper: enter,
    'fuel quality': view,
    accounts: view,
  },
  'plan reserve': {
    'operations manager': decideWithSecond,
    dispatcher: decideWithSecond,
    'fuel quality': view,
    accounts: view,
  },
  programme: { 'operations manager': decide, dispatcher: enter, ...ownToCrews, ...seenByOffice },
  'crew records': {
    'operations manager': decide,
    dispatcher: enter,
    ...ownToCrews,
    'fuel quality': view,
    'set-up': enter,
  },
  policy: { ...decidedByTwo, ...draftedAtSetUp },
  'accept plan': { 'operations manager': decide, dispatcher: decideIf('inside the week'), ...seenByOffice },
  audit: { 'operations manager': view, 'fuel quality': view },
  'import and export': {
    'operations manager': decide,
    dispatcher: enterIf('export'),
    accounts: enterIf('export'),
    'set-up': enter,
  },
  minimums: { 'operations manager': decide, ...seenByTheField, 'fuel quality': view },
  'passenger approval': decidedByTwo,
  'aircraft availability': {
    'operations manager': decide,
    dispatcher: view,
    pilot: view,
    'helicopter crew': view,
    engineering: enter,
  },
  prices: { 'operations manager': decideWithSecond, accounts: enterWithSecond },
  people: { 'operations manager': decide, 'set-up': enter },
  'own programme and litres': { 'field leader': viewOwn },
  'cache levels in words': { 'field leader': view },
} satisfies Readonly<Record<string, Line>>;

export type PermittedAct = keyof typeof permissionTable;

export const permittedActs = Object.keys(permissionTable) as readonly PermittedAct[];
