import { type PermittedAct, scenarioSchema, settingsSchema } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import type { z } from 'zod';

const shape = scenarioSchema.shape;

/** The lists of a scenario document that a person keeps; stock, flights and reports come from what happened. */
type KeptList =
  | 'places'
  | 'distances'
  | 'winds'
  | 'notices'
  | 'weather'
  | 'aircraftTypes'
  | 'stripLimits'
  | 'aircraft'
  | 'helicopters'
  | 'pilots'
  | 'batches'
  | 'caches'
  | 'bases'
  | 'programmes'
  | 'helicopterTasks'
  | 'slings'
  | 'plannedUplifts'
  | 'bookedFlights'
  | 'approvals'
  | 'tieDown'
  | 'handPlan';

/** One kind of thing in the territory: what it is called, what it looks like, what names it, who may change it. */
export interface Kind {
  /** As in the address: /api/strip-limits. */
  readonly name: string;
  readonly singular: string;
  readonly schema: z.ZodType;
  /** Where it stands in a scenario; null: its fields stand in the document itself. */
  readonly list: KeptList | null;
  /** The name that is in the thing itself; null: the sender makes a UUID. */
  readonly idOf: ((data: unknown) => string) | null;
  /** The line of the permission table that stands for changing it; `enter` in it is enough. */
  readonly act: PermittedAct;
  /** By the same line, or by everybody of the operator. */
  readonly seenBy: 'the line' | 'the operator';
  /** Pilot or helicopter whose own it is, for those who see their own only. */
  readonly crewOf: (data: unknown) => string | null;
  /** The thing as it is kept once these people have put their names to it. */
  readonly withNames: (data: unknown, agreedBy: readonly string[]) => unknown;
}

interface Rest<Line> {
  readonly idOf?: (line: Line) => string;
  readonly seenBy?: Kind['seenBy'];
  readonly crewOf?: (line: Line) => string;
  /** As it is sent, where that is not as it is kept. */
  readonly schema?: z.ZodType;
}

function list<List extends KeptList>(
  list: List,
  name: string,
  singular: string,
  act: PermittedAct,
  { idOf, seenBy, crewOf, schema }: Rest<NonNullable<Scenario[List]>[number]>,
): Kind {
  return {
    name,
    singular,
    schema: schema ?? elementOf(shape[list]),
    list,
    act,
    idOf: (idOf as Kind['idOf'] | undefined) ?? null,
    seenBy: seenBy ?? 'the operator',
    crewOf: (crewOf as Kind['crewOf'] | undefined) ?? (() => null),
    withNames:
      list === 'approvals' ? (data, agreedBy) => ({ ...(data as object), agreedBy }) : (data) => data,
  };
}

/** A list that a document may do without stands in a wrapping. */
const elementOf = (list: z.ZodArray | z.ZodExactOptional<z.ZodArray>): z.ZodType =>
  'element' in list ? (list.element as z.ZodType) : (list.unwrap().element as z.ZodType);

/**
 * Kept lists, in the order of the document. What the permission table has no line for is changed by whoever may
 * import a whole territory.
 */
const lists: readonly Kind[] = [
  list('places', 'places', 'place', 'import and export', { idOf: ({ code }) => code }),
  list('distances', 'distances', 'distance', 'import and export', {
    idOf: ({ between }) => [...between].sort().join('-'),
  }),
  list('winds', 'winds', 'planned wind', 'import and export', {}),
  list('notices', 'notices', 'hazard notice', 'report surface', { idOf: ({ id }) => id }),
  list('weather', 'weather', 'weather odds', 'import and export', { idOf: ({ place }) => place }),
  list('aircraftTypes', 'aircraft-types', 'aircraft type', 'strip limits', { idOf: ({ id }) => id }),
  list('stripLimits', 'strip-limits', 'strip limit', 'strip limits', {
    idOf: ({ place, type }) => `${place}-${type}`,
  }),
  list('aircraft', 'aircraft', 'aircraft', 'aircraft availability', { idOf: ({ tail }) => tail }),
  list('helicopters', 'helicopters', 'helicopter', 'import and export', { idOf: ({ id }) => id }),
  list('pilots', 'pilots', 'pilot', 'crew records', {
    idOf: ({ id }) => id,
    seenBy: 'the line',
    crewOf: ({ id }) => id,
  }),
  list('batches', 'batches', 'batch', 'fill', { idOf: ({ id }) => id }),
  list('caches', 'caches', 'cache', 'minimums', { idOf: ({ place }) => place }),
  list('bases', 'bases', 'base', 'prices', { idOf: ({ place }) => place }),
  list('programmes', 'programmes', 'programme', 'prices', { idOf: ({ code }) => code }),
  list('helicopterTasks', 'helicopter-tasks', 'helicopter task', 'programme', {
    seenBy: 'the line',
    crewOf: ({ helicopter }) => helicopter,
  }),
  list('slings', 'slings', 'sling move', 'programme', {
    seenBy: 'the line',
    crewOf: ({ helicopter }) => helicopter,
  }),
  list('plannedUplifts', 'planned-uplifts', 'planned uplift', 'programme', { seenBy: 'the line' }),
  list('bookedFlights', 'booked-flights', 'booked flight', 'programme', {
    idOf: ({ id }) => id,
    seenBy: 'the line',
  }),
  list('approvals', 'authority-approvals', 'approval of the authority', 'passenger approval', {
    idOf: ({ number }) => number,
    schema: shape.approvals.unwrap().element.omit({ agreedBy: true }),
  }),
  list('tieDown', 'tie-down', 'tie-down', 'policy', { idOf: ({ type }) => type }),
  list('handPlan', 'hand-plan', 'flight planned by hand', 'run plan', {
    idOf: ({ id }) => id,
    seenBy: 'the line',
  }),
];

const theOne = (name: string, schema: z.ZodType, act: PermittedAct): Kind => ({
  name,
  singular: name,
  schema,
  list: null,
  act,
  idOf: () => 'current',
  seenBy: 'the operator',
  crewOf: () => null,
  withNames: (data) => data,
});

export const kinds: readonly Kind[] = [
  theOne('settings', settingsSchema, 'import and export'),
  theOne('policy', shape.policy, 'policy'),
  {
    ...theOne('dangerous-goods', shape.dangerousGoods.unwrap(), 'policy'),
    singular: 'particulars of dangerous goods',
  },
  ...lists,
];

export const kindNamed = (name: string): Kind => {
  const found = kinds.find((kind) => kind.name === name);
  if (found === undefined) throw new Error(`no kind ${name}`);
  return found;
};
