import { createParamDecorator, type ExecutionContext, SetMetadata } from '@nestjs/common';
import type { Request } from 'express';
import type { SignedIn } from './sessions.service.js';

declare module 'express-serve-static-core' {
  interface Request {
    account?: SignedIn['account'];
    session?: SignedIn['session'];
  }
}

/** Who may call a route. A route that says nothing is open to nobody. */
export type Access =
  | 'public'
  | 'anybody signed in'
  | 'before the password is changed'
  | { readonly act: string };

export const accessKey = 'drumline:access';

/** No sign-in needed. */
export const Public = () => SetMetadata<string, Access>(accessKey, 'public');

/** Anybody who is signed in: one's own things, and what every role may see. */
export const SignedInOnly = () => SetMetadata<string, Access>(accessKey, 'anybody signed in');

/** Like SignedInOnly, and open while the one-time password still has to be changed. */
export const BeforePasswordChange = () =>
  SetMetadata<string, Access>(accessKey, 'before the password is changed');

/** The account that calls. */
export const Me = createParamDecorator((_: unknown, context: ExecutionContext) => {
  const { account } = context.switchToHttp().getRequest<Request>();
  if (account === undefined) throw new Error('@Me on a public route');
  return account;
});

/** Its session. */
export const MySession = createParamDecorator((_: unknown, context: ExecutionContext) => {
  const { session } = context.switchToHttp().getRequest<Request>();
  if (session === undefined) throw new Error('@MySession on a public route');
  return session;
});
