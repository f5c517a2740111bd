import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException } from '@nestjs/common';
import type { Response } from 'express';
import { QueryFailedError } from 'typeorm';
import { errorFields, type Log, requestContext } from '../log.js';
import { Problem } from './problem.js';

/** Answers every error as a problem document; what is nobody's fault but ours goes to the log whole. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  constructor(private readonly log: Log) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const response = host.switchToHttp().getResponse<Response>();
    const problem = problemOf(error);
    if (problem.status >= 500) this.log.error(problem.detail, errorFields(error));
    if (response.headersSent) {
      response.destroy();
      return;
    }
    const requestId = requestContext.getStore()?.requestId ?? 'unknown';
    response
      .status(problem.status)
      .set(problem.headers)
      .type('application/problem+json')
      .send(JSON.stringify(problem.body(requestId)));
  }
}

const problemOf = (error: unknown): Problem => {
  if (error instanceof Problem) return error;
  if (error instanceof HttpException) return fromNest(error);
  if (isUnreachableDatabase(error)) {
    return new Problem('unavailable', 'The database cannot be reached. Try again in a moment.', [], {
      'Retry-After': '2',
    });
  }
  if (isUnstorableText(error)) {
    return new Problem(
      'bad-request',
      'A text has a character that cannot be stored: NUL, or half of a pair. Leave it out.',
    );
  }
  const status = (error as { status?: unknown } | null)?.status;
  if (typeof status === 'number' && status >= 400 && status < 500) return fromParser(status, error);
  return new Problem(
    'gone-wrong',
    'It is in the log under the number of this request. Try again; tell set-up.',
  );
};

const fromNest = (error: HttpException): Problem => {
  const status = error.getStatus();
  if (status === 404)
    return new Problem('not-found', `${error.message}. See /api/openapi.json for the routes.`);
  if (status >= 500) return new Problem('gone-wrong', 'It is in the log under the number of this request.');
  return fromParser(status, error);
};

const fromParser = (status: number, error: unknown): Problem => {
  if (status === 413) return new Problem('body-too-large', 'Send at most 5 MB in one request.');
  const message = error instanceof Error ? error.message : String(error);
  return new Problem('bad-request', `${message}. Correct the request and send it again.`);
};

/** PostgreSQL keeps no NUL and no half of a surrogate pair; within JSON it says of the latter that it is no JSON. */
const isUnstorableText = (error: unknown): boolean =>
  error instanceof QueryFailedError &&
  (/^(22021|22P05)$/.test((error.driverError as { code?: string }).code ?? '') ||
    error.message === 'invalid input syntax for type json');

/** Refused or broken connections, and the states in which PostgreSQL starts, stops or recovers. */
const unreachable = /^(ECONNREFUSED|ECONNRESET|EPIPE|ETIMEDOUT|57P0[123]|08\d{3}|53300)$/;

/** What the driver says with no code of its own. */
const unreachableWords =
  /^(Connection terminated|timeout exceeded when trying|Client (has encountered a connection error|was closed) and is not queryable)/;

const isUnreachableDatabase = (error: unknown): boolean => {
  const cause: unknown = error instanceof QueryFailedError ? error.driverError : error;
  if (!(cause instanceof Error)) return false;
  const code = (cause as { code?: string }).code ?? '';
  return unreachable.test(code) || unreachableWords.test(cause.message);
};
