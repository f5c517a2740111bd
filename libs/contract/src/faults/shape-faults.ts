import { z } from 'zod';
import { type Fault, printPath } from './fault.js';
import { nearestName } from './nearest-name.js';

type Issue = z.core.$ZodIssue;

/** The faults of form of a value: missing and unknown fields, wrong kinds, figures outside their range. */
export const shapeFaults = (schema: z.ZodType, value: unknown, at: readonly PropertyKey[] = []): Fault[] => {
  const parsed = schema.safeParse(value);
  if (parsed.success) return [];
  return parsed.error.issues.flatMap((issue) => readIssue(issue, schema, value, at));
};

const readIssue = (issue: Issue, schema: z.ZodType, value: unknown, at: readonly PropertyKey[]): Fault[] => {
  const path = [...at, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    const known = fieldsAt(schema, issue.path);
    return issue.keys.map((key) => unknownField(key, path, known));
  }
  const closest = closestChoice(issue);
  if (closest !== undefined)
    return closest.flatMap((inner) =>
      readIssue({ ...inner, path: [...issue.path, ...inner.path] }, schema, value, at),
    );
  const given = valueAt(value, issue.path);
  if (given === undefined) return [missing(path, issue)];
  return [{ path: printPath(path), ...wordsFor(issue, given) }];
};

/** Of a choice of forms, the issues of the one whose outer form is met: only fields inside it are wrong. */
const closestChoice = (issue: Issue): Issue[] | undefined =>
  issue.code === 'invalid_union'
    ? issue.errors.find((issues) =>
        issues.every(({ path, code }) => path.length > 0 || code === 'unrecognized_keys'),
      )
    : undefined;

const unknownField = (key: string, path: readonly PropertyKey[], known: readonly string[]): Fault => {
  const near = nearestName(key, known);
  return {
    path: printPath([...path, key]),
    problem: 'this field is not known.',
    remedy: near === null ? `Remove it; known here: ${known.join(', ')}.` : `Did you mean ${near}?`,
  };
};

const missing = (path: readonly PropertyKey[], issue: Issue): Fault => ({
  path: printPath(path),
  problem: 'this field is missing.',
  remedy: `Add it${issue.code === 'invalid_type' ? ` (${kindWords[issue.expected] ?? issue.expected})` : ''}.`,
});

const wordsFor = (issue: Issue, given: unknown): Omit<Fault, 'path'> => {
  const shown = show(given);
  if (issue.code === 'invalid_type')
    return {
      problem: `${shown} is not ${kindWords[issue.expected] ?? issue.expected}.`,
      remedy:
        typeof given === 'string' && issue.expected === 'number'
          ? 'Write the figure without quotes or unit.'
          : 'Correct it.',
    };
  if (issue.code === 'invalid_value')
    return {
      problem: `${shown} is not a word known here.`,
      remedy: `Use ${chooseFrom(issue.values, given)}.`,
    };
  if (issue.code === 'too_small')
    return {
      problem: `${shown} is too ${sizeWord(issue.origin, 'small')}.`,
      remedy: `Give ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}${ofWhat(issue.origin)}.`,
    };
  if (issue.code === 'too_big')
    return {
      problem: `${shown} is too ${sizeWord(issue.origin, 'large')}.`,
      remedy: `Give at most ${issue.maximum}${ofWhat(issue.origin)}.`,
    };
  return { problem: `${shown} does not fit:`, remedy: `${issue.message}.` };
};

const kindWords: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'an object',
};

const sizeWord = (origin: string, word: 'small' | 'large'): string =>
  origin === 'array' || origin === 'string' ? (word === 'small' ? 'short' : 'long') : word;

const ofWhat = (origin: string): string =>
  origin === 'array' ? ' of them' : origin === 'string' ? ' letter' : '';

const chooseFrom = (values: readonly unknown[], given: unknown): string => {
  const words = values.map((value) => JSON.stringify(value));
  const near = typeof given === 'string' ? nearestName(JSON.stringify(given), words) : null;
  if (near === null || words.length === 1) return words.join(', ');
  return `${near}, or another of ${words.filter((word) => word !== near).join(', ')}`;
};

const show = (value: unknown): string => {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
};

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inside, key) => (typeof inside === 'object' && inside !== null ? Reflect.get(inside, key) : undefined),
    value,
  );

/** The fields that the schema knows at a path. */
const fieldsAt = (schema: z.ZodType, path: readonly PropertyKey[]): readonly string[] => {
  const inner = plain(schema);
  if (inner instanceof z.ZodUnion) {
    return [...new Set(inner.options.flatMap((option) => fieldsAt(option as z.ZodType, path)))];
  }
  const [key, ...rest] = path;
  if (inner instanceof z.ZodObject) {
    if (key === undefined) return Object.keys(inner.shape);
    const field: unknown = inner.shape[String(key)];
    return field instanceof z.ZodType ? fieldsAt(field, rest) : [];
  }
  if (inner instanceof z.ZodArray && key !== undefined) return fieldsAt(inner.element as z.ZodType, rest);
  return [];
};

const plain = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodNullable || schema instanceof z.ZodExactOptional
    ? plain(schema.unwrap() as z.ZodType)
    : schema;
