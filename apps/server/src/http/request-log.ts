import { randomUUID } from 'node:crypto';
import type { NextFunction, Request, Response } from 'express';
import { type Log, requestContext } from '../log.js';

/** Gives each request a number, and one line in the log when it is answered: the path without its query. */
export const requestLog =
  (log: Log) =>
  (request: Request, response: Response, next: NextFunction): void => {
    const given = request.get('X-Request-Id') ?? '';
    const requestId = /^[\w-]{8,64}$/.test(given) ? given : randomUUID();
    const began = performance.now();
    response.set('X-Request-Id', requestId);
    requestContext.run({ requestId }, () => {
      response.on('finish', () => {
        const [path] = request.originalUrl.split('?');
        const level = path === '/health' ? 'debug' : 'info';
        log[level]('request', {
          requestId,
          method: request.method,
          path,
          status: response.statusCode,
          milliseconds: Math.round(performance.now() - began),
          account: request.account?.name,
        });
      });
      next();
    });
  };
