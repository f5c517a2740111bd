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
    if (!(schema instanceof z.ZodType)) throw new Error(`an argument of kind ${type} has no schema`);
    const read = schema.safeParse(value);
    if (read.success) return read.data;
    const faults = shapeFaults(schema, value, data === undefined ? [] : [data]);
    if (type === 'body') {
      const detail =
        value === undefined ? 'The body is missing: send JSON.' : 'See faults: each says what to do.';
      throw new Problem('faults', detail, faults);
    }
    throw new Problem('bad-request', `The address is not right: see faults.`, faults);
  }
}
