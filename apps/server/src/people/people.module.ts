import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { AuditModule } from '../audit/audit.module.js';
import { AccessGuard } from './access.guard.js';
import { MeController } from './me.controller.js';
import { PeopleController } from './people.controller.js';
import { PeopleService } from './people.service.js';
import { SessionsService } from './sessions.service.js';
import { SignInService } from './sign-in.service.js';

@Module({
  imports: [AuditModule],
  controllers: [MeController, PeopleController],
  providers: [PeopleService, SessionsService, SignInService, { provide: APP_GUARD, useClass: AccessGuard }],
  exports: [PeopleService, SessionsService],
})
export class PeopleModule {}
