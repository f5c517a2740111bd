import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { CasePagesService } from './cases/case-pages.service.js';
import { CasesService } from './cases/cases.service.js';
import { DrumsController } from './drums.controller.js';
import { DrumsService } from './drums.service.js';
import { DoneService } from './figures/done.service.js';
import { KeptStock } from './figures/kept-stock.js';
import { StockCheckService } from './figures/stock-check.service.js';
import { StockFiguresService } from './figures/stock-figures.service.js';
import { StockPagesService } from './figures/stock-pages.service.js';
import { HoldCallsService } from './holds/hold-calls.service.js';
import { HoldsController } from './holds/holds.controller.js';
import { HoldsService } from './holds/holds.service.js';
import { KnownSubjectService } from './holds/known-subject.service.js';
import { OpenCallsService } from './holds/open-calls.service.js';
import { ReleasesService } from './holds/releases.service.js';
import { StandingHoldsService } from './holds/standing-holds.service.js';
import { KnownAtService } from './ledger/known-at.service.js';
import { LedgerService } from './ledger/ledger.service.js';
import { LedgerPagesService } from './ledger/ledger-pages.service.js';
import { MovementsController } from './ledger/movements.controller.js';
import { MovementsService } from './ledger/movements.service.js';
import { SameReportsService } from './ledger/same-reports.service.js';
import { StrangeReportsService } from './ledger/strange-reports.service.js';
import { RaisedService } from './raised/raised.service.js';
import { RaisedActsService } from './raised/raised-acts.service.js';
import { StockController } from './stock.controller.js';
import { StockService } from './stock.service.js';

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
    ReleasesService,
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
