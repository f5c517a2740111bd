import { Module } from '@nestjs/common';
import { ChangesModule } from '../changes/changes.module.js';
import { FlightsModule } from '../flights/flights.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { WeekController } from './week.controller.js';
import { WeekService } from './week.service.js';
import { WeekPagesService } from './week-pages.service.js';

@Module({
  imports: [ChangesModule, FlightsModule, PlansModule, TerritoryModule],
  controllers: [WeekController],
  providers: [WeekPagesService, WeekService],
})
export class WeekModule {}
