import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { CasePagesService } from './case-pages.service.js';
import { CasesService } from './cases.service.js';
import { DoneService } from './done.service.js';
import { DrumsController } from './drums.controller.js';
import { DrumsService } from './drums.service.js';
import { HoldCallsService } from './hold-calls.service.js';
import { HoldsController } from './holds.controller.js';
import { HoldsService } from './holds.service.js';
import { KeptStock } from './kept-stock.js';
import { KnownAtService } from './known-at.service.js';
import { KnownSubjectService } from './known-subject.service.js';
import { LedgerService } from './ledger.service.js';
import { LedgerPagesService } from './ledger-pages.service.js';
import { MovementsController } from './movements.controller.js';
import { MovementsService } from './movements.service.js';
import { OpenCallsService } from './open-calls.service.js';
import { RaisedService } from './raised.service.js';
import { RaisedActsService } from './raised-acts.service.js';
import { SameReportsService } from './same-reports.service.js';
import { StandingHoldsService } from './standing-holds.service.js';
import { StockController } from './stock.controller.js';
import { StockService } from './stock.service.js';
import { StockCheckService } from './stock-check.service.js';
import { StockFiguresService } from './stock-figures.service.js';
import { StockPagesService } from './stock-pages.service.js';
import { StrangeReportsService } from './strange-reports.service.js';

@Module({
  imports: [AuditModule, PeopleModule, ProposalsModule, TerritoryModule],
  controllers: [MovementsController, StockController, DrumsController, HoldsController],
  providers: [
    CasePagesService,
    CasesService,
    DoneService,
    DrumsService,
    HoldCallsService,
    HoldsService,
    KeptStock,
    KnownAtService,
    KnownSubjectService,
    LedgerPagesService,
    LedgerService,
    MovementsService,
    OpenCallsService,
    RaisedActsService,
    RaisedService,
    SameReportsService,
    StandingHoldsService,
    StockCheckService,
    StockFiguresService,
    StockPagesService,
    StockService,
    StrangeReportsService,
  ],
  exports: [
    CasePagesService,
    DoneService,
    DrumsService,
    HoldsService,
    LedgerService,
    OpenCallsService,
    RaisedService,
    SameReportsService,
    StandingHoldsService,
    StockFiguresService,
    StockService,
  ],
})
export class StockModule {}
