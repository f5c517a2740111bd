import { Module } from '@nestjs/common';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { ScenariosModule } from '../scenarios/scenarios.module.js';
import { StockModule } from '../stock/stock.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { CsvController } from './csv.controller.js';
import { CsvDrumsService } from './csv-drums.service.js';
import { CsvTerritoryService } from './csv-territory.service.js';

@Module({
  imports: [ProposalsModule, ScenariosModule, StockModule, TerritoryModule],
  controllers: [CsvController],
  providers: [CsvDrumsService, CsvTerritoryService],
})
export class CsvModule {}
