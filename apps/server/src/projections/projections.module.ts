import { Module } from '@nestjs/common';
import { ChangesModule } from '../changes/changes.module.js';
import { FlightsModule } from '../flights/flights.module.js';
import { PeopleModule } from '../people/people.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { StockModule } from '../stock/stock.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { MyPlacesController } from './my-places.controller.js';
import { MyPlacesService } from './my-places.service.js';
import { ProjectionsController } from './projections.controller.js';
import { ProjectionsService } from './projections.service.js';

@Module({
  imports: [ChangesModule, FlightsModule, PeopleModule, PlansModule, StockModule, TerritoryModule],
  controllers: [MyPlacesController, ProjectionsController],
  providers: [MyPlacesService, ProjectionsService],
  exports: [ProjectionsService],
})
export class ProjectionsModule {}
