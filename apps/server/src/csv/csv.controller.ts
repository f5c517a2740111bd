import { csvAddedAnswer, csvImportedAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, Header, HttpCode, Post, Query } from '@nestjs/common';
import { ApiConsumes, ApiProduces, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { CsvDrumsService } from './csv-drums.service.js';
import { CsvTerritoryService, type HowToImport } from './csv-territory.service.js';

const importQuery = z.strictObject({
  dryRun: z
    .enum(['true', 'false'])
    .default('false')
    .meta({ description: 'true: says every fault by line, and writes nothing' }),
});
type ImportQuery = z.output<typeof importQuery>;

/** Of what people keep; drums leave the books by what happens to them only. */
const replaceQuery = importQuery.extend({
  remove: z
    .enum(['yes', 'no'])
    .default('no')
    .meta({ description: 'yes: takes out what is there and not in the file; the dry run lists it' }),
});
type ReplaceQuery = z.output<typeof replaceQuery>;

const file = {
  schema: z
    .string('send the file as text/csv')
    .min(1)
    .meta({ description: 'Headings first; commas, semicolons or tabs; figures with a decimal point' }),
};
const query = { schema: importQuery };
const replacing = { schema: replaceQuery };

const Exported = () => Act('import and export', 'enter', { conditions: 'asked by the route' });
const refuseUnlessExport = (me: Account): void =>
  refuseUnlessMay(me, 'import and export', { to: 'enter', within: ['export'] });

/** Files of a spreadsheet. */
@ApiTags('csv')
@Controller('api/csv')
export class CsvController {
  constructor(
    private readonly territory: CsvTerritoryService,
    private readonly drums: CsvDrumsService,
  ) {}

  @Exported()
  @AnsweredBy({ 200: 'text/csv' })
  @Get('strip-limits')
  @ApiProduces('text/csv')
  @Header('Content-Type', 'text/csv; charset=utf-8')
  stripLimits(@Me() me: Account) {
    refuseUnlessExport(me);
    return this.territory.exportStripLimits();
  }

  @Exported()
  @AnsweredBy({ 200: 'text/csv' })
  @Get('helicopter-tasks')
  @ApiProduces('text/csv')
  @Header('Content-Type', 'text/csv; charset=utf-8')
  helicopterTasks(@Me() me: Account) {
    refuseUnlessExport(me);
    return this.territory.exportHelicopterTasks();
  }

  @Exported()
  @AnsweredBy({ 200: 'text/csv' })
  @Get('drums')
  @ApiProduces('text/csv')
  @Header('Content-Type', 'text/csv; charset=utf-8')
  allDrums(@Me() me: Account) {
    refuseUnlessExport(me);
    return this.drums.export();
  }

  /** Proposed: a second person agrees at /api/proposals. */
  @Act('import and export', 'enter')
  @Answered(csvImportedAnswer)
  @Post('strip-limits')
  @HttpCode(200)
  @ApiConsumes('text/csv')
  importStripLimits(@Body(file) text: string, @Query(replacing) query: ReplaceQuery, @Me() by: Account) {
    return this.territory.importStripLimits(text, howOf(query), by);
  }

  @Act('import and export', 'enter')
  @Answered(csvImportedAnswer)
  @Post('helicopter-tasks')
  @HttpCode(200)
  @ApiConsumes('text/csv')
  importHelicopterTasks(@Body(file) text: string, @Query(replacing) query: ReplaceQuery, @Me() by: Account) {
    return this.territory.importHelicopterTasks(text, howOf(query), by);
  }

  @Act('import and export', 'enter')
  @Answered(csvAddedAnswer)
  @Post('drums')
  @HttpCode(200)
  @ApiConsumes('text/csv')
  importDrums(@Body(file) text: string, @Query(query) { dryRun }: ImportQuery, @Me() by: Account) {
    return this.drums.import(text, dryRun === 'true', by);
  }
}

const howOf = ({ dryRun, remove }: ReplaceQuery): HowToImport => ({
  dryRun: dryRun === 'true',
  remove: remove === 'yes',
});
