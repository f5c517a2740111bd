import type { NextFunction, Request, Response } from 'express';

/**
 * After the readers of bodies, of which the one for JSON takes a body of no bytes for `{}`: it is none. A route that wants
 * one says so, and never works on fields that nobody sent.
 */
export const dropEmptyBody = (request: Request, _: Response, next: NextFunction): void => {
  if (request.get('Content-Length') === '0') request.body = undefined;
  next();
};
