import { optionalReasonSchema } from '@drumline/contract';
import type { FlightAct } from '@drumline/planning';
import { Body, Controller, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { z } from 'zod';
import { type Expected, ExpectedVersion } from '../http/etag.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { FlightActsService } from './flight-acts.service.js';
import { flightId } from './flight-query.js';
import { shownFlight } from './flights.controller.js';
import { FlightsService } from './flights.service.js';

/** What comes in from a crew, by phone or by radio through the dispatcher. */
const reports = {
  refuse: 'refuse',
  'take-off': 'take off',
  land: 'land',
  'turn-back': 'turn back',
  'end-elsewhere': 'end elsewhere',
} as const satisfies Readonly<Record<string, FlightAct>>;

const reportSchema = z.enum(Object.keys(reports) as [keyof typeof reports]);

@ApiTags('flights')
@Controller('api/flights')
export class FlightReportsController {
  constructor(
    private readonly flights: FlightsService,
    private readonly acts: FlightActsService,
  ) {}

  @Act('delivery', 'enter', { conditions: 'asked by the route' })
  @Post(':id/reports/:report')
  @HttpCode(200)
  async report(
    @Param('id', { schema: flightId }) id: string,
    @Param('report', { schema: reportSchema }) report: keyof typeof reports,
    @Body({ schema: optionalReasonSchema }) body: z.output<typeof optionalReasonSchema>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    refuseUnlessMay(by, 'delivery', { to: 'enter', within: ['by radio'] });
    await this.flights.refuseForeign(id, by);
    return shownFlight(response, await this.acts.act({ id, act: reports[report], expected, ...body }, by));
  }
}
