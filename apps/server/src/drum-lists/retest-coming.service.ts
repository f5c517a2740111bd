import type { RetestComingAnswer } from '@drumline/contract';
import type { CacheOutlook, Scenario } from '@drumline/planning';
import type { Drum } from '@drumline/stock';
import { addDays, type IsoDate, litres } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { ProjectionsService } from '../projections/projections.service.js';

/** Drums whose retest date comes before the plan has burned them, or is over. */
@Injectable()
export class RetestComingService {
  constructor(private readonly projections: ProjectionsService) {}

  /** By retest date: what falls due within the days looked ahead. What is held is on another list. */
  async all(): Promise<readonly RetestComingAnswer[]> {
    const { board, outlooks: all } = await this.projections.ahead();
    const { takenBy, facts } = board;
    const { scenario } = facts;
    const outlooks = new Map(all.map((outlook) => [outlook.place, outlook]));
    return dueSoon(scenario)
      .map(([drum, retestDue]) => {
        const flight = takenBy.get(drum.number) ?? null;
        return { ...comingUp(drum, retestDue, outlooks.get(drum.place), scenario.firstDay), flight };
      })
      .map((each) => (each.flight === null || each.isPast ? each : { ...each, unusedLitres: litres(0) }))
      .sort((one, other) => keyOf(one).localeCompare(keyOf(other)));
  }
}

const keyOf = ({ retestDue, place, number }: RetestComingAnswer): string => `${retestDue} ${place} ${number}`;

const dueSoon = ({ drums, batches, firstDay, days }: Scenario): readonly (readonly [Drum, IsoDate])[] => {
  const byId = new Map(batches.map((batch) => [batch.id, batch]));
  const lastDay = addDays(firstDay, days - 1);
  return drums.flatMap((drum) => {
    const batch = byId.get(drum.batch);
    if (batch === undefined || batch.held || drum.held || batch.retestDue >= lastDay) return [];
    return [[drum, batch.retestDue] as const];
  });
};

const comingUp = (
  { number, place, batch, content, litres: amount }: Drum,
  retestDue: IsoDate,
  outlook: CacheOutlook | undefined,
  today: IsoDate,
): Omit<RetestComingAnswer, 'flight'> => {
  const isPast = retestDue < today;
  const aged = outlook?.approved.agedOut.find((each) => each.number === number);
  const draw = outlook?.draws.find(({ date }) => date > retestDue && date >= today);
  return {
    number,
    place,
    batch,
    content,
    litres: amount,
    retestDue,
    isPast,
    unusedLitres: outlook === undefined || isPast ? amount : (aged?.litres ?? litres(0)),
    drawTooLate: draw === undefined ? null : { date: draw.date, for: draw.for },
  };
};
