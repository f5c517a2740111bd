import { oneTimePasswordAnswer, pageOf, personAnswer, writtenPersonAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { type Expected, ExpectedVersion, etagOf } from '../http/etag.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act, Me } from './access.js';
import type { Account } from './account.table.js';
import { PeopleService } from './people.service.js';
import { type Person, personSchema } from './person.schema.js';

const idSchema = z.uuid();

@ApiTags('people')
@Act('people', 'enter')
@Controller('api/people')
export class PeopleController {
  constructor(private readonly people: PeopleService) {}

  @Answered(pageOf(personAnswer))
  @Get()
  async list(@Query({ schema: pageQuery }) query: PageQuery) {
    const { items, next } = await this.people.list(query);
    return { items: items.map(shown), next };
  }

  @Answered(personAnswer)
  @Get(':id')
  async get(@Param('id', { schema: idSchema }) id: string, @Res({ passthrough: true }) response: Response) {
    const account = await this.people.get(id);
    response.set('ETag', etagOf(account.version));
    return shown(account);
  }

  /** The id is made by the sender, so that a retry is harmless. */
  @Answered(writtenPersonAnswer)
  @Put(':id')
  async put(
    @Param('id', { schema: idSchema }) id: string,
    @Body({ schema: personSchema }) person: Person,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    const { account, oneTimePassword } = await this.people.put(id, person, expected, by);
    response.set('ETag', etagOf(account.version));
    return { ...shown(account), oneTimePassword };
  }

  @Answered(oneTimePasswordAnswer)
  @Post(':id/one-time-password')
  @HttpCode(200)
  async oneTimePassword(@Param('id', { schema: idSchema }) id: string, @Me() by: Account) {
    return { oneTimePassword: await this.people.giveOneTimePassword(id, by) };
  }
}

const shown = ({ passwordHash: _, ...account }: Account) => account;
