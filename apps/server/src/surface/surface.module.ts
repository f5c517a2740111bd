import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { SurfaceController } from './surface.controller.js';
import { SurfaceService } from './surface.service.js';

@Module({
  imports: [AuditModule, TerritoryModule],
  controllers: [SurfaceController],
  providers: [SurfaceService],
  exports: [SurfaceService],
})
export class SurfaceModule {}
