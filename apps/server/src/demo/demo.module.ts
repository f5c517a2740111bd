import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { ScenariosModule } from '../scenarios/scenarios.module.js';
import { StockModule } from '../stock/stock.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { DemoController } from './demo.controller.js';
import { DemoService } from './demo.service.js';

@Module({
  imports: [AuditModule, ScenariosModule, StockModule, TerritoryModule],
  controllers: [DemoController],
  providers: [DemoService],
})
export class DemoModule {}
