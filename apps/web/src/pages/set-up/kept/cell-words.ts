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
  if (Array.isArray(value)) return value.map((each) => textWords(String(each))).join(', ');
  if (spec.kind === 'group') return groupWords(spec.fields, value as Line);
  if (spec.kind === 'either') return eitherWords(spec.options, value as Line);
  return textWords(String(value));
};

/** A day, or a moment in the universal time it is kept in, as people read it: "12 June 2027 00:00 UTC". */
const textWords = (text: string): string => {
  const [, day, time] = /^(\d{4}-\d\d-\d\d)(?:T(\d\d:\d\d)(?::00(?:\.0+)?)?Z)?$/.exec(text) ?? [];
  if (day === undefined) return text;
  return time === undefined ? dayWords(day) : `${dayWords(day)} ${time} UTC`;
};

const dayWords = (day: string): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(day));

/** "Forward 9 g, Aft 2 g, manual 5.1": each field that has something in it; words say what they are without their label. */
const groupWords = (fields: readonly FieldSpec[], value: Line): string =>
  fields
    .map((field) => [field.kind === 'number' ? field.label : '', cellWords(field, value[field.key])])
    .filter(([, words]) => words !== '')
    .map((part) => part.filter(Boolean).join(' '))
    .join(', ');

/** "delivered cost, margin on it 8 %": the form that the value has, and what stands in it. */
const eitherWords = (options: readonly FieldSpec[], value: Line): string => {
  const chosen = options.find((option) =>
    fieldsIn(option).some((field) => field.kind === 'fixed' && value[field.key] === field.value),
  );
  if (chosen === undefined) return '';
  const [word, ...rest] = fieldsIn(chosen).map((field) => [
    field.label.toLowerCase(),
    cellWords(field, value[field.key]),
  ]);
  const kind = word?.[1] ?? '';
  // "fixed price" has said already that the figure is a price.
  return [
    kind,
    ...rest.map(([label = '', words = '']) => (kind.includes(label) ? words : `${label} ${words}`)),
  ].join(', ');
};

type Line = Readonly<Record<string, unknown>>;

/** "17 June 2027 to 18 June 2027", "XMER to XISK": by the names of the fields, as the order in which they are kept says nothing. */
const linesWords = (of: FieldSpec, lines: readonly Line[]): string =>
  lines
    .slice(0, 3)
    .map((line) => lineWords(of, line))
    .concat(lines.length > 3 ? [`${lines.length - 3} more`] : [])
    .join('; ');

const ends: readonly string[] = ['from', 'to', 'until'];

/** From where to where, or else what the form asks first: "XFAL 2 June 2027". A single day is written once. */
const lineWords = (of: FieldSpec, line: Line): string => {
  const named = fieldsIn(of).filter(({ key }) => ends.includes(key));
  const fields = named.length > 0 ? named : fieldsIn(of).slice(0, 2);
  const words = fields.map((field) => cellWords(field, line[field.key])).filter((each) => each !== '');
  return named.length > 0 ? [...new Set(words)].join(' to ') : words.join(' ');
};

export const fieldsIn = (spec: FieldSpec): readonly FieldSpec[] => (spec.kind === 'group' ? spec.fields : []);
