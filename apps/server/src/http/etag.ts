import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { Problem } from './problem.js';

export const etagOf = (version: number): string => `"${version}"`;

/** What the sender says it changes: a thing not there yet, or the version it read. */
export type Expected = { readonly version: number } | 'none yet';

/** Reads the header of the request. The OpenAPI document knows by it which routes ask for a version. */
export const readExpected = (_: unknown, context: ExecutionContext): Expected => {
  const { headers } = context.switchToHttp().getRequest<Request>();
  if (headers['if-none-match'] === '*') return 'none yet';
  const version = /^(?:W\/)?"(\d{1,9})"$/.exec(headers['if-match'] ?? '')?.[1];
  if (version !== undefined) return { version: Number(version) };
  throw new Problem(
    'version-needed',
    'Send If-Match with the ETag that you read, or If-None-Match: * to make a new one.',
  );
};

/**
 * `If-None-Match: *` makes a thing, `If-Match: "3"` changes version 3 of it. Asked for wherever two people may
 * edit one thing, so that nobody overwrites what they have not seen.
 */
export const ExpectedVersion = createParamDecorator(readExpected);

export const staleVersion = (what: string, current: number | null): Problem =>
  new Problem(
    'stale-version',
    current === null
      ? `${what} is not there. Send If-None-Match: * to make it.`
      : `${what} is at version ${current} by now. Read it again and repeat your change on that.`,
    [],
    current === null ? {} : { ETag: etagOf(current) },
  );
