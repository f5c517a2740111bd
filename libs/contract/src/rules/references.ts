import { nearestName } from '../faults/nearest-name.js';
import { each, type Finding, type Line, type ListField, type Rule } from './rule.js';

/** The name that each list of named things goes by, and what such a thing is called. */
const named = {
  places: { name: (line) => line.code, what: 'place' },
  aircraftTypes: { name: (line) => line.id, what: 'type' },
  aircraft: { name: (line) => line.tail, what: 'tail' },
  helicopters: { name: (line) => line.id, what: 'helicopter' },
  pilots: { name: (line) => line.id, what: 'pilot' },
  batches: { name: (line) => line.id, what: 'batch' },
  programmes: { name: (line) => line.code, what: 'programme' },
  caches: { name: (line) => line.place, what: 'cache' },
  bases: { name: (line) => line.place, what: 'base' },
} satisfies { [K in ListField]?: { name: (line: Line<K>) => string; what: string } };

type Named = keyof typeof named;
type Reference = readonly [path: readonly PropertyKey[], name: string];

/** Names in the lines of `list` that must stand in the list `target`; the nearest known name is suggested. */
const refers = <L extends ListField, T extends Named>(
  list: L,
  target: T,
  namesIn: (line: Line<L>) => readonly Reference[],
): Rule =>
  each(list, [target], (line, scenario) => {
    const { name, what } = named[target] as { name: (line: Line<T>) => string; what: string };
    const known = new Set((scenario[target] as readonly Line<T>[]).map(name));
    return namesIn(line).flatMap(([path, typed]) =>
      known.has(typed) ? [] : [unknown(path, typed, what, target, known)],
    );
  });

const unknown = (
  path: readonly PropertyKey[],
  typed: string,
  what: string,
  target: string,
  known: ReadonlySet<string>,
): Finding => {
  const near = nearestName(typed, known);
  return [
    path,
    `there is no ${what} ${typed}.`,
    near === null ? `Correct it, or add ${typed} to ${target}.` : `Did you mean ${near}?`,
  ];
};

const one = (field: string, name: string): readonly Reference[] => [[[field], name]];
const many = (field: string, names: readonly string[]): readonly Reference[] =>
  names.map((name, index) => [[field, index], name]);

/** Everything that names something else must name something that is there. */
export const referenceRules: readonly Rule[] = [
  refers('distances', 'places', (line) => many('between', line.between)),
  refers('winds', 'places', (line) => [...one('from', line.from), ...one('to', line.to)]),
  refers('surfaceReports', 'places', (line) => one('place', line.place)),
  refers('notices', 'places', (line) => many('places', line.places)),
  refers('weather', 'places', (line) => one('place', line.place)),
  refers('stripLimits', 'places', (line) => one('place', line.place)),
  refers('stripLimits', 'aircraftTypes', (line) => one('type', line.type)),
  refers('aircraft', 'aircraftTypes', (line) => one('type', line.type)),
  refers('aircraft', 'bases', (line) => one('home', line.home)),
  refers('pilots', 'aircraftTypes', (line) => many('types', line.types)),
  refers('pilots', 'places', (line) =>
    line.lastLandings.map(({ place }, index) => [['lastLandings', index, 'place'], place] as const),
  ),
  refers('batches', 'places', (line) => many('filledAt', line.filledAt)),
  refers('drums', 'batches', (line) => one('batch', line.batch)),
  refers('drums', 'places', (line) => one('place', line.place)),
  refers('caches', 'places', (line) => one('place', line.place)),
  refers('bases', 'places', (line) => one('place', line.place)),
  refers('counts', 'places', (line) => one('place', line.place)),
  refers('helicopterTasks', 'helicopters', (line) => one('helicopter', line.helicopter)),
  refers('helicopterTasks', 'programmes', (line) => one('programme', line.programme)),
  refers('helicopterTasks', 'caches', (line) => one('place', line.place)),
  refers('slings', 'helicopters', (line) => one('helicopter', line.helicopter)),
  refers('slings', 'caches', (line) => [...one('from', line.from), ...one('to', line.to)]),
  refers('plannedUplifts', 'caches', (line) => one('place', line.place)),
  refers('bookedFlights', 'aircraft', (line) => one('aircraft', line.aircraft)),
  refers('bookedFlights', 'places', (line) =>
    line.legs.flatMap(({ from, to }, index) => [
      [['legs', index, 'from'], from] as const,
      [['legs', index, 'to'], to] as const,
    ]),
  ),
  refers('tieDown', 'aircraftTypes', ({ type }) => (type === 'every type' ? [] : one('type', type))),
  ...(['flights', 'handPlan'] as const).flatMap((list) => [
    refers(list, 'aircraft', (line) => one('aircraft', line.aircraft)),
    refers(list, 'bases', (line) => [...one('from', line.from), ...one('to', line.to)]),
    refers(list, 'caches', (line) =>
      line.stops.map(({ place }, index) => [['stops', index, 'place'], place] as const),
    ),
    refers(list, 'pilots', (line) => (line.pilot === undefined ? [] : one('pilot', line.pilot))),
  ]),
];
