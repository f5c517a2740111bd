import { Module } from '@nestjs/common';
import { FlightsModule } from '../flights/flights.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { WeekController } from './week.controller.js';
import { WeekService } from './week.service.js';

@Module({
  imports: [FlightsModule, PlansModule, TerritoryModule],
  controllers: [WeekController],
  providers: [WeekService],
})
export class WeekModule {}
