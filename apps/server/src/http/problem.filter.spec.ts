import type { ArgumentsHost } from '@nestjs/common';
import { QueryFailedError } from 'typeorm';
import { describe, expect, it, vi } from 'vitest';
import { createLog } from '../log.js';
import { ProblemFilter } from './problem.filter.js';

/** Status and headers of the answer to an error. */
const answerTo = (error: unknown) => {
  const status = vi.fn().mockReturnThis();
  const set = vi.fn().mockReturnThis();
  const response = { headersSent: false, status, set, type: vi.fn().mockReturnThis(), send: vi.fn() };
  const host = { switchToHttp: () => ({ getResponse: () => response }) };
  new ProblemFilter(createLog('error', () => {})).catch(error, host as unknown as ArgumentsHost);
  return { status: status.mock.lastCall?.[0] as number, headers: set.mock.lastCall?.[0] as object };
};

describe('a database that was killed', () => {
  // The words of pg 8.23, seen when the server was killed under a program at work.
  it.each([
    'Connection terminated unexpectedly',
    'Client has encountered a connection error and is not queryable',
    'Client was closed and is not queryable',
  ])('is not available for a moment, and no defect: %s', (words) => {
    const { status, headers } = answerTo(new QueryFailedError('select 1', [], new Error(words)));
    expect(status).toBe(503);
    expect(headers).toMatchObject({ 'Retry-After': '2' });
    expect(answerTo(new Error(words)).status).toBe(503);
  });

  it('is told from a defect', () => {
    expect(answerTo(new Error('cannot read a property of undefined')).status).toBe(500);
  });
});
