import type { Scenario } from '@drumline/planning';
import { type DrumsFrom, parseScenario } from './parse-scenario.js';
import { type Settings, settingsSchema } from './scenario/settings-schema.js';

/** Something without which no plan can be made. */
export interface Missing {
  /** Where it is filled in: the settings, or a field of the scenario document. */
  readonly at: 'settings' | keyof Scenario;
  /** The thing there that has a fault, by its own name: "XMER", "XLOR A". Empty: a part is missing, or there is one of it. */
  readonly of: string;
  /** The field with the fault, inside that thing: `runway.lengthFt`. Empty: the thing as a whole. */
  readonly field: string;
  /** What is missing or wrong, in the words of the trade. */
  readonly what: string;
  /** What to do about it. */
  readonly next: string;
}

/**
 * What a scenario document still needs before a plan can be made from it: first what is not there at all, then the faults
 * that parseScenario finds. Empty: a plan can be asked for; whether it brings a drum anywhere is the plan's own answer.
 */
export const missingForPlan = (
  document: Readonly<Record<string, unknown>>,
  drumsFrom: DrumsFrom = 'document',
): readonly Missing[] => {
  const absent = absentParts(document);
  const told = new Set(absent.map(({ at }) => at));
  const parsed = parseScenario(document, drumsFrom);
  const faults = parsed.ok ? [] : parsed.faults;
  const wrong = faults.flatMap(({ path, problem, remedy }): readonly Missing[] => {
    const at = partOf(path);
    return told.has(at) ? [] : [{ at, ...placeOf(path, document), what: problem, next: remedy }];
  });
  return [...absent, ...wrong];
};

const settingsFields: ReadonlySet<string> = new Set<keyof Settings>(
  Object.keys(settingsSchema.shape) as (keyof Settings)[],
);

const partOf = (path: string): Missing['at'] => {
  const field = path.split(/[.[]/)[0]!;
  return settingsFields.has(field) || field === 'asOf' || field === 'firstDay'
    ? 'settings'
    : (field as keyof Scenario);
};

/** `places[3].runway.lengthFt` by the name of that place, and the field inside it. */
const placeOf = (
  path: string,
  document: Readonly<Record<string, unknown>>,
): Pick<Missing, 'of' | 'field'> => {
  if (partOf(path) === 'settings') return { of: '', field: path };
  const [listed, list, index, inside] = /^(\w+)\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
  if (listed === undefined) return { of: '', field: path.split('.').slice(1).join('.') };
  const line = (document[list!] as readonly unknown[])[Number(index)];
  return { of: nameOf(line) ?? `no. ${Number(index) + 1}`, field: inside! };
};

/** The name of its own; a thing without one goes by its place and type. */
const nameOf = (line: unknown): string | undefined => {
  if (typeof line !== 'object' || line === null) return undefined;
  const { code, tail, id, place, type } = line as Line;
  const names = [code ?? tail ?? id ?? place, place !== undefined && id === undefined ? type : undefined];
  const words = names.filter((name) => typeof name === 'string' && name !== '').join(' ');
  return words === '' ? undefined : words;
};

type Line = Readonly<Record<string, unknown>>;

const absentParts = (document: Readonly<Record<string, unknown>>): readonly Missing[] => {
  const lines = (list: keyof Scenario): readonly Line[] => {
    const given = document[list];
    return Array.isArray(given)
      ? given.filter((line): line is Line => typeof line === 'object' && line !== null)
      : [];
  };
  const has = (list: keyof Scenario, isSo: (line: Line) => boolean = () => true) => lines(list).some(isSo);
  const types = new Set(lines('aircraft').map(({ type }) => type));
  const bases = new Set(lines('bases').map(({ place }) => place));
  const caches = new Set(lines('caches').map(({ place }) => place));
  const isFuel = ({ place, content }: Line) => bases.has(place) && content === 'filled sealed';
  const needs: readonly (readonly [boolean, Missing])[] = [
    [
      has('places', ({ kind }) => kind === 'base'),
      need('places', 'a base', 'Give the place where fuel is drummed.'),
    ],
    [
      has('places', ({ kind }) => kind === 'strip'),
      need('places', 'a strip', 'Give a strip that aeroplanes land on.'),
    ],
    [has('bases'), need('bases', 'fuel and price of a base', 'Give what is in bulk there, and its price.')],
    [
      has('caches'),
      need('caches', 'a cache', 'Give minimum, critical level and capacity of the drums at the strip.'),
    ],
    [
      has('aircraftTypes'),
      need(
        'aircraftTypes',
        'an aircraft type',
        'Give its weights, balance and fuel, from its approved manual.',
      ),
    ],
    [
      types.size === 0 || has('stripLimits', ({ place, type }) => caches.has(place) && types.has(type)),
      need(
        'stripLimits',
        'a strip limit of a type that you have, at a cache',
        'A type without a line is not approved at the strip.',
      ),
    ],
    [has('aircraft'), need('aircraft', 'a tail', 'Give an aeroplane and its home base.')],
    [
      has('pilots', ({ types: flown }) => Array.isArray(flown) && flown.some((type) => types.has(type))),
      need('pilots', 'a pilot of a type that you have', 'Give types, strip classes and last landings.'),
    ],
    [
      has('bases', ({ bulkLitres }) => typeof bulkLitres === 'number' && bulkLitres > 0) ||
        has('drums', isFuel),
      need('bases', 'fuel at a base', 'Give litres in bulk, or bring filled drums in.'),
    ],
  ];
  return [...headParts(document), ...needs.flatMap(([isThere, missing]) => (isThere ? [] : [missing]))];
};

const headParts = (document: Readonly<Record<string, unknown>>): readonly Missing[] => [
  ...(typeof document.title === 'string'
    ? []
    : [
        need(
          'settings',
          'title, time zone, days ahead and currency',
          'Give what the territory is called and counts in.',
        ),
      ]),
  ...(typeof document.policy === 'object' && document.policy !== null
    ? []
    : [
        need(
          'policy',
          'fuel policy, crew rules and the figures of a drum',
          'Give them with their documents.',
        ),
      ]),
];

const need = (at: Missing['at'], what: string, next: string): Missing => ({
  at,
  of: '',
  field: '',
  what: `Missing: ${what}.`,
  next,
});
