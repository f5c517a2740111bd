import { shownProposalAnswer, wholeList } from '@drumline/contract/answers';
import { Controller, Delete, Get, HttpCode, Param, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { ProposalsService } from './proposals.service.js';

const idSchema = z.uuid();

/** Who may agree is asked by the service: it depends on what the proposal is about. */
@ApiTags('proposals')
@OfTheOperator()
@Controller('api/proposals')
export class ProposalsController {
  constructor(private readonly proposals: ProposalsService) {}

  @Answered(wholeList(shownProposalAnswer))
  @Get()
  async list() {
    return { items: await this.proposals.listOpen(), next: null };
  }

  @Answered(shownProposalAnswer)
  @Get(':id')
  get(@Param('id', { schema: idSchema }) id: string) {
    return this.proposals.get(id);
  }

  @Answered(shownProposalAnswer)
  @Put(':id/agreement')
  agree(@Param('id', { schema: idSchema }) id: string, @Me() by: Account) {
    return this.proposals.agree(id, by);
  }

  @AnsweredBy({ 204: 'nothing' })
  @Delete(':id')
  @HttpCode(204)
  async withdraw(@Param('id', { schema: idSchema }) id: string, @Me() by: Account): Promise<void> {
    await this.proposals.withdraw(id, by);
  }
}
