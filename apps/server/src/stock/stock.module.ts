import { Module } from '@nestjs/common';
import { TerritoryModule } from '../territory/territory.module.js';
import { KeptStock } from './kept-stock.js';
import { LedgerService } from './ledger.service.js';
import { StockService } from './stock.service.js';
import { StockFiguresService } from './stock-figures.service.js';

@Module({
  imports: [TerritoryModule],
  providers: [KeptStock, LedgerService, StockFiguresService, StockService],
  exports: [StockFiguresService, StockService],
})
export class StockModule {}
