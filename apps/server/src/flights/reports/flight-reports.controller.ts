import { type FlightReportBody, flightReportSchema } from '@drumline/contract';
import { flightReportAnswer, pageOf, storedFlightReportAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Act, Me, OfTheOperator } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { LocalWordsService } from '../../territory/local-words.service.js';
import { type FlightReportsQuery, flightReportsQuery, reportId } from '../store/flight-query.js';
import { FlightReportsService } from './flight-reports.service.js';

/**
 * What comes in from a crew, by phone or by radio through the dispatcher, perhaps hours later: no version is asked for.
 * Whoever brings drums may report; what they may is asked by the service: it depends on the kind and on whose flight it is.
 */
@ApiTags('flight reports')
@Controller('api/flight-reports')
export class FlightReportsController {
  constructor(
    private readonly reports: FlightReportsService,
    private readonly words: LocalWordsService,
  ) {}

  @OfTheOperator()
  @Answered(pageOf(storedFlightReportAnswer))
  @Get()
  async list(@Query({ schema: flightReportsQuery }) query: FlightReportsQuery) {
    const { items, next } = await this.reports.list(query);
    return { items: await this.words.ofReports(items), next };
  }

  @Act('delivery', 'enter', { conditions: 'asked by the route' })
  @Answered(flightReportAnswer)
  @Put(':id')
  async put(
    @Param('id', { schema: reportId }) id: string,
    @Body({ schema: flightReportSchema }) body: FlightReportBody,
    @Me() by: Account,
  ) {
    const answer = await this.reports.put(id, body, by);
    const [report] = await this.words.ofReports([answer.report]);
    return { ...answer, report: report! };
  }
}
