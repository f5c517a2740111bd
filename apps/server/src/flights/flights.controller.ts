import { type Amendment, amendmentSchema, optionalReasonSchema, reasonSchema } from '@drumline/contract';
import {
  amendmentFaultsAnswer,
  consequenceAnswer,
  flightAnswer,
  flightPastAnswer,
  pageOf,
  shownFlightAnswer,
  wholeList,
} from '@drumline/contract/answers';
import type { FlightAct } from '@drumline/planning';
import { Body, Controller, Get, Header, HttpCode, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { type Expected, ExpectedVersion, etagOf } from '../http/etag.js';
import { writtenOut } from '../http/page.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { FlightsService } from './flights.service.js';
import { AmendFlightService } from './office/amend-flight.service.js';
import { asFieldFault } from './office/check-flight.js';
import { FlightActsService, type WithLoads } from './office/flight-acts.service.js';
import { FlightPagesService } from './store/flight-pages.service.js';
import { type FlightQuery, flightId, flightQuery } from './store/flight-query.js';

type Reason = z.output<typeof optionalReasonSchema>;

/** The week's flights and what the office does with them; which act is open when stands in docs/flight-states.md. */
@ApiTags('flights')
@Act('approve flight', 'decide')
@Controller('api/flights')
export class FlightsController {
  constructor(
    private readonly flights: FlightsService,
    private readonly pages: FlightPagesService,
    private readonly acts: FlightActsService,
    private readonly amendments: AmendFlightService,
  ) {}

  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @AnsweredBy({ 200: pageOf(flightAnswer) })
  @Get()
  @Header('Content-Type', writtenOut)
  list(@Query({ schema: flightQuery }) query: FlightQuery, @Me() me: Account) {
    return this.pages.list(query, me);
  }

  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(shownFlightAnswer)
  @Get(':id')
  async get(
    @Param('id', { schema: flightId }) id: string,
    @Me() me: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.flights.get(id, me));
  }

  /** Every version, the oldest first. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(wholeList(flightPastAnswer))
  @Get(':id/history')
  async history(@Param('id', { schema: flightId }) id: string, @Me() me: Account) {
    return { items: await this.flights.history(id, me), next: null };
  }

  /** What happens if it is declined, before it is done. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(consequenceAnswer)
  @Get(':id/consequence')
  consequence(@Param('id', { schema: flightId }) id: string, @Me() me: Account) {
    return this.flights.consequence(id, me);
  }

  @Answered(shownFlightAnswer)
  @Post(':id/approve')
  @HttpCode(200)
  approve(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: optionalReasonSchema }) body: Reason,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'approve', expected, ...body }, by, response);
  }

  @Answered(shownFlightAnswer)
  @Post(':id/decline')
  @HttpCode(200)
  decline(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: reasonSchema }) body: Required<Reason>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'decline', expected, ...body }, by, response);
  }

  @Answered(shownFlightAnswer)
  @Post(':id/call-off')
  @HttpCode(200)
  callOff(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: reasonSchema }) body: Required<Reason>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'call off', expected, ...body }, by, response);
  }

  /** To the pilot's phone or sheet, with its version. */
  @Answered(shownFlightAnswer)
  @Post(':id/give')
  @HttpCode(200)
  give(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: optionalReasonSchema }) body: Reason,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'give', expected, ...body }, by, response);
  }

  /** The decision it needs: it stays as it is. */
  @Answered(shownFlightAnswer)
  @Post(':id/keep')
  @HttpCode(200)
  keep(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: reasonSchema }) body: Required<Reason>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'keep', expected, ...body }, by, response);
  }

  /** "Needs a decision", with the reason. */
  @Answered(shownFlightAnswer)
  @Post(':id/mark')
  @HttpCode(200)
  mark(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: reasonSchema }) body: Required<Reason>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return this.act({ id, act: 'mark', expected, ...body }, by, response);
  }

  @Answered(shownFlightAnswer)
  @Post(':id/amend')
  @HttpCode(200)
  async amend(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: amendmentSchema }) amendment: Amendment,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.amendments.amend(id, amendment, expected, by));
  }

  /** What an amendment would break, and the off time; nothing is changed. */
  @Answered(amendmentFaultsAnswer)
  @Post(':id/amend/check')
  @HttpCode(200)
  async checkAmendment(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: amendmentSchema }) amendment: Amendment,
  ) {
    const { faults, departs } = await this.amendments.check(id, amendment);
    return { faults: faults.map(asFieldFault), departs };
  }

  private async act(
    wanted: { id: string; act: FlightAct; expected: Expected; reason?: string },
    by: Account,
    response: Response,
  ) {
    return shownFlight(response, await this.acts.act(wanted, by));
  }
}

export const shownFlight = (response: Response, { flight, loads, raised }: WithLoads) => {
  response.set('ETag', etagOf(flight.revision));
  return { ...flight, loads: loads.map(({ stop, place, drum }) => ({ stop, place, drum })), raised };
};
