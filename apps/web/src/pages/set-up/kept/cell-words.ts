import { figure } from '../../../ui/index.js';
import type { FieldSpec } from '../form/field-spec.js';
import { asTyped } from '../form/typed.js';

/** What stands in a cell of the list: a figure with its unit, words with commas, how many lines. */
export const cellWords = (spec: FieldSpec, value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (spec.kind === 'number' && typeof value === 'number') {
    const shown = asTyped(spec, value);
    const digits =
      spec.unit === 'deg' ? 4 : spec.perUnit === 100 ? 2 : (String(shown).split('.')[1]?.length ?? 0);
    return [figure(shown, digits), spec.unit].filter(Boolean).join(' ');
  }
  if (spec.kind === 'lines')
    return linesWords(spec.of, value as readonly Readonly<Record<string, unknown>>[]);
  if (Array.isArray(value)) return value.join(', ');
  if (spec.kind === 'group') return groupWords(spec.fields, value as Readonly<Record<string, unknown>>);
  if (typeof value === 'object') return String(Reflect.get(value, 'kind') ?? '');
  return textWords(String(value));
};

/** A moment as people read it, in the universal time it is kept in: "2027-06-12 00:00 UTC". */
const textWords = (text: string): string =>
  text.replace(/^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::00(?:\.0+)?)?Z$/, '$1 $2 UTC');

/** "Forward 9 g, Aft 2 g, Document manual 5.1": each field that has something in it. */
const groupWords = (fields: readonly FieldSpec[], value: Readonly<Record<string, unknown>>): string =>
  fields
    .map((field) => [field.label, cellWords(field, value[field.key])])
    .filter(([, words]) => words !== '')
    .map((part) => part.join(' '))
    .join(', ');

type Line = Readonly<Record<string, unknown>>;

/** "2027-06-17 to 2027-06-18", "XMER to XISK": by the names of the fields, as the order in which they are kept says nothing. */
const linesWords = (of: FieldSpec, lines: readonly Line[]): string =>
  lines
    .slice(0, 3)
    .map((line) => lineWords(of, line))
    .concat(lines.length > 3 ? [`${lines.length - 3} more`] : [])
    .join('; ');

const ends: readonly string[] = ['from', 'to', 'until'];

/** From where to where, or else what the form asks first. */
const lineWords = (of: FieldSpec, line: Line): string => {
  const named = fieldsIn(of).filter(({ key }) => ends.includes(key));
  const fields = named.length > 0 ? named : fieldsIn(of).slice(0, 2);
  return fields
    .map((field) => cellWords(field, line[field.key]))
    .filter((words) => words !== '')
    .join(' to ');
};

export const fieldsIn = (spec: FieldSpec): readonly FieldSpec[] => (spec.kind === 'group' ? spec.fields : []);
