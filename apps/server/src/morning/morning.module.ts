import { Module } from '@nestjs/common';
import { ChangesModule } from '../changes/changes.module.js';
import { FlightsModule } from '../flights/flights.module.js';
import { HandoverModule } from '../handover/handover.module.js';
import { ProjectionsModule } from '../projections/projections.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { StockModule } from '../stock/stock.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { ChangedSinceService } from './changed-since.service.js';
import { MorningController } from './morning.controller.js';
import { MorningService } from './morning.service.js';
import { PaperEntriesController } from './paper-entries.controller.js';
import { PaperEntriesService } from './paper-entries.service.js';

@Module({
  imports: [
    ChangesModule,
    FlightsModule,
    HandoverModule,
    ProjectionsModule,
    ProposalsModule,
    StockModule,
    TerritoryModule,
  ],
  controllers: [MorningController, PaperEntriesController],
  providers: [ChangedSinceService, MorningService, PaperEntriesService],
})
export class MorningModule {}
