import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { HandoverController } from './handover.controller.js';
import { HandoversService } from './handovers.service.js';

@Module({
  imports: [AuditModule, TerritoryModule],
  controllers: [HandoverController],
  providers: [HandoversService],
  exports: [HandoversService],
})
export class HandoverModule {}
