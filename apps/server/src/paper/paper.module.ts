import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { FlightsModule } from '../flights/flights.module.js';
import { PeopleModule } from '../people/people.module.js';
import { StockModule } from '../stock/stock.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { CacheBoardsService } from './cache-board/cache-boards.service.js';
import { DayPacksService } from './day-pack/day-packs.service.js';
import { PaperController } from './paper.controller.js';
import { PrintsService } from './prints.service.js';
import { SheetPrintsService } from './sheet/sheet-prints.service.js';
import { SlipNumbersService } from './slips/slip-numbers.service.js';

@Module({
  imports: [AuditModule, FlightsModule, PeopleModule, StockModule, TerritoryModule],
  controllers: [PaperController],
  providers: [CacheBoardsService, DayPacksService, PrintsService, SheetPrintsService, SlipNumbersService],
})
export class PaperModule {}
