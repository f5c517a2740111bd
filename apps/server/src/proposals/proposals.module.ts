import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ProposalsController } from './proposals.controller.js';
import { ProposalsService } from './proposals.service.js';
import { SignaturesService } from './signatures.service.js';

@Module({
  imports: [AuditModule, PeopleModule],
  controllers: [ProposalsController],
  providers: [ProposalsService, SignaturesService],
  exports: [ProposalsService],
})
export class ProposalsModule {}
