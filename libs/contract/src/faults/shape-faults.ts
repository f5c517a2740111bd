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
  const shown = isPassword(schema, issue.path) ? 'this password' : show(given);
  const fields = fieldsAt(schema, issue.path);
  return [{ path: printPath(path), ...wordsFor(issue, { given, shown, fields }) }];
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
  remedy: `Add it${whatBelongs(issue)}.`,
});

const whatBelongs = (issue: Issue): string => {
  if (issue.code === 'invalid_type') return ` (${kindWords[issue.expected] ?? issue.expected})`;
  const words = wordsKnown(issue);
  if (words === null) return '';
  return words.length === 1 ? `: ${chooseFrom(words, null)}` : `, one of ${chooseFrom(words, null)}`;
};

/** The words of which one belongs there; null: not a matter of words. */
const wordsKnown = (issue: Issue): readonly unknown[] | null => {
  if (issue.code === 'invalid_value') return issue.values;
  // Which of several forms is meant, a word in one of the fields says.
  return issue.code === 'invalid_union' && 'options' in issue && issue.message.startsWith('Invalid')
    ? issue.options
    : null;
};

interface Given {
  readonly given: unknown;
  readonly shown: string;
  /** The fields that are known there. */
  readonly fields: readonly string[];
}

const wordsFor = (issue: Issue, { given, shown, fields }: Given): Omit<Fault, 'path'> => {
  if (issue.code === 'invalid_type')
    return {
      problem: `${shown} is not ${kindWords[issue.expected] ?? issue.expected}.`,
      remedy: remedyOfKind(issue.expected, given, fields),
    };
  const words = wordsKnown(issue);
  if (words !== null)
    return { problem: `${shown} is not a word known here.`, remedy: `Use ${chooseFrom(words, given)}.` };
  if (issue.code === 'too_small')
    return {
      problem: isEmpty(given) ? 'this is empty.' : `${shown} is too ${sizeWord(issue.origin, 'small')}.`,
      remedy: `Give ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}${ofWhat(issue.origin, issue.minimum)}.`,
    };
  if (issue.code === 'too_big')
    return {
      problem: `${shown} is too ${sizeWord(issue.origin, 'large')}.`,
      remedy: `Give at most ${issue.maximum}${ofWhat(issue.origin, issue.maximum)}.`,
    };
  if (issue.code === 'invalid_format' && issue.format === 'uuid')
    return {
      problem: `${shown} does not fit:`,
      remedy: 'an id is a UUID, like 3f0c2b1e-8d54-4c6a-9b7e-2a1d5e6f7081.',
    };
  return { problem: `${shown} does not fit:`, remedy: `${issue.message}.` };
};

const remedyOfKind = (expected: string, given: unknown, fields: readonly string[]): string => {
  if (typeof given === 'string' && expected === 'number')
    return /^-?\d+,(\d|\d\d)$/.test(given)
      ? `Write decimals with a point: ${given.replace(',', '.')}.`
      : 'Write the figure without quotes or unit.';
  if (expected === 'object' && fields.length > 0)
    return `Give an object with the fields ${fields.join(', ')}.`;
  return 'Correct it.';
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

const isEmpty = (given: unknown): boolean => given === '' || (Array.isArray(given) && given.length === 0);

const sizeWord = (origin: string, word: 'small' | 'large'): string =>
  origin === 'array' || origin === 'string' ? (word === 'small' ? 'short' : 'long') : word;

const ofWhat = (origin: string, count: number | bigint): string => {
  if (origin === 'array') return ' of them';
  if (origin !== 'string') return '';
  return count === 1 ? ' letter' : ' letters';
};

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

/** A field that its schema notes as a password is never repeated. */
const isPassword = (schema: z.ZodType, [key, ...rest]: readonly PropertyKey[]): boolean => {
  if (key === undefined) return schema.meta()?.format === 'password';
  const inner = plain(schema);
  const field: unknown = inner instanceof z.ZodObject ? inner.shape[String(key)] : undefined;
  return field instanceof z.ZodType && isPassword(field, rest);
};

const plain = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodNullable || schema instanceof z.ZodExactOptional
    ? plain(schema.unwrap() as z.ZodType)
    : schema;
