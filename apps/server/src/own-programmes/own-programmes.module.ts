import { Module } from '@nestjs/common';
import { TerritoryModule } from '../territory/territory.module.js';
import { OwnProgrammesController } from './own-programmes.controller.js';
import { OwnProgrammesService } from './own-programmes.service.js';

@Module({
  imports: [TerritoryModule],
  controllers: [OwnProgrammesController],
  providers: [OwnProgrammesService],
})
export class OwnProgrammesModule {}
