import { type FlightReportBody, flightReportSchema } from '@drumline/contract';
import { flightReportAnswer, pageOf, storedFlightReportAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Act, Me, OfTheOperator } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { type FlightReportsQuery, flightReportsQuery, reportId } from '../store/flight-query.js';
import { FlightReportsService } from './flight-reports.service.js';

/**
 * What comes in from a crew, by phone or by radio through the dispatcher, perhaps hours later: no version is asked for.
 * Whoever brings drums may report; what they may is asked by the service: it depends on the kind and on whose flight it is.
 */
@ApiTags('flight reports')
@Controller('api/flight-reports')
export class FlightReportsController {
  constructor(private readonly reports: FlightReportsService) {}

  @OfTheOperator()
  @Answered(pageOf(storedFlightReportAnswer))
  @Get()
  list(@Query({ schema: flightReportsQuery }) query: FlightReportsQuery) {
    return this.reports.list(query);
  }

  @Act('delivery', 'enter', { conditions: 'asked by the route' })
  @Answered(flightReportAnswer)
  @Put(':id')
  put(
    @Param('id', { schema: reportId }) id: string,
    @Body({ schema: flightReportSchema }) body: FlightReportBody,
    @Me() by: Account,
  ) {
    return this.reports.put(id, body, by);
  }
}
