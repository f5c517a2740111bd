import type { z } from 'zod';
import { capital } from '../../../ui/index.js';

type Schema = z.core.JSONSchema.BaseSchema;

interface Common {
  readonly key: string;
  readonly label: string;
  readonly note: string;
  /** Written beside the figure: "lb". Empty: none. */
  readonly unit: string;
  /** What an empty field means: it is left out, it is null, or something is missing. */
  readonly whenEmpty: 'left out' | 'null' | 'missing';
}

/** One field of a form, read from the schema of the document. */
export type FieldSpec = Common &
  (
    | {
        readonly kind: 'text';
        readonly offered: string | null;
        readonly holds: 'text' | 'sentence' | 'day';
        /** One word that would do: "07:00", "Etc/GMT". Empty: none is shown. */
        readonly example: string;
      }
    /** `perUnit`: what is kept for one that is typed; money is kept in hundredths, and of a chance a per cent is one. */
    | { readonly kind: 'number'; readonly perUnit: 1 | 100 | 0.01 }
    | { readonly kind: 'yes or no' }
    | { readonly kind: 'choice'; readonly values: readonly (string | number)[] }
    | { readonly kind: 'words'; readonly of: FieldSpec; readonly atLeast: number }
    | { readonly kind: 'group'; readonly fields: readonly FieldSpec[] }
    | { readonly kind: 'lines'; readonly of: FieldSpec }
    | { readonly kind: 'pair'; readonly items: readonly FieldSpec[] }
    | { readonly kind: 'either'; readonly options: readonly FieldSpec[] }
    /** A word that says which of several forms this is: not typed. */
    | { readonly kind: 'fixed'; readonly value: unknown }
  );

interface Around {
  readonly defs: Readonly<Record<string, Schema>>;
  readonly currency: string;
}

/** The form of a schema; `currency` is what money is typed in, which the document keeps in hundredths. */
export const fieldSpec = (
  schema: Schema,
  defs: Readonly<Record<string, Schema>>,
  currency: string,
): FieldSpec => readField('', schema, 'missing', { defs, currency });

const readField = (key: string, given: Schema, ifAbsent: Common['whenEmpty'], around: Around): FieldSpec => {
  const { schema, isNullable } = resolved(given, around.defs);
  const whenEmpty = isNullable ? 'null' : ifAbsent;
  return {
    ...wordsOf(key, schema, around.currency),
    whenEmpty,
    ...shapeOf(key, schema, around),
  } as FieldSpec;
};

const resolved = (given: Schema, defs: Around['defs']): { schema: Schema; isNullable: boolean } => {
  const { $ref, ...own } = given;
  if ($ref !== undefined) {
    const inner = resolved(defs[$ref.slice($ref.lastIndexOf('/') + 1)]!, defs);
    return { ...inner, schema: { ...inner.schema, ...own } };
  }
  const choices = given.anyOf as readonly Schema[] | undefined;
  const rest = choices?.filter(({ type }) => type !== 'null');
  if (choices === undefined || rest?.length === choices.length) return { schema: given, isNullable: false };
  const { anyOf: _, ...outer } = given;
  const inner = rest!.length === 1 ? resolved(rest![0]!, defs).schema : { anyOf: [...rest!] };
  return { schema: { ...inner, ...outer }, isNullable: true };
};

const shapeOf = (key: string, schema: Schema, around: Around): object => {
  const inner = (part: unknown, name = '') => readField(name, part as Schema, 'missing', around);
  const choices = (schema.oneOf ?? schema.anyOf) as readonly Schema[] | undefined;
  if (schema.const !== undefined) return { kind: 'fixed', value: schema.const };
  if (schema.enum !== undefined) return { kind: 'choice', values: schema.enum };
  if (choices?.every((choice) => choice.const !== undefined))
    return { kind: 'choice', values: choices.map((choice) => choice.const) };
  if (choices !== undefined) return { kind: 'either', options: choices.map((choice) => inner(choice, key)) };
  if (schema.prefixItems !== undefined)
    return { kind: 'pair', items: schema.prefixItems.map((item) => inner(item)) };
  if (schema.type === 'array') {
    const of = inner(schema.items);
    const isLines = of.kind === 'group' || of.kind === 'either';
    return isLines ? { kind: 'lines', of } : { kind: 'words', of, atLeast: schema.minItems ?? 0 };
  }
  if (schema.type === 'object') return { kind: 'group', fields: fieldsOf(schema, around) };
  if (schema.type === 'boolean') return { kind: 'yes or no' };
  if (schema.type === 'number' || schema.type === 'integer')
    return { kind: 'number', perUnit: isMoney(schema) ? 100 : isChance(schema) ? 0.01 : 1 };
  const offered = /listed in `(\w+)`/.exec(String(schema.description))?.[1] ?? null;
  const example = exampleOf(schema);
  return {
    kind: 'text',
    offered,
    holds: schema.unit === 'local day' ? 'day' : isSentence(example) ? 'sentence' : 'text',
    example: offered === null && /^\S+$/.test(example) ? example : '',
  };
};

const exampleOf = ({ examples }: Schema): string =>
  String((examples as readonly unknown[] | undefined)?.[0] ?? '');

const fieldsOf = (schema: Schema, around: Around): readonly FieldSpec[] =>
  Object.entries(schema.properties ?? {}).map(([key, of]) =>
    readField(key, of as Schema, schema.required?.includes(key) ? 'missing' : 'left out', around),
  );

/** By its example: the title of a document with its revision, a remark. */
const isSentence = (example: string): boolean => example.includes(' ') && example.length > 15;

const isMoney = ({ unit }: Schema): boolean => String(unit).startsWith('cent');
const isChance = ({ unit }: Schema): boolean => unit === '0 to 1';

/** The meaning is the label; what follows a semicolon is a note. Words that explain themselves go by the name of the field. */
const wordsOf = (key: string, schema: Schema, currency: string): Omit<Common, 'whenEmpty'> => {
  const said = String(schema.description ?? key);
  const explains = schema.enum !== undefined && said.startsWith(`${String(schema.enum[0])}:`);
  const [label = '', ...rest] = explains ? [capital(key), said] : said.split('; ');
  const note = rest
    .filter((part) => !part.startsWith('listed in'))
    .join('; ')
    .replace(/\b(null|absent)(?=:| at )/, 'empty');
  const unit = isChance(schema) ? '%' : String(schema.unit ?? '').replace(/^cent/, currency);
  return { key, label: label.split(' (')[0]!, note, unit: isInWords(unit) ? '' : unit };
};

/** What is typed says its own zone: a day is local, an instant ends in Z. */
const isInWords = (unit: string): boolean => unit.startsWith('local') || unit === 'UTC';
