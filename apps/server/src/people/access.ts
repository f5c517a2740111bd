import type { Intent, PermittedAct } from '@drumline/contract';
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
  | 'before the password is changed'
  | 'anybody signed in'
  | 'anybody of the operator'
  | {
      readonly act: PermittedAct;
      readonly to: Intent['to'];
      readonly conditions: 'asked by the route' | 'none';
    };

export const accessKey = 'drumline:access';

const access = (who: Access) => SetMetadata<string, Access>(accessKey, who);

/** No sign-in needed. */
export const Public = () => access('public');

/** Like SignedInOnly, and open while the one-time password still has to be changed. */
export const BeforePasswordChange = () => access('before the password is changed');

/** One's own things. */
export const SignedInOnly = () => access('anybody signed in');

/** What everybody sees but a customer's people. */
export const OfTheOperator = () => access('anybody of the operator');

/**
 * Whoever the permission table lets do this act. A right that stands under a condition (own things only, a limit,
 * a second person) is refused, unless the route says that it asks for the conditions itself, by `refuseUnlessMay`.
 */
export const Act = (
  act: PermittedAct,
  to: Intent['to'],
  { conditions }: { readonly conditions: 'asked by the route' | 'none' } = { conditions: 'none' },
) => access({ act, to, conditions });

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
