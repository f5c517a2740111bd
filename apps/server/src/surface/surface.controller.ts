import { scenarioSchema } from '@drumline/contract';
import { pageOf, storedSurfaceReportAnswer } from '@drumline/contract/answers';
import type { SurfaceReport } from '@drumline/network';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { SurfaceService } from './surface.service.js';

const reportSchema = scenarioSchema.shape.surfaceReports.element;
const listQuery = pageQuery.extend({ after: z.uuid().optional() });

@ApiTags('surface reports')
@Controller('api/surface-reports')
export class SurfaceController {
  constructor(private readonly surface: SurfaceService) {}

  @OfTheOperator()
  @Answered(pageOf(storedSurfaceReportAnswer))
  @Get()
  list(@Query({ schema: listQuery }) query: PageQuery) {
    return this.surface.list(query);
  }

  @Act('report surface', 'enter')
  @Answered(storedSurfaceReportAnswer)
  @Put(':id')
  put(
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: reportSchema }) report: SurfaceReport,
    @Me() by: Account,
  ) {
    return this.surface.put(id, report, by);
  }
}
