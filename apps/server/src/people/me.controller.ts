import { meAnswer, mySessionsAnswer } from '@drumline/contract/answers';
import { Body, Controller, Delete, Get, HttpCode, Param, Post, Put, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { Problem } from '../http/problem.js';
import { BeforePasswordChange, Me, MySession, Public, SignedInOnly } from './access.js';
import type { Account } from './account.table.js';
import { cellsOf } from './permission.js';
import { clearSessionCookie, readSessionCookie, setSessionCookie } from './session-cookie.js';
import { csrfTokenOf, SessionsService, type SignedIn } from './sessions.service.js';
import { type NewPassword, newPasswordSchema, type SignIn, signInSchema } from './sign-in.schema.js';
import { SignInService } from './sign-in.service.js';

/** Signing in and out, and what is one's own. */
@ApiTags('people')
@Controller('api')
export class MeController {
  constructor(
    private readonly signIns: SignInService,
    private readonly sessions: SessionsService,
  ) {}

  @Public()
  @Answered(meAnswer)
  @Post('sign-in')
  @HttpCode(200)
  async signIn(
    @Body({ schema: signInSchema }) typed: SignIn,
    @Req() request: Request,
    @Res({ passthrough: true }) response: Response,
  ) {
    const caller = { address: request.ip ?? 'unknown', device: request.get('User-Agent') ?? 'unknown' };
    const { account, token } = await this.signIns.signIn(typed, caller);
    setSessionCookie(request, response, token);
    return meOf(account, token);
  }

  @BeforePasswordChange()
  @AnsweredBy({ 204: 'nothing' })
  @Post('sign-out')
  @HttpCode(204)
  async signOut(
    @Me() account: Account,
    @MySession() session: SignedIn['session'],
    @Req() request: Request,
    @Res({ passthrough: true }) response: Response,
  ): Promise<void> {
    await this.sessions.revoke(account.id, session.id);
    clearSessionCookie(request, response);
  }

  @BeforePasswordChange()
  @Answered(meAnswer)
  @Get('me')
  me(@Me() account: Account, @Req() request: Request) {
    return meOf(account, readSessionCookie(request) ?? '');
  }

  @BeforePasswordChange()
  @AnsweredBy({ 204: 'nothing' })
  @Put('me/password')
  @HttpCode(204)
  async changePassword(
    @Me() account: Account,
    @MySession() session: SignedIn['session'],
    @Body({ schema: newPasswordSchema }) typed: NewPassword,
  ): Promise<void> {
    await this.signIns.changePassword(account, session.id, typed);
  }

  @SignedInOnly()
  @Answered(mySessionsAnswer)
  @Get('me/sessions')
  async mySessions(@Me() account: Account, @MySession() current: SignedIn['session']) {
    const sessions = await this.sessions.list(account.id);
    return {
      items: sessions.map(({ id, device, createdAt, lastSeenAt, expiresAt }) => ({
        id,
        device,
        createdAt,
        lastSeenAt,
        expiresAt,
        thisOne: id === current.id,
      })),
      next: null,
    };
  }

  @SignedInOnly()
  @AnsweredBy({ 204: 'nothing' })
  @Delete('me/sessions/:id')
  @HttpCode(204)
  async revoke(@Me() account: Account, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    if (await this.sessions.revoke(account.id, id)) return;
    throw new Problem(
      'not-found',
      'You have no such session, or it has ended. Look again at where you are signed in.',
    );
  }
}

const meOf = (account: Account, token: string) => ({
  id: account.id,
  name: account.name,
  fullName: account.fullName,
  roles: account.roles,
  crew: account.crew,
  programmes: account.programmes,
  mustChangePassword: account.oneTimePassword,
  may: cellsOf(account),
  csrfToken: csrfTokenOf(token),
});
