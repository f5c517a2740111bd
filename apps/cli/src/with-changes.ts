/** Lists of the scenario whose lines have a name, and the field that holds it. */
const names: Record<string, string> = {
  places: 'code',
  notices: 'id',
  aircraftTypes: 'id',
  aircraft: 'tail',
  helicopters: 'id',
  pilots: 'id',
  batches: 'id',
  drums: 'number',
  caches: 'place',
  bases: 'place',
  programmes: 'code',
  bookedFlights: 'id',
  flights: 'id',
  handPlan: 'id',
};

type Json = Readonly<Record<string, unknown>>;

/**
 * The document with changes laid over it: a field replaces the field; a line of a list changes the line of the same name,
 * field by field, and is added where there is none (reports, counts, tasks and the like have no name: they are added).
 */
export function withChanges(document: Json, changes: Json): Json {
  const changed = Object.entries(changes).map(([field, value]) => [
    field,
    changedField(field, document[field], value),
  ]);
  return { ...document, ...Object.fromEntries(changed) };
}

function changedField(field: string, old: unknown, value: unknown): unknown {
  if (Array.isArray(old) && Array.isArray(value))
    return changedLines(names[field], old as Json[], value as Json[]);
  if (isObject(old) && isObject(value)) return { ...old, ...value };
  return value;
}

function changedLines(
  name: string | undefined,
  old: readonly Json[],
  lines: readonly Json[],
): readonly Json[] {
  if (name === undefined) return [...old, ...lines];
  const byName = new Map(old.map((line) => [line[name], line]));
  for (const line of lines) byName.set(line[name], { ...byName.get(line[name]), ...line });
  return [...byName.values()];
}

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Names in the changes that the document does not have: their lines would be added, so a slip in a name shows here. */
export function addedNames(document: Json, changes: Json): string[] {
  return Object.entries(names).flatMap(([field, name]) => {
    const [old, lines] = [document[field], changes[field]];
    if (!Array.isArray(old) || !Array.isArray(lines)) return [];
    const known = new Set((old as Json[]).map((line) => line[name]));
    return (lines as Json[])
      .filter((line) => !known.has(line[name]))
      .map((line) => `${field} ${String(line[name])}`);
  });
}
