import type { Fault, PermittedAct } from '@drumline/contract';
import {
  parseScenario,
  scenarioJsonSchema,
  scenarioSchema,
  settingsSchema,
  shapeFaults,
} from '@drumline/contract';
import { z } from 'zod';
import { type FieldSpec, fieldSpec } from './form/field-spec.js';

type Shape = typeof scenarioSchema.shape;

/** One kind of thing that people keep. */
export interface Section {
  /** As in the address, of the page and of the server: `strip-limits`. */
  readonly name: string;
  readonly title: string;
  /** One of it, in a sentence: "strip limit". */
  readonly one: string;
  /** Where it stands in the scenario document. */
  readonly list: keyof Shape | 'settings';
  /** Fields that name it, in the thing itself; null: it gets a number that nobody sees. */
  readonly named: readonly string[] | null;
  /** Fields shown in the list, after the name. */
  readonly columns: readonly string[];
  /** Shorter heads of the list than the labels of the form. */
  readonly heads: Readonly<Record<string, string>>;
  readonly act: PermittedAct;
}

const section = (
  list: Section['list'],
  [title, one]: readonly [string, string],
  act: PermittedAct,
  rest: {
    readonly named?: readonly string[];
    readonly columns?: readonly string[];
    readonly heads?: Section['heads'];
  },
): Section => ({
  name: list.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
  title,
  one,
  list,
  act,
  named: rest.named ?? null,
  columns: rest.columns ?? [],
  heads: rest.heads ?? {},
});

const files = 'import and export';

/** In the order in which a territory is made, by group. */
export const groups: readonly (readonly [heading: string, sections: readonly Section[]])[] = [
  [
    'Territory',
    [
      section('settings', ['Territory', 'territory'], files, { named: [] }),
      section('places', ['Places', 'place'], files, {
        named: ['code'],
        columns: ['name', 'kind', 'stripClass', 'landingCapacityDrumsPerDay', 'latitudeDeg', 'longitudeDeg'],
      }),
      section('distances', ['Distances', 'distance'], files, { named: ['between'], columns: ['distanceNm'] }),
      section('winds', ['Planned winds', 'planned wind'], files, {
        columns: ['from', 'to', 'componentKt', 'dates'],
      }),
      section('notices', ['Hazard notices', 'hazard notice'], 'report surface', {
        named: ['id'],
        columns: ['places', 'from', 'until', 'text'],
      }),
      section('weather', ['Weather odds', 'line of weather odds'], files, {
        named: ['place'],
        columns: ['morningCancel', 'afternoonCancel'],
      }),
    ],
  ],
  [
    'Fuel',
    [
      section('bases', ['Bases: fuel, price', 'base'], 'prices', {
        named: ['place'],
        columns: ['bulkLitres', 'pricePerLitre', 'fillDrumsPerDay', 'emptiesFitForUse'],
      }),
      section('caches', ['Caches: levels', 'cache'], 'minimums', {
        named: ['place'],
        columns: ['minimumLitres', 'criticalLitres', 'medevacReserveLitres', 'capacityDrums'],
      }),
      section('batches', ['Batches', 'batch'], 'fill', {
        named: ['id'],
        columns: ['grade', 'filledOn', 'retestDue'],
      }),
    ],
  ],
  [
    'Aircraft and crews',
    [
      section('aircraftTypes', ['Aircraft types', 'aircraft type'], 'strip limits', {
        named: ['id'],
        columns: ['name', 'maxTakeoffLb', 'maxLandingLb', 'reference'],
      }),
      section('stripLimits', ['Strip limits', 'strip limit'], 'strip limits', {
        named: ['place', 'type'],
        columns: ['takeoffLb', 'landingLb', 'reference'],
      }),
      section('aircraft', ['Tails, availability', 'tail'], 'aircraft availability', {
        named: ['tail'],
        columns: ['type', 'home', 'absences'],
      }),
      section('helicopters', ['Helicopters', 'helicopter'], files, {
        named: ['id'],
        columns: ['name', 'fuelLitresPerHour', 'drumsPerLift'],
      }),
      section('pilots', ['Pilots', 'pilot'], 'crew records', {
        named: ['id'],
        columns: ['types', 'stripClasses', 'daysOff', 'lastLandings'],
      }),
    ],
  ],
  [
    'Programme',
    [
      section('programmes', ['Customers, recharge', 'programme'], 'prices', {
        named: ['code'],
        columns: ['name', 'recharge'],
      }),
      section('helicopterTasks', ['Helicopter tasks', 'helicopter task'], 'programme', {
        columns: ['date', 'helicopter', 'programme', 'place', 'hours', 'litres'],
      }),
      section('slings', ['Slings', 'sling'], 'programme', {
        columns: ['date', 'helicopter', 'from', 'to', 'drums'],
        heads: { from: 'From', to: 'To' },
      }),
      section('bookedFlights', ['Booked flights', 'booked flight'], 'programme', {
        named: ['id'],
        columns: ['date', 'aircraft', 'purpose', 'legs'],
      }),
      section('plannedUplifts', ['Planned uplifts', 'planned uplift'], 'programme', {
        columns: ['date', 'place', 'litres', 'for'],
      }),
    ],
  ],
  [
    'Rules',
    [
      section('policy', ['Fuel, crew, drum rules', 'rules'], 'policy', { named: [] }),
      section('tieDown', ['Tie-down', 'tie-down'], 'policy', { named: ['type'], columns: ['factors'] }),
      section('dangerousGoods', ['Dangerous goods', 'set of particulars'], 'policy', { named: [] }),
    ],
  ],
];

export const sections: readonly Section[] = groups.flatMap(([, each]) => each);

export const sectionAt = (list: string): Section => sections.find((each) => each.list === list)!;

/** Settings, policy, particulars: there is one of each. */
export const isTheOne = ({ named }: Section): boolean => named?.length === 0;

const settingsJson = z.toJSONSchema(settingsSchema, { io: 'input' });
const scenarioJson = scenarioJsonSchema();
const defs = (scenarioJson.$defs ?? {}) as Parameters<typeof fieldSpec>[1];

export const specOf = ({ list }: Pick<Section, 'list'>, currency: string): FieldSpec => {
  const field = scenarioJson.properties?.[list] as { readonly items?: object } | undefined;
  const schema = list === 'settings' ? settingsJson : (field?.items ?? field!);
  return fieldSpec(schema as Parameters<typeof fieldSpec>[0], defs, currency);
};

/** What is wrong with one thing by itself, before it is laid beside the others. */
export const faultsOfOne = ({ list }: Section, data: unknown): readonly Fault[] => {
  if (list === 'settings') return shapeFaults(settingsSchema, data);
  const field: z.ZodType = scenarioSchema.shape[list];
  const schema = field instanceof z.ZodExactOptional ? (field.unwrap() as z.ZodType) : field;
  return shapeFaults(schema instanceof z.ZodArray ? (schema.element as z.ZodType) : schema, data);
};

/** What looks wrong about one thing by itself and keeps nothing out. */
export const doubtsOfOne = (section: Section, data: unknown): readonly Fault[] => {
  const { list } = section;
  const format = scenarioSchema.shape.format.value;
  const { doubts } = parseScenario({ format, [list]: isTheOne(section) ? data : [data] });
  return doubts.map((doubt) => ({ ...doubt, path: doubt.path.replace(/^[^.[]+(\[0\])?\.?/, '') }));
};

/** The name of a thing as the server calls it; null: it has none of its own. */
export const nameIn = ({ named }: Section, data: unknown): string | null => {
  if (named === null) return null;
  if (named.length === 0) return 'current';
  const parts = named.flatMap((field) => {
    const value: unknown = typeof data === 'object' && data !== null ? Reflect.get(data, field) : undefined;
    return Array.isArray(value) ? [...value].sort() : [value];
  });
  return parts.every((part) => typeof part === 'string' && part !== '') ? parts.join('-') : null;
};
