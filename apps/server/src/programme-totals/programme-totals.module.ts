import { Module } from '@nestjs/common';
import { TerritoryModule } from '../territory/territory.module.js';
import { ProgrammeTotalsController } from './programme-totals.controller.js';
import { ProgrammeTotalsService } from './programme-totals.service.js';

@Module({
  imports: [TerritoryModule],
  controllers: [ProgrammeTotalsController],
  providers: [ProgrammeTotalsService],
})
export class ProgrammeTotalsModule {}
