import { weekAnswer } from '@drumline/contract/answers';
import { Controller, Get, Header, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { AnsweredBy } from '../http/answers.js';
import { writtenOut } from '../http/page.js';
import { Act } from '../people/access.js';
import { WeekPagesService } from './week-pages.service.js';

const weekQuery = z.strictObject({
  from: z.iso
    .date('a day is written YYYY-MM-DD')
    .regex(/^(19|20|21)/, 'a day is of the years 1900 to 2199')
    .optional()
    .meta({ description: 'First day; absent: Monday of the week of today' }),
  days: z
    .string()
    .regex(/^\d{1,2}$/, 'days are a whole number from 1 to 31')
    .transform(Number)
    .refine((days) => days >= 1 && days <= 31, 'days are a whole number from 1 to 31')
    .default(7),
});

export type WeekQuery = z.output<typeof weekQuery>;

@ApiTags('week')
@Act('approve flight', 'view')
@Controller('api/week')
export class WeekController {
  constructor(private readonly pages: WeekPagesService) {}

  /** Aircraft by day with their flights, and what the flights add up to. */
  @AnsweredBy({ 200: weekAnswer })
  @Get()
  @Header('Content-Type', writtenOut)
  read(@Query({ schema: weekQuery }) query: WeekQuery) {
    return this.pages.read(query);
  }
}
