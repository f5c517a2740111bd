import { scenarioSchema } from '@drumline/contract';
import { touchedAnswer } from '@drumline/contract/answers';
import type { SurfaceReport } from '@drumline/network';
import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Act } from '../../people/access.js';
import { TouchedFlightsService } from './touched-flights.service.js';

const reportSchema = scenarioSchema.shape.surfaceReports.element;

@ApiTags('surface reports')
@Controller('api/surface-reports/touches')
export class TouchedFlightsController {
  constructor(private readonly touched: TouchedFlightsService) {}

  /** What a report would change, before it is given. */
  @Act('report surface', 'enter')
  @Answered(touchedAnswer)
  @Get()
  read(@Query({ schema: reportSchema }) report: SurfaceReport) {
    return this.touched.by(report);
  }
}
