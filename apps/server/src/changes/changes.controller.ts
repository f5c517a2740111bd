import { createHash } from 'node:crypto';
import { versionsAnswer } from '@drumline/contract/answers';
import { Controller, Get, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { AnsweredBy } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { ChangesService } from './changes.service.js';

@ApiTags('changes')
@Controller('api/changes')
export class ChangesController {
  constructor(private readonly changes: ChangesService) {}

  /**
   * Asked every few seconds, with the ETag of the last answer as If-None-Match: 304 while nothing has changed. What
   * has another version than before is to be read again.
   */
  @OfTheOperator()
  @AnsweredBy({ 200: versionsAnswer })
  @Get()
  async versions(@Req() request: Request, @Res({ passthrough: true }) response: Response) {
    const versions = await this.changes.versions();
    const etag = `"${createHash('sha256').update(JSON.stringify(versions)).digest('base64url').slice(0, 22)}"`;
    response.set({ ETag: etag, 'Cache-Control': 'private, no-cache' });
    if (request.get('If-None-Match') !== etag) return versions;
    response.status(304);
    return undefined;
  }
}
