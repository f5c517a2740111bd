import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { OfTheOperator } from '../people/access.js';
import { DrumsService } from './drums.service.js';
import { type DrumsQuery, drumNumber, drumsQuery, type RaisedQuery, raisedQuery } from './queries.js';
import { RaisedService } from './raised.service.js';

@ApiTags('stock')
@OfTheOperator()
@Controller('api')
export class DrumsController {
  constructor(
    private readonly drums: DrumsService,
    private readonly raised: RaisedService,
  ) {}

  @Get('drums')
  list(@Query({ schema: drumsQuery }) query: DrumsQuery) {
    return this.drums.list(query);
  }

  @Get('drums/:number')
  get(@Param('number', { schema: drumNumber }) number: string) {
    return this.drums.get(number);
  }

  @Get('raised')
  toLookAt(@Query({ schema: raisedQuery }) query: RaisedQuery) {
    return this.raised.list(query);
  }
}
