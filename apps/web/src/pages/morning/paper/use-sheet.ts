import { addDays, kilogramsPerLitre, litres } from '@drumline/units';
import { useList, useMay, useNow, useRead, useReads, useSettings } from '../../../api/index.js';
import { useDipTables } from '../../../counting/dips.js';
import {
  batchSchema,
  drumSchema,
  flightSchema,
  listedFlightSchema,
  placeSchema,
  policySchema,
  programmeSchema,
} from './paper-read.js';
import type { Sheet } from './sheet.js';

/** What the person says of every line of the sheet. */
export type Head = Pick<Sheet, 'day' | 'means' | 'by'>;

/** The rest of it: what base knows, by which lines are read. */
export const useSheet = (head: Head): Sheet => ({
  ...head,
  now: useNow().toISOString(),
  timeZone: useSettings().value?.data.timeZone ?? 'UTC',
  ...useFlights(head.day),
  drums: (useList('/api/drums', drumSchema).value ?? []).map(({ number, litres: inIt, where, ...drum }) => ({
    ...{ number, litres: litres(inIt), retestDue: drum.retestDue },
    sealed: drum.content === 'filled sealed',
    held: drum.held !== null || drum.condemned !== null || drum.retestDue === null,
    place: where.kind === 'at' ? (where.place ?? null) : null,
  })),
  places: (useList('/api/places', placeSchema).value ?? []).map(({ data }) => data),
  programmes: (useList('/api/programmes', programmeSchema).value ?? []).map(({ data }) => data.code),
  ...usePolicy(),
  batches: (useList('/api/batches', batchSchema).value ?? []).map(({ data }) => ({
    id: data.id,
    densityAt15KgPerLitre: kilogramsPerLitre(data.densityAt15KgPerLitre),
  })),
  mayFill: useMay()('fill', 'enter'),
  dipTables: useDipTables(),
});

/** Those that a crew may have something to say of, from the days around that of the sheet. */
const useFlights = (day: string): Pick<Sheet, 'flights' | 'notGiven'> => {
  const around = `from=${addDays(day, -2)}&until=${addDays(day, 1)}`;
  const listed = useList(`/api/flights?${around}`, listedFlightSchema).value ?? [];
  const paths = listed
    .filter(({ state }) => !unsaid.includes(state))
    .map(({ id }) => `/api/flights/${encodeURIComponent(id)}`);
  return {
    flights: useReads(paths, flightSchema).flatMap(({ value }) =>
      value === undefined ? [] : { ...value, legs: value.planned.legs.length },
    ),
    notGiven: listed.filter(({ state }) => unsaid.includes(state)),
  };
};

const usePolicy = (): Pick<
  Sheet,
  'fillLitres' | 'countTolerance' | 'bookDensityKgPerLitre' | 'densityTolerance'
> => {
  const policy = useRead('/api/policy/current', policySchema).value?.data;
  return {
    countTolerance: policy?.countTolerance ?? noneAllowed,
    fillLitres: policy?.drum?.fillLitres ?? 200,
    densityTolerance: policy?.densityTolerance ?? null,
    bookDensityKgPerLitre: kilogramsPerLitre(policy?.bookDensityKgPerLitre ?? 0.8),
  };
};

const noneAllowed = { percentOfBook: 0, litresPerOpenDrum: litres(0), reference: '' };

const unsaid = ['offered', 'declined', 'called off', 'closed'];
