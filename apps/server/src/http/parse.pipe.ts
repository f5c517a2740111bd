import { shapeFaults } from '@drumline/contract';
import type { ArgumentMetadata, PipeTransform } from '@nestjs/common';
import { z } from 'zod';
import { Problem } from './problem.js';

/**
 * Reads every `@Body`, `@Param` and `@Query` that names a schema. The fault list is the one a scenario document
 * gets: path, problem, remedy. An argument without a schema is a bug, found at the first request.
 */
export class ParsePipe implements PipeTransform {
  transform(value: unknown, { schema, type, data }: ArgumentMetadata): unknown {
    if (type === 'custom') return value;
    if (type === 'body') refuseOtherKind(schema, value);
    if (!(schema instanceof z.ZodType)) throw new Error(`an argument of kind ${type} has no schema`);
    const read = schema.safeParse(value);
    if (read.success) return read.data;
    const faults = shapeFaults(schema, value, data === undefined ? [] : [data]);
    if (type === 'body' && (value === undefined || value === '')) throw nothingSent(schema);
    if (type === 'body') throw new Problem('faults', 'See faults: each says what to do.', faults);
    throw new Problem('bad-request', `The address is not right: see faults.`, faults);
  }
}

const wantedFor = (schema: unknown): string =>
  schema instanceof z.ZodString ? 'text/csv' : 'application/json';

/** JSON where a file is asked for, or a file where JSON is: nothing can be said of its fields. */
const refuseOtherKind = (schema: unknown, value: unknown): void => {
  if (value === undefined || (typeof value === 'string') === schema instanceof z.ZodString) return;
  throw new Problem('wrong-content-type', `Send ${wantedFor(schema)}, with that Content-Type.`);
};

const nothingSent = (schema: unknown): Problem =>
  new Problem('bad-request', `The body is empty: send ${wantedFor(schema)}. See /api/openapi.json.`, [
    { path: 'body', problem: 'nothing was sent.', remedy: `Send ${wantedFor(schema)}.` },
  ]);
