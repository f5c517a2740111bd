import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request } from 'express';
import { Problem } from '../http/problem.js';
import { type Access, accessKey } from './access.js';
import type { Account } from './account.table.js';
import { hasLevel, isOfTheOperator, refuseUnlessMay } from './permission.js';
import { readSessionCookie } from './session-cookie.js';
import { csrfTokenOf, SessionsService, type SignedIn } from './sessions.service.js';

const reading = new Set(['GET', 'HEAD', 'OPTIONS']);

/** Stands before every route: who calls, may this page ask for it, may this person do it. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly sessions: SessionsService,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<Request>();
    const access = this.reflector.getAllAndOverride<Access | undefined>(accessKey, [
      context.getHandler(),
      context.getClass(),
    ]);
    if (access === undefined)
      throw new Error(`${request.method} ${request.path} does not say who may call it`);
    refuseOtherSites(request);
    if (access === 'public') return true;

    const { account, session } = await this.whoCalls(request);
    if (account.oneTimePassword && access !== 'before the password is changed') {
      throw new Problem('password-to-be-changed', 'Choose your own password first: PUT /api/me/password.');
    }
    refuseUnlessOpen(access, account);
    request.account = account;
    request.session = session;
    return true;
  }

  private async whoCalls(request: Request): Promise<SignedIn> {
    const token = readSessionCookie(request);
    const signedIn = token === undefined ? null : await this.sessions.find(token, isPhonePage(request));
    if (token === undefined || signedIn === null) {
      throw new Problem('not-signed-in', 'Sign in and send it again. Nothing was changed.');
    }
    if (!reading.has(request.method) && request.get('X-CSRF-Token') !== csrfTokenOf(token)) {
      throw new Problem('cross-site', 'Send the csrfToken of GET /api/me in the header X-CSRF-Token.');
    }
    return signedIn;
  }
}

/** The phone page says so of itself; see apps/web/src/phone/ask.ts. */
const isPhonePage = (request: Request): boolean => request.get('X-Drumline-Page') === 'phone';

const refuseUnlessOpen = (access: Access, account: Account): void => {
  if (access === 'anybody of the operator' && !isOfTheOperator(account)) {
    throw new Problem(
      'not-allowed',
      'This is for the people of the operator. You see your own programme only.',
    );
  }
  if (typeof access === 'string') return;
  const { act, to, conditions } = access;
  if (conditions === 'asked by the route' && hasLevel(account, act, to)) return;
  refuseUnlessMay(account, act, { to });
};

// Browsers say which site a request comes from; programs that are no browser say nothing.
const refuseOtherSites = (request: Request): void => {
  const site = request.get('Sec-Fetch-Site');
  if (reading.has(request.method) || site === undefined || site === 'same-origin' || site === 'none') return;
  throw new Problem(
    'cross-site',
    `This was sent by a page of another site (${site}). Use Drumline's own page.`,
  );
};
