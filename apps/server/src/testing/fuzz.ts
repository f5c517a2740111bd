/** Part of a JSON Schema, as the OpenAPI document has it. */
export interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly example?: unknown;
  readonly examples?: readonly unknown[];
  readonly default?: unknown;
  readonly format?: string;
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly minItems?: number;
  readonly minimum?: number;
}

/** Draws a whole number from 0 up to and without `below`. */
export type Draw = (below: number) => number;

/** The same numbers again from the same seed. */
export const drawFrom = (seed: number): Draw => {
  let state = seed;
  return (below) => {
    state = (Math.imul(state ^ (state >>> 15), 0x2c1b3c6d) + 0x9e3779b9) | 0;
    return ((state ^ (state >>> 13)) >>> 0) % below;
  };
};

export const oneOf = <T>(draw: Draw, choices: readonly T[]): T => choices[draw(choices.length)]!;

/** A value that the schema describes, with the document's own examples where it has any. */
export const sampleOf = (schema: Schema, named: (reference: string) => Schema, draw: Draw): unknown => {
  const sample = (part: Schema): unknown => sampleOf(part, named, draw);
  if (schema.$ref !== undefined) return sample(named(schema.$ref));
  if (schema.const !== undefined) return schema.const;
  if (schema.enum !== undefined) return oneOf(draw, schema.enum);
  if (schema.examples?.[0] !== undefined) return schema.examples[0];
  if (schema.example !== undefined) return schema.example;
  const choices = schema.oneOf ?? schema.anyOf;
  if (choices !== undefined) return sample(oneOf(draw, choices));
  if (schema.default !== undefined) return schema.default;
  if (schema.allOf !== undefined) return sample(schema.allOf[0]!);
  if (schema.type === 'array') {
    const { items = {}, minItems = 0 } = schema;
    return Array.from({ length: Math.max(minItems, draw(3)) }, () => sample(items));
  }
  if (schema.type === 'object' || schema.properties !== undefined) return sampleObject(schema, sample, draw);
  if (schema.type === 'number' || schema.type === 'integer') return (schema.minimum ?? 0) + draw(5);
  if (schema.type === 'boolean') return draw(2) === 0;
  if (schema.type === 'null') return null;
  return schema.format === 'uuid' ? '11111111-1111-4111-8111-111111111111' : 'XLOR';
};

const sampleObject = (
  { properties = {}, required = [] }: Schema,
  sample: (part: Schema) => unknown,
  draw: Draw,
): unknown =>
  Object.fromEntries(
    Object.entries(properties)
      .filter(([name]) => required.includes(name) || draw(2) === 0)
      .map(([name, part]) => [name, sample(part)]),
  );

/** What nobody means to send. */
const oddities: readonly (() => unknown)[] = [
  () => null,
  () => true,
  () => '',
  () => ' ',
  () => 'x'.repeat(200_000),
  () => 'nul \u0000 in it',
  () => 'half a pair \ud800',
  () => '🛢'.repeat(40),
  () => "'; drop table movements; --",
  () => '2027-02-30T25:61Z',
  () => '9999-12-31T23:59Z',
  () => -1,
  () => 0.1,
  () => 2 ** 53,
  () => 1e308,
  () => [],
  () => Array.from({ length: 2000 }, () => 'x'),
  () => ({}),
  () => ({ __proto__: null, constructor: { prototype: 1 } }),
  () => JSON.parse('[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]') as unknown,
];

/** The value with one part of it, wherever that is, replaced, left out, or joined by a field that nobody knows. */
export const spoil = (value: unknown, draw: Draw): unknown => {
  const isLeaf = typeof value !== 'object' || value === null || Object.keys(value).length === 0;
  if (isLeaf || draw(4) === 0) return oneOf(draw, oddities)();
  if (Array.isArray(value)) {
    const at = draw(value.length);
    return value.map((item, index) => (index === at ? spoil(item, draw) : (item as unknown)));
  }
  const fields = Object.entries(value);
  const [chosen] = oneOf(draw, fields);
  const how = draw(6);
  if (how === 0) return Object.fromEntries(fields.filter(([name]) => name !== chosen));
  if (how === 1) return { ...value, unknownField: oneOf(draw, oddities)() };
  return Object.fromEntries(fields.map(([name, part]) => [name, name === chosen ? spoil(part, draw) : part]));
};
