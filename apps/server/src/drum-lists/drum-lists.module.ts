import { Module } from '@nestjs/common';
import { FlightsModule } from '../flights/flights.module.js';
import { ProjectionsModule } from '../projections/projections.module.js';
import { StockModule } from '../stock/stock.module.js';
import { DrumListsController } from './drum-lists.controller.js';
import { FillListsService } from './fill-lists.service.js';
import { PickListsService } from './pick-lists.service.js';
import { RetestComingService } from './retest-coming.service.js';

@Module({
  imports: [FlightsModule, ProjectionsModule, StockModule],
  controllers: [DrumListsController],
  providers: [FillListsService, PickListsService, RetestComingService],
})
export class DrumListsModule {}
