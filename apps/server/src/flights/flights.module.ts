import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { PeopleModule } from '../people/people.module.js';
import { ScenariosModule } from '../scenarios/scenarios.module.js';
import { StockModule } from '../stock/stock.module.js';
import { SurfaceModule } from '../surface/surface.module.js';
import { TerritoryModule } from '../territory/territory.module.js';
import { AwayFlightsService } from './away/away-flights.service.js';
import { FlownFlightsController } from './away/flown-flights.controller.js';
import { MyDayController } from './away/my-day.controller.js';
import { MyDayService } from './away/my-day.service.js';
import { BoardService } from './board/board.service.js';
import { FlightDrumsService } from './board/flight-drums.service.js';
import { FlightsController } from './flights.controller.js';
import { FlightsService } from './flights.service.js';
import { FlightRaisedService } from './marks/flight-raised.service.js';
import { HoldMarksService } from './marks/hold-marks.service.js';
import { RecheckFlightsService } from './marks/recheck-flights.service.js';
import { TouchedFlightsController } from './marks/touched-flights.controller.js';
import { TouchedFlightsService } from './marks/touched-flights.service.js';
import { OfferFlightsService } from './offered/offer-flights.service.js';
import { AddDrumsController } from './office/add-drums.controller.js';
import { AddDrumsService } from './office/add-drums.service.js';
import { AmendFlightService } from './office/amend-flight.service.js';
import { CloseFlightService } from './office/close-flight.service.js';
import { FlightActsService } from './office/flight-acts.service.js';
import { FlightCardController } from './office/flight-card.controller.js';
import { FlightCardService } from './office/flight-card.service.js';
import { ReleaseFlightsController } from './office/release-flights.controller.js';
import { FlightReportsController } from './reports/flight-reports.controller.js';
import { FlightReportsService } from './reports/flight-reports.service.js';
import { LookAtReportService } from './reports/look-at-report.service.js';
import { ReportAuthorService } from './reports/report-author.service.js';
import { TakeAboardService } from './reports/take-aboard.service.js';
import { LoadSheetsController } from './sheet/load-sheets.controller.js';
import { LoadSheetsService } from './sheet/load-sheets.service.js';
import { LoadWordsService } from './sheet/load-words.service.js';
import { PositionsService } from './sheet/positions.service.js';
import { FlightPagesService } from './store/flight-pages.service.js';
import { FlightStoreService } from './store/flight-store.service.js';

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
