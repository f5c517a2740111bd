import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ScenariosModule } from '../scenarios/scenarios.module.js';
import { StockModule } from '../stock/stock.module.js';
import { SurfaceModule } from '../surface/surface.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { AddDrumsController } from './add-drums.controller.js';
import { AddDrumsService } from './add-drums.service.js';
import { AmendFlightService } from './amend-flight.service.js';
import { AwayFlightsService } from './away-flights.service.js';
import { BoardService } from './board.service.js';
import { CloseFlightService } from './close-flight.service.js';
import { FlightActsService } from './flight-acts.service.js';
import { FlightCardController } from './flight-card.controller.js';
import { FlightCardService } from './flight-card.service.js';
import { FlightDrumsService } from './flight-drums.service.js';
import { FlightPagesService } from './flight-pages.service.js';
import { FlightRaisedService } from './flight-raised.service.js';
import { FlightReportsController } from './flight-reports.controller.js';
import { FlightReportsService } from './flight-reports.service.js';
import { FlightStoreService } from './flight-store.service.js';
import { FlightsController } from './flights.controller.js';
import { FlightsService } from './flights.service.js';
import { FlownFlightsController } from './flown-flights.controller.js';
import { HoldMarksService } from './hold-marks.service.js';
import { LoadSheetsController } from './load-sheets.controller.js';
import { LoadSheetsService } from './load-sheets.service.js';
import { LoadWordsService } from './load-words.service.js';
import { LookAtReportService } from './look-at-report.service.js';
import { MyDayController } from './my-day.controller.js';
import { MyDayService } from './my-day.service.js';
import { OfferFlightsService } from './offer-flights.service.js';
import { PositionsService } from './positions.service.js';
import { RecheckFlightsService } from './recheck-flights.service.js';
import { ReleaseFlightsController } from './release-flights.controller.js';
import { ReportAuthorService } from './report-author.service.js';
import { TakeAboardService } from './take-aboard.service.js';
import { TouchedFlightsController } from './touched-flights.controller.js';
import { TouchedFlightsService } from './touched-flights.service.js';

@Module({
  imports: [AuditModule, PeopleModule, ScenariosModule, StockModule, SurfaceModule, TerritoryModule],
  controllers: [
    ReleaseFlightsController,
    FlownFlightsController,
    FlightsController,
    FlightReportsController,
    FlightCardController,
    AddDrumsController,
    LoadSheetsController,
    MyDayController,
    TouchedFlightsController,
  ],
  providers: [
    AddDrumsService,
    AmendFlightService,
    AwayFlightsService,
    BoardService,
    CloseFlightService,
    FlightActsService,
    FlightCardService,
    FlightDrumsService,
    FlightPagesService,
    FlightRaisedService,
    FlightReportsService,
    FlightStoreService,
    FlightsService,
    HoldMarksService,
    LoadSheetsService,
    LoadWordsService,
    LookAtReportService,
    MyDayService,
    OfferFlightsService,
    PositionsService,
    RecheckFlightsService,
    ReportAuthorService,
    TakeAboardService,
    TouchedFlightsService,
  ],
  exports: [
    LoadSheetsService,
    AwayFlightsService,
    BoardService,
    FlightStoreService,
    OfferFlightsService,
    RecheckFlightsService,
  ],
})
export class FlightsModule {}
