import { Module } from '@nestjs/common';
import { FlightsModule } from '../flights/flights.module.js';
import { PeopleModule } from '../people/people.module.js';
import { StockModule } from '../stock/stock.module.js';
import { ProjectionsController } from './projections.controller.js';
import { ProjectionsService } from './projections.service.js';

@Module({
  imports: [FlightsModule, PeopleModule, StockModule],
  controllers: [ProjectionsController],
  providers: [ProjectionsService],
  exports: [ProjectionsService],
})
export class ProjectionsModule {}
