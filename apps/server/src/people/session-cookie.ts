import type { Request, Response } from 'express';

const name = 'drumline_session';

/** Over HTTPS the browser is told never to send it in the clear. */
export const setSessionCookie = (request: Request, response: Response, token: string): void => {
  response.cookie(name, token, {
    httpOnly: true,
    sameSite: 'lax',
    secure: request.secure,
    path: '/',
    maxAge: 400 * 86_400_000, // the session's own end is what counts
  });
};

export const clearSessionCookie = (request: Request, response: Response): void => {
  response.clearCookie(name, { httpOnly: true, sameSite: 'lax', secure: request.secure, path: '/' });
};

export const readSessionCookie = (request: Request): string | undefined =>
  request.headers.cookie
    ?.split(';')
    .map((pair) => pair.trim().split('='))
    .find(([key]) => key === name)?.[1];
