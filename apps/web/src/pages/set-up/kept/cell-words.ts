import { figure } from '../../../ui/index.js';
import type { FieldSpec } from '../form/field-spec.js';

/** What stands in a cell of the list: a figure with its unit, words with commas, how many lines. */
export const cellWords = (spec: FieldSpec, value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (spec.kind === 'number' && typeof value === 'number') {
    const shown = value / spec.perUnit;
    const digits =
      spec.unit === 'deg' ? 4 : spec.perUnit === 100 ? 2 : (String(shown).split('.')[1]?.length ?? 0);
    return [figure(shown, digits), spec.unit].filter(Boolean).join(' ');
  }
  if (spec.kind === 'lines') return linesWords(value as readonly Readonly<Record<string, unknown>>[]);
  if (Array.isArray(value)) return value.join(', ');
  if (spec.kind === 'group') return groupWords(spec.fields, value as Readonly<Record<string, unknown>>);
  if (typeof value === 'object') return String(Reflect.get(value, 'kind') ?? '');
  return String(value);
};

/** "Forward 9 g, Aft 2 g, Document manual 5.1": each field that has something in it. */
const groupWords = (fields: readonly FieldSpec[], value: Readonly<Record<string, unknown>>): string =>
  fields
    .map((field) => [field.label, cellWords(field, value[field.key])])
    .filter(([, words]) => words !== '')
    .map((part) => part.join(' '))
    .join(', ');

/** The first fields of each line: "2027-06-17 to 2027-06-18", "XMER to XISK". */
const linesWords = (lines: readonly Readonly<Record<string, unknown>>[]): string =>
  lines
    .slice(0, 3)
    .map((line) => Object.values(line).slice(0, 2).join(' to '))
    .concat(lines.length > 3 ? [`${lines.length - 3} more`] : [])
    .join('; ');

export const fieldsIn = (spec: FieldSpec): readonly FieldSpec[] => (spec.kind === 'group' ? spec.fields : []);
