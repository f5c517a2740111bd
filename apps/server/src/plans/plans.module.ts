import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { FlightsModule } from '../flights/flights.module.js';
import { AcceptPlanService } from './accept-plan.service.js';
import { ListedPlansService } from './listed-plans.service.js';
import { LoadScenarioService } from './load-scenario.service.js';
import { PlanDifferencesService } from './plan-differences.service.js';
import { PlanQueueService } from './plan-queue.service.js';
import { PlansController } from './plans.controller.js';
import { PlansProcessor } from './plans.processor.js';
import { PlansService } from './plans.service.js';
import { StandingPlanService } from './standing-plan.service.js';

@Module({
  imports: [AuditModule, FlightsModule],
  controllers: [PlansController],
  providers: [
    AcceptPlanService,
    ListedPlansService,
    LoadScenarioService,
    PlanDifferencesService,
    PlanQueueService,
    PlansProcessor,
    PlansService,
    StandingPlanService,
  ],
  exports: [StandingPlanService],
})
export class PlansModule {}
