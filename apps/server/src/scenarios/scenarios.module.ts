import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { StockModule } from '../stock/stock.module.js';
import { SurfaceModule } from '../surface/surface.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { PayloadController } from './payload.controller.js';
import { PayloadService } from './payload.service.js';
import { ScenariosController } from './scenarios.controller.js';
import { ScenariosService } from './scenarios.service.js';

@Module({
  imports: [AuditModule, StockModule, SurfaceModule, TerritoryModule],
  controllers: [ScenariosController, PayloadController],
  providers: [ScenariosService, PayloadService],
  exports: [ScenariosService],
})
export class ScenariosModule {}
