import type { z } from 'zod';
import { scenarioJsonSchema } from './scenario-json-schema.js';

type Schema = z.core.JSONSchema.BaseSchema;

/** The tables of docs/scenario-format.md in Markdown, one for each object of the format, written from the schema. */
export const formatTables = (): string => {
  const root = scenarioJsonSchema();
  const objects: [string, Schema][] = [['Scenario', root], ...Object.entries(root.$defs ?? {})];
  const known = new Map(objects);
  return inReadingOrder(root, known)
    .map(([name, schema]) => objectTable(name, schema, known))
    .join('\n');
};

/** The document first, then each object after the first that speaks of it. */
const inReadingOrder = (root: Schema, objects: ReadonlyMap<string, Schema>): readonly [string, Schema][] => {
  const read = new Map<string, Schema>();
  const visit = (name: string, schema: Schema): void => {
    if (read.has(name)) return;
    read.set(name, schema);
    for (const inner of Object.values(schema.properties ?? {}).flatMap((field) => namesIn(field as Schema)))
      visit(inner, objects.get(inner)!);
  };
  visit('Scenario', root);
  return [...read];
};

const objectTable = (name: string, schema: Schema, known: ReadonlyMap<string, Schema>): string =>
  [
    `### ${name}`,
    '',
    `${schema.description}.`,
    '',
    '| field | unit or kind | meaning | example |',
    '|---|---|---|---|',
    ...Object.entries(schema.properties ?? {}).map(([field, of]) =>
      row(field, of as Schema, schema.required?.includes(field) === true, known),
    ),
    '',
  ].join('\n');

const row = (
  field: string,
  schema: Schema,
  required: boolean,
  known: ReadonlyMap<string, Schema>,
): string => {
  const example: unknown = schema.examples?.[0];
  const cells = [
    `\`${field}\`${required ? '' : ' (may be left out)'}`,
    unitOf(schema),
    schema.description ?? known.get(nameOf(schema.$ref ?? ''))?.description ?? '',
    example === undefined ? '' : `\`${JSON.stringify(example)}\``,
  ];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
};

const unitOf = (schema: Schema): string => String(schema.unit ?? kindOf(schema));

const kindOf = (schema: Schema): string => {
  if (schema.$ref !== undefined) return link(nameOf(schema.$ref));
  if (schema.enum !== undefined) return schema.enum.map((word) => `\`${String(word)}\``).join(', ');
  if (schema.const !== undefined) return `\`${String(schema.const)}\``;
  if (schema.prefixItems !== undefined) return `list of ${schema.prefixItems.length}`;
  if (schema.type === 'array') return `list of ${unitOf(schema.items as Schema)}`;
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices !== undefined) return [...new Set(choices.map((choice) => kindOf(choice)))].join(' or ');
  return schema.type === 'string'
    ? 'text'
    : schema.type === 'boolean'
      ? 'true or false'
      : String(schema.type);
};

/** Names of the objects that a field holds. */
const namesIn = (schema: Schema): readonly string[] => {
  if (schema.$ref !== undefined) return [nameOf(schema.$ref)];
  const inner = [schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  return inner.flatMap((part) => (typeof part === 'object' && part !== null ? namesIn(part as Schema) : []));
};

const nameOf = (ref: string): string => ref.slice(ref.lastIndexOf('/') + 1);
const link = (name: string): string => `[${name}](#${name.toLowerCase()})`;
