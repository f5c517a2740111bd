import { type ProjectionChange, projectionChangeSchema } from '@drumline/contract';
import { projectionAnswer, projectionChangeAnswer, projectionsAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { ProjectionsService } from './projections.service.js';

const projectionsQuery = z.strictObject({
  serviceLevel: z
    .enum(['90', '95', '99'])
    .default('95')
    .transform(Number)
    .meta({ description: 'Of the suggested minimum, in %' }),
});
type ProjectionsQuery = z.output<typeof projectionsQuery>;

const query = { schema: projectionsQuery };
const place = { schema: z.string().min(1).max(100) };

@ApiTags('projections')
@OfTheOperator()
@Controller('api/projections')
export class ProjectionsController {
  constructor(private readonly projections: ProjectionsService) {}

  @Answered(projectionsAnswer)
  @Get()
  all(@Query(query) { serviceLevel }: ProjectionsQuery) {
    return this.projections.all(serviceLevel);
  }

  /** What one change of the territory would do to the caches; nothing is changed. */
  @Answered(projectionChangeAnswer)
  @Post('consequence')
  @HttpCode(200)
  consequence(@Body({ schema: projectionChangeSchema }) change: ProjectionChange) {
    return this.projections.consequence(change);
  }

  @Answered(projectionAnswer)
  @Get(':place')
  one(@Param('place', place) code: string, @Query(query) { serviceLevel }: ProjectionsQuery) {
    return this.projections.one(code, serviceLevel);
  }
}
