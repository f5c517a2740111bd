import { type DynamicModule, Module } from '@nestjs/common';
import { AuditModule } from './audit/audit.module.js';
import { ChangesModule } from './changes/changes.module.js';
import { CsvModule } from './csv/csv.module.js';
import { DemoModule } from './demo/demo.module.js';
import { DrumListsModule } from './drum-lists/drum-lists.module.js';
import { FlightsModule } from './flights/flights.module.js';
import { HandoverModule } from './handover/handover.module.js';
import { HealthModule } from './health/health.module.js';
import { MorningModule } from './morning/morning.module.js';
import { OwnProgrammesModule } from './own-programmes/own-programmes.module.js';
import { PaperModule } from './paper/paper.module.js';
import { PeopleModule } from './people/people.module.js';
import { PlansModule } from './plans/plans.module.js';
import { type Platform, platformModule } from './platform.module.js';
import { ProgrammeTotalsModule } from './programme-totals/programme-totals.module.js';
import { ProjectionsModule } from './projections/projections.module.js';
import { ProposalsModule } from './proposals/proposals.module.js';
import { ScenariosModule } from './scenarios/scenarios.module.js';
import { SurfaceModule } from './surface/surface.module.js';
import { TerritoryModule } from './territory/territory.module.js';
import { WeekModule } from './week/week.module.js';

/** Every feature, one line each. */
@Module({
  imports: [
    HealthModule,
    PeopleModule,
    AuditModule,
    ProposalsModule,
    TerritoryModule,
    SurfaceModule,
    ScenariosModule,
    DemoModule,
    FlightsModule,
    DrumListsModule,
    PlansModule,
    WeekModule,
    HandoverModule,
    MorningModule,
    PaperModule,
    ProjectionsModule,
    OwnProgrammesModule,
    ProgrammeTotalsModule,
    CsvModule,
    ChangesModule,
  ],
})
class AppModule {}

/** The application on what it stands on. */
export const appOn = (platform: Platform): DynamicModule => ({
  module: AppModule,
  imports: [platformModule(platform)],
});
