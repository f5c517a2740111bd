import type { WeekAnswer } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { ChangesService, type Versions } from '../changes/changes.service.js';
import { KeptAnswers } from '../http/kept-answers.js';
import type { WeekQuery } from './week.controller.js';
import { WeekService } from './week.service.js';

/** A board is made anew after so long at the latest: it says what time it is. */
const longestMs = 60_000;
/** While drums move without a pause, what they add up to is worked out no more often than this. */
const behindMs = 5_000;

interface MadeFrom {
  readonly versions: Versions;
  readonly atMs: number;
}

/**
 * The week board as JSON text. Flights, reports, plans and the territory on it are those of the moment of the request, whichever
 * process changed them; what stock alone decides may be 5 s old, and `stockIsBehind` then says so.
 */
@Injectable()
export class WeekPagesService {
  private readonly kept = new KeptAnswers<MadeFrom, ReturnType<typeof bothTexts>>({ mayServe, most: 50 });

  constructor(
    private readonly week: WeekService,
    private readonly changes: ChangesService,
  ) {}

  async read(query: WeekQuery, atMs = performance.now()): Promise<string> {
    const versions = await this.changes.versions();
    const { from, answer } = await this.kept.read(JSON.stringify(query), { versions, atMs }, async () =>
      bothTexts(await this.week.read(query)),
    );
    return from.versions.stock === versions.stock ? answer.now : answer.behind;
  }
}

const bothTexts = (week: Omit<WeekAnswer, 'stockIsBehind'>) => ({
  now: JSON.stringify({ ...week, stockIsBehind: false } satisfies WeekAnswer),
  behind: JSON.stringify({ ...week, stockIsBehind: true } satisfies WeekAnswer),
});

const mayServe = ({ versions: { stock, ...rest }, atMs }: MadeFrom, now: MadeFrom): boolean => {
  const age = now.atMs - atMs;
  const { stock: stockNow, ...restNow } = now.versions;
  const isSame = (Object.keys(rest) as (keyof typeof rest)[]).every((kind) => rest[kind] === restNow[kind]);
  return isSame && age < (stock === stockNow ? longestMs : behindMs);
};
