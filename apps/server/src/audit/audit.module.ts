import { Module } from '@nestjs/common';
import { AuditController } from './audit.controller.js';
import { AuditService } from './audit.service.js';
import { PrintedSheetsService } from './printed-sheets.service.js';

const services = [AuditService, PrintedSheetsService];

@Module({ controllers: [AuditController], providers: services, exports: services })
export class AuditModule {}
