import { type FlightsChange, flightsChangeSchema, scenarioSchema } from '@drumline/contract';
import { touchedAnswer, touchedByChangeAnswer } from '@drumline/contract/answers';
import type { SurfaceReport } from '@drumline/network';
import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Act, OfTheOperator } from '../../people/access.js';
import { TouchedFlightsService } from './touched-flights.service.js';

const reportSchema = scenarioSchema.shape.surfaceReports.element;

@Controller('api')
export class TouchedFlightsController {
  constructor(private readonly touched: TouchedFlightsService) {}

  /** What a report would change, before it is given. */
  @ApiTags('surface reports')
  @Act('report surface', 'enter')
  @Answered(touchedAnswer)
  @Get('surface-reports/touches')
  read(@Query({ schema: reportSchema }) report: SurfaceReport) {
    return this.touched.by(report);
  }

  /** Which flights one change of the territory would touch; nothing is changed. */
  @ApiTags('flights')
  @OfTheOperator()
  @Answered(touchedByChangeAnswer)
  @Post('touched-flights')
  @HttpCode(200)
  byChange(@Body({ schema: flightsChangeSchema }) change: FlightsChange) {
    return this.touched.byChange(change);
  }
}
