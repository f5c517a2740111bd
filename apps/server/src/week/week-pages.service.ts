import type { WeekAnswer } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { ChangesService, type Versions } from '../changes/changes.service.js';
import type { WeekQuery } from './week.controller.js';
import { WeekService } from './week.service.js';

/** A board is made anew after so long at the latest: it says what time it is. */
const longestMs = 60_000;
/** While drums move without a pause, what they add up to is worked out no more often than this. */
const behindMs = 5_000;
const mostKept = 50;

interface Kept {
  readonly versions: Versions;
  readonly madeAt: number;
  readonly answer: Promise<{ readonly now: string; readonly behind: string }>;
}

/**
 * The week board as JSON text. Flights, reports, plans and the territory on it are those of the moment of the request, whichever
 * process changed them; what stock alone decides may be 5 s old, and `stockIsBehind` then says so.
 */
@Injectable()
export class WeekPagesService {
  private readonly kept = new Map<string, Kept>();

  constructor(
    private readonly week: WeekService,
    private readonly changes: ChangesService,
  ) {}

  async read(query: WeekQuery, now = performance.now()): Promise<string> {
    // Read before the board is made: a board may be newer than it is taken for, never older.
    const versions = await this.changes.versions();
    const key = JSON.stringify(query);
    const kept = this.kept.get(key);
    if (kept === undefined || !mayServe(kept, versions, now))
      return (await this.make(query, versions, now)).now;
    const { now: text, behind } = await kept.answer;
    return kept.versions.stock === versions.stock ? text : behind;
  }

  /** Those who ask while it is being made wait for the same one. */
  private make(query: WeekQuery, versions: Versions, madeAt: number): Kept['answer'] {
    const key = JSON.stringify(query);
    const answer = this.week.read(query).then(bothTexts);
    if (this.kept.size >= mostKept) this.kept.clear();
    const kept: Kept = { versions, madeAt, answer };
    this.kept.set(key, kept);
    answer.catch(() => {
      if (this.kept.get(key) === kept) this.kept.delete(key);
    });
    return answer;
  }
}

const bothTexts = (week: Omit<WeekAnswer, 'stockIsBehind'>) => ({
  now: JSON.stringify({ ...week, stockIsBehind: false } satisfies WeekAnswer),
  behind: JSON.stringify({ ...week, stockIsBehind: true } satisfies WeekAnswer),
});

const mayServe = ({ versions: { stock, ...rest }, madeAt }: Kept, now: Versions, atMs: number): boolean => {
  const age = atMs - madeAt;
  const { stock: stockNow, ...restNow } = now;
  const isSame = (Object.keys(rest) as (keyof typeof rest)[]).every((kind) => rest[kind] === restNow[kind]);
  return isSame && age < (stock === stockNow ? longestMs : behindMs);
};
