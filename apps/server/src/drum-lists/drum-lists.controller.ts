import { fillListAnswer, pickListAnswer, retestComingAnswer, wholeList } from '@drumline/contract/answers';
import { Controller, Get, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { Act, OfTheOperator } from '../people/access.js';
import { FillListsService } from './fill-lists.service.js';
import { PickListsService } from './pick-lists.service.js';
import { RetestComingService } from './retest-coming.service.js';

const flight = { schema: z.string().min(1).max(100) };

/** The storekeeper's work. */
@ApiTags('drum lists')
@Controller('api')
export class DrumListsController {
  constructor(
    private readonly fillLists: FillListsService,
    private readonly pickLists: PickListsService,
    private readonly retests: RetestComingService,
  ) {}

  @Act('fill', 'view')
  @Answered(wholeList(fillListAnswer))
  @Get('fill-lists')
  async toFill() {
    return { items: await this.fillLists.all(), next: null };
  }

  @Act('fill', 'view')
  @Answered(wholeList(pickListAnswer))
  @Get('pick-lists')
  async toPick() {
    return { items: await this.pickLists.all(), next: null };
  }

  @Act('fill', 'view')
  @Answered(pickListAnswer)
  @Get('pick-lists/:flight')
  toPickFor(@Param('flight', flight) id: string) {
    return this.pickLists.one(id);
  }

  @OfTheOperator()
  @Answered(wholeList(retestComingAnswer))
  @Get('retest-coming')
  async retestComing() {
    return { items: await this.retests.all(), next: null };
  }
}
