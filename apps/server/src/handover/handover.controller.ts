import { handoverAnswer, pageOf } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { type HandoverBody, handoverSchema, type SignatureBody, signatureSchema } from './handover.schema.js';
import { HandoversService } from './handovers.service.js';

const id = { schema: z.uuid() };
const itemNumber = {
  schema: z
    .string()
    .regex(/^\d{1,3}$/, 'items are numbered from 1')
    .transform(Number),
};
const listQuery = pageQuery.extend({ after: z.uuid().optional() });

/** What one shift hands to the next. */
@ApiTags('handover')
@Act('hand over', 'enter')
@Controller('api/handovers')
export class HandoverController {
  constructor(private readonly handovers: HandoversService) {}

  @Act('hand over', 'view')
  @Answered(pageOf(handoverAnswer))
  @Get()
  list(@Query({ schema: listQuery }) query: PageQuery) {
    return this.handovers.list(query);
  }

  @Act('hand over', 'view')
  @Answered(handoverAnswer)
  @Get(':id')
  get(@Param('id', id) handover: string) {
    return this.handovers.get(handover);
  }

  @Answered(handoverAnswer)
  @Put(':id')
  start(
    @Param('id', id) handover: string,
    @Body({ schema: handoverSchema }) body: HandoverBody,
    @Me() by: Account,
  ) {
    return this.handovers.start(handover, body, by);
  }

  @Answered(handoverAnswer)
  @Put(':id/items/:item')
  sign(
    @Param('id', id) handover: string,
    @Param('item', itemNumber) item: number,
    @Body({ schema: signatureSchema }) body: SignatureBody,
    @Me() by: Account,
  ) {
    return this.handovers.sign(handover, item, body, by);
  }

  /** The list is taken over. */
  @Answered(handoverAnswer)
  @Post(':id/close')
  @HttpCode(200)
  close(@Param('id', id) handover: string, @Me() by: Account) {
    return this.handovers.close(handover, by);
  }
}
