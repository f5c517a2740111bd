import { type FlightReportBody, flightReportSchema } from '@drumline/contract';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { type FlightReportsQuery, flightReportsQuery, reportId } from './flight-query.js';
import { FlightReportsService } from './flight-reports.service.js';

/**
 * What comes in from a crew, by phone or by radio through the dispatcher, perhaps hours later: no version is asked for.
 * Who may enter what is asked by the service: it depends on the kind of report and on whose flight it is.
 */
@ApiTags('flight reports')
@OfTheOperator()
@Controller('api/flight-reports')
export class FlightReportsController {
  constructor(private readonly reports: FlightReportsService) {}

  @Get()
  list(@Query({ schema: flightReportsQuery }) query: FlightReportsQuery) {
    return this.reports.list(query);
  }

  @Put(':id')
  put(
    @Param('id', { schema: reportId }) id: string,
    @Body({ schema: flightReportSchema }) body: FlightReportBody,
    @Me() by: Account,
  ) {
    return this.reports.put(id, body, by);
  }
}
