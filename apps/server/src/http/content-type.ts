import type { NextFunction, Request, Response } from 'express';
import { Problem } from './problem.js';

/** After the readers of bodies: one that was sent and that none of them took is of a kind that is not read. */
export const refuseOtherTypes = (request: Request, _: Response, next: NextFunction): void => {
  const isSent =
    Number(request.get('Content-Length') ?? 0) > 0 || request.get('Transfer-Encoding') !== undefined;
  const isRead = request.body !== undefined;
  next(isSent && !isRead ? new Problem('wrong-content-type', words) : undefined);
};

const words = 'Send application/json, or text/csv where a file is asked for, with that Content-Type.';
