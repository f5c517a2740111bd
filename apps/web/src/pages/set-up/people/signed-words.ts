import type { FieldSpec } from '../form/field-spec.js';
import { isOf } from '../form/typed.js';
import { cellWords } from '../kept/cell-words.js';

type Thing = Readonly<Record<string, unknown>>;

/** One thing that a proposal changes; `data` null: taken out. */
export interface ProposedChange {
  /** As in the address: `strip-limits`. */
  readonly kind: string;
  readonly id: string;
  readonly data: Thing | null;
}

/** The things a proposal changes; none: it is about something that happened, and says itself in words. */
export const changesIn = (payload: Thing): readonly ProposedChange[] => {
  const { kind, id, data, lines, gone } = payload;
  if (typeof kind === 'string' && typeof id === 'string') return [{ kind, id, data: data as Thing | null }];
  if (!Array.isArray(lines)) return [];
  const puts = lines as readonly { readonly id: string; readonly data: Thing }[];
  const takenOut = (gone ?? []) as readonly string[];
  return [
    ...puts.map((put) => ({ kind: 'strip-limits', id: put.id, data: put.data })),
    ...takenOut.map((id) => ({ kind: 'strip-limits', id, data: null })),
  ];
};

/** "Landing limit, dry or damp: 8,300 lb > 7,600 lb", a line for each field that changes. */
export const fieldChanges = (
  spec: FieldSpec,
  before: Thing | null,
  after: Thing | null,
): readonly string[] => {
  if (after === null) return ['Taken out'];
  const fields = spec.kind === 'group' ? spec.fields : [];
  return fields.flatMap((field) => {
    const [was, is] = [before, after].map((thing) => valueWords(field, thing?.[field.key]));
    if (was === is) return [];
    return [`${field.label}: ${before === null ? is : `${was || 'none'} > ${is || 'none'}`}`];
  });
};

/** All of a value: nothing of what is signed is left out. */
const valueWords = (spec: FieldSpec, value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (spec.kind === 'group') return partsWords(spec.fields, value as Thing);
  if (spec.kind === 'lines')
    return (value as readonly unknown[]).map((line) => valueWords(spec.of, line)).join('; ');
  if (spec.kind === 'words')
    return (value as readonly unknown[]).map((word) => valueWords(spec.of, word)).join(', ');
  if (spec.kind === 'pair')
    return (value as readonly unknown[]).map((item, at) => valueWords(spec.items[at]!, item)).join(', ');
  if (spec.kind === 'either') {
    const option = spec.options.find((each) => isOf(each, value));
    return option === undefined ? JSON.stringify(value) : valueWords(option, value);
  }
  if (spec.kind === 'fixed') return String(spec.value);
  if (spec.kind === 'yes or no') return value === true ? 'yes' : 'no';
  return cellWords(spec, value);
};

const partsWords = (fields: readonly FieldSpec[], thing: Thing): string =>
  fields
    .map((field) => [field.label, valueWords(field, thing[field.key])])
    .filter(([, words]) => words !== '')
    .map((part) => part.join(' '))
    .join(', ');
