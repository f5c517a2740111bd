import { figureIn } from '../../../ui/index.js';
import type { FieldSpec } from './field-spec.js';

/** What stands in a form while somebody types: text as typed, until it is read as a document. */
export type Typed = string | boolean | undefined | readonly Typed[] | TypedGroup | Chosen;

export interface TypedGroup {
  readonly [key: string]: Typed;
}

export interface Chosen {
  readonly option: number;
  readonly value: Typed;
}

/** The form of a document that is there; undefined: an empty one. */
export const typedOf = (spec: FieldSpec, kept: unknown): Typed => {
  const isEmpty = kept === undefined || kept === null;
  switch (spec.kind) {
    case 'fixed':
      return undefined;
    case 'yes or no':
      return kept === true;
    case 'number':
      return isEmpty ? '' : typeof kept === 'number' ? String(asTyped(spec, kept)) : String(kept);
    case 'words':
      return ((kept ?? []) as readonly unknown[]).map((each) => typedOf(spec.of, each)).join(', ');
    case 'pair':
      return spec.items.map((item, at) => typedOf(item, (kept as readonly unknown[] | undefined)?.[at]));
    case 'lines':
      return isEmpty
        ? spec.whenEmpty === 'missing'
          ? []
          : undefined
        : (kept as readonly unknown[]).map((each) => typedOf(spec.of, each));
    case 'group':
      return isEmpty && spec.whenEmpty !== 'missing' ? undefined : groupOf(spec.fields, kept);
    case 'either': {
      const option = Math.max(
        0,
        spec.options.findIndex((each) => isOf(each, kept)),
      );
      return { option, value: typedOf(spec.options[option]!, kept) };
    }
    default:
      return isEmpty ? '' : String(kept);
  }
};

const groupOf = (fields: readonly FieldSpec[], kept: unknown): TypedGroup =>
  Object.fromEntries(
    fields.map((field) => [
      field.key,
      typedOf(field, (kept as Record<string, unknown> | undefined)?.[field.key]),
    ]),
  );

/** Whether a kept value has the form of one of several: no field that the form does not know, and its fixed words. */
export const isOf = (option: FieldSpec, kept: unknown): boolean => {
  if (option.kind === 'fixed') return kept === option.value;
  if (option.kind !== 'group') return typeof kept === 'string' || typeof kept === 'number';
  if (typeof kept !== 'object' || kept === null) return false;
  return (
    Object.keys(kept).every((key) => option.fields.some((field) => field.key === key)) &&
    option.fields.every((field) => field.kind !== 'fixed' || Reflect.get(kept, field.key) === field.value)
  );
};

/** The document of a form. A figure that is none stays as it was typed: the door says what is wrong with it. */
export const documentOf = (spec: FieldSpec, typed: Typed): unknown => {
  switch (spec.kind) {
    case 'fixed':
      return spec.value;
    case 'yes or no':
      return typed === true;
    case 'words':
      return wordsIn(spec, typed as string);
    case 'pair':
      return spec.items.map((item, at) => documentOf(item, (typed as readonly Typed[])[at]));
    case 'lines':
      return typed === undefined
        ? emptyOf(spec)
        : (typed as readonly Typed[]).map((each) => documentOf(spec.of, each));
    case 'group':
      return typed === undefined ? emptyOf(spec) : documentOfGroup(spec.fields, typed as TypedGroup);
    case 'either': {
      const { option, value } = typed as Chosen;
      return documentOf(spec.options[option]!, value);
    }
    default: {
      const text = (typed as string).trim();
      return text === '' ? emptyOf(spec) : scalarOf(spec, text);
    }
  }
};

const documentOfGroup = (fields: readonly FieldSpec[], typed: TypedGroup): object =>
  Object.fromEntries(
    fields.flatMap((field) => {
      const value = documentOf(field, typed[field.key]);
      return value === undefined ? [] : [[field.key, value]];
    }),
  );

const wordsIn = (spec: FieldSpec & { readonly kind: 'words' }, typed: string): unknown => {
  const parts = typed
    .split(',')
    .map((part) => part.trim())
    .filter(Boolean);
  return parts.length === 0 && spec.whenEmpty !== 'missing'
    ? emptyOf(spec)
    : parts.map((part) => scalarOf(spec.of, part));
};

const emptyOf = ({ whenEmpty }: FieldSpec): null | undefined => (whenEmpty === 'null' ? null : undefined);

const scalarOf = (spec: FieldSpec, text: string): unknown => {
  if (spec.kind === 'choice') return spec.values.find((value) => String(value) === text) ?? text;
  if (spec.kind !== 'number') return text;
  const figure = figureIn(text);
  return figure === null ? text : round(figure * spec.perUnit);
};

/** A kept figure as people type and read it: 245 as 2.45 cr, 0.28 as 28 %. */
export const asTyped = ({ perUnit }: FieldSpec & { readonly kind: 'number' }, kept: number): number =>
  round(kept / perUnit);

/** Hundredths are not exact in binary: 2.45 x 100 is 245. */
const round = (figure: number): number => Number(figure.toFixed(6));
