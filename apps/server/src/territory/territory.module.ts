import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { ClockController } from './clock.controller.js';
import { ClockService } from './clock.service.js';
import { LocalWordsService } from './local-words.service.js';
import { territoryControllers } from './territory.controllers.js';
import { TerritoryService } from './territory.service.js';
import { TerritoryChangesService } from './territory-changes.service.js';
import { TerritoryWritesService } from './territory-writes.service.js';
import { WholeTerritoryService } from './whole-territory.service.js';

@Module({
  imports: [AuditModule, PeopleModule, ProposalsModule],
  controllers: [...territoryControllers, ClockController],
  providers: [
    ClockService,
    LocalWordsService,
    TerritoryService,
    TerritoryWritesService,
    WholeTerritoryService,
    TerritoryChangesService,
  ],
  exports: [
    ClockService,
    LocalWordsService,
    TerritoryService,
    TerritoryChangesService,
    TerritoryWritesService,
    WholeTerritoryService,
  ],
})
export class TerritoryModule {}
