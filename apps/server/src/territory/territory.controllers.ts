import { scenarioSchema } from '@drumline/contract';
import { entryOf, listedEntryOf, pageOf, proposedAnswer } from '@drumline/contract/answers';
import { Body, Controller, Delete, Get, Param, Put, Query, Res, type Type } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { z } from 'zod';
import { AnsweredBy } from '../http/answers.js';
import { type Expected, ExpectedVersion, etagOf } from '../http/etag.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { PeopleService } from '../people/people.service.js';
import { mayDo, refuseUnlessMay } from '../people/permission.js';
import type { Entry } from './entry.table.js';
import { type Kind, kinds } from './kinds.js';
import { TerritoryService } from './territory.service.js';
import { type Changed, TerritoryChangesService } from './territory-changes.service.js';

/** The same routes for every kind, each with its own schema and its own line of the permission table. */
const controllerOf = (kind: Kind): Type => {
  const { name, schema, act } = kind;
  const idSchema = kind.idOf === null ? z.uuid() : z.string().min(1).max(100);
  const Seen = () =>
    kind.seenBy === 'the operator' ? OfTheOperator() : Act(act, 'view', { conditions: 'asked by the route' });
  const kept = keptSchemaOf(kind);
  const Changes = () => Act(act, 'enter', { conditions: 'asked by the route' });

  @ApiTags(name)
  @Controller(`api/${name}`)
  class TerritoryController {
    constructor(
      private readonly territory: TerritoryService,
      private readonly changes: TerritoryChangesService,
      private readonly people: PeopleService,
    ) {}

    @Seen()
    @AnsweredBy({ 200: pageOf(listedEntryOf(kept)) })
    @Get()
    async list(@Query({ schema: pageQuery }) query: PageQuery, @Me() me: Account) {
      const seesAll = kind.seenBy === 'the operator' || mayDo(me, act, { to: 'view' }).kind === 'allowed';
      const { items, next } = await this.territory.list(kind, seesAll ? null : (me.crew ?? ''), query);
      const names = await this.people.namesOf(items.map(({ changedBy }) => changedBy));
      return {
        items: items.map((entry) => ({
          ...shown(entry),
          changedBy: names.get(entry.changedBy ?? '') ?? null,
        })),
        next,
      };
    }

    @Seen()
    @AnsweredBy({ 200: entryOf(kept) })
    @Get(':id')
    async get(
      @Param('id', { schema: idSchema }) id: string,
      @Me() me: Account,
      @Res({ passthrough: true }) response: Response,
    ) {
      const entry = await this.territory.get(kind, id);
      const own = me.crew !== null && kind.crewOf(entry.data) === me.crew;
      if (kind.seenBy === 'the line') refuseUnlessMay(me, act, { to: 'view', own });
      return answer(response, { entry });
    }

    @Changes()
    @AnsweredBy({ 200: entryOf(kept), 202: proposedAnswer })
    @Put(':id')
    async put(
      @Param('id', { schema: idSchema }) id: string,
      @Body({ schema }) data: object,
      @ExpectedVersion() expected: Expected,
      @Me() by: Account,
      @Res({ passthrough: true }) response: Response,
    ) {
      return answer(response, await this.changes.change({ kind, id, data, expected }, by));
    }

    @Changes()
    @AnsweredBy({ 202: proposedAnswer, 204: 'nothing' })
    @Delete(':id')
    async remove(
      @Param('id', { schema: idSchema }) id: string,
      @ExpectedVersion() expected: Expected,
      @Me() by: Account,
      @Res({ passthrough: true }) response: Response,
    ) {
      return answer(response, await this.changes.change({ kind, id, data: null, expected }, by));
    }
  }
  // Nest and the OpenAPI document tell classes apart by name.
  Object.defineProperty(TerritoryController, 'name', { value: `${name}-controller` });
  return TerritoryController;
};

/** As it is kept: an approval has the names of those who agreed to it. */
const keptSchemaOf = ({ name, schema }: Kind): z.ZodType =>
  name === 'authority-approvals' ? scenarioSchema.shape.approvals.unwrap().element : schema;

const shown = ({ id, version, data, changedAt }: Entry) => ({ id, version, changedAt, data });

/** 202 with the proposal where a second person has to agree, 204 where the thing is gone. */
const answer = (response: Response, changed: Changed) => {
  if ('proposal' in changed) {
    response.status(202);
    return { proposal: changed.proposal };
  }
  if (changed.entry === null) {
    response.status(204);
    return undefined;
  }
  response.set('ETag', etagOf(changed.entry.version));
  return shown(changed.entry);
};

export const territoryControllers = kinds.map(controllerOf);
