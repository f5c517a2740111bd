import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { ScenariosModule } from '../scenarios/scenarios.module.js';
import { StockModule } from '../stock/stock.module.js';
import { AmendFlightService } from './amend-flight.service.js';
import { BoardService } from './board.service.js';
import { FlightActsService } from './flight-acts.service.js';
import { FlightReportsController } from './flight-reports.controller.js';
import { FlightStoreService } from './flight-store.service.js';
import { FlightsController } from './flights.controller.js';
import { FlightsService } from './flights.service.js';
import { OfferFlightsService } from './offer-flights.service.js';
import { RecheckFlightsService } from './recheck-flights.service.js';
import { ReleaseFlightsController } from './release-flights.controller.js';

@Module({
  imports: [AuditModule, ScenariosModule, StockModule],
  controllers: [ReleaseFlightsController, FlightsController, FlightReportsController],
  providers: [
    AmendFlightService,
    BoardService,
    FlightActsService,
    FlightStoreService,
    FlightsService,
    OfferFlightsService,
    RecheckFlightsService,
  ],
  exports: [BoardService, OfferFlightsService, RecheckFlightsService],
})
export class FlightsModule {}
