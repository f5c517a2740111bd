import { auditEntryAnswer, pageOf } from '@drumline/contract/answers';
import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act } from '../people/access.js';
import { AuditService } from './audit.service.js';

const auditQuery = pageQuery.extend({
  after: z
    .string()
    .regex(/^\d{1,18}$/, '`after` is the `next` of the page before')
    .optional(),
});

@ApiTags('audit')
@Controller('api/audit')
export class AuditController {
  constructor(private readonly audit: AuditService) {}

  @Act('audit', 'view')
  @Answered(pageOf(auditEntryAnswer))
  @Get()
  list(@Query({ schema: auditQuery }) query: PageQuery) {
    return this.audit.list(query);
  }
}
