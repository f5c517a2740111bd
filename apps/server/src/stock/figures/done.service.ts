import {
  type Done,
  type DrawNotReported,
  drawsNotReported,
  type HelicopterTask,
  type Scenario,
} from '@drumline/planning';
import { type Draw, type Drawn, type DrumMove, litresOf, type Slung, slingDaysApart } from '@drumline/stock';
import { addDays, type IsoDate, instantOf, localDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { TerritoryService } from '../../territory/territory.service.js';

/** What has been done of the programme, with the drum of every draw. */
export interface DoneByDrum extends Done {
  readonly drawn: readonly (Draw & { readonly drum: string })[];
}

/** What has been drawn and slung of what the programme asks for. */
@Injectable()
export class DoneService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
  ) {}

  /** `at`: only of what the programme asks for at these places; absent: everywhere. */
  async of(scenario: Scenario, at?: ReadonlySet<string>): Promise<DoneByDrum> {
    const isAsked = (...places: readonly string[]) =>
      at === undefined || places.some((place) => at.has(place));
    const { helicopterTasks, slings, firstDay, timeZone } = scenario;
    const tasks = helicopterTasks.filter(({ date, place }) => date === firstDay && isAsked(place));
    const pads = slings.filter(({ from, to }) => isAsked(from, to)).map(({ to }) => to);
    const drawn = await this.drawnOn(
      { from: firstDay, until: addDays(firstDay, 1) },
      tasks.map(({ place }) => place),
      timeZone,
    );
    const slung = await this.slungSince(addDays(firstDay, -slingDaysApart), pads, timeZone);
    return { drawn, slung, earlierSlings: slung.length === 0 ? [] : await this.slingsBefore(firstDay) };
  }

  /** Tasks of the last week, today not among them, that the level of their place still counts on. */
  async notReported({ firstDay, timeZone, counts }: Scenario): Promise<readonly DrawNotReported[]> {
    const since = addDays(firstDay, -daysAskedFor);
    const kept = await this.territory.all('helicopter-tasks');
    const tasks = kept
      .map(({ data }) => data as HelicopterTask)
      .filter(({ date, litres }) => date >= since && date < firstDay && litres > 0);
    const drawn = await this.drawnOn(
      { from: since, until: firstDay },
      tasks.map(({ place }) => place),
      timeZone,
    );
    const countedOn = new Map<string, IsoDate>();
    for (const { place, at } of counts) {
      const day = localDate(at, timeZone);
      if (day > (countedOn.get(place) ?? '')) countedOn.set(place, day);
    }
    return drawsNotReported(tasks, { drawn, countedOn });
  }

  /** Routine draws of some local days that stand: one taken back has left no step in the life of its drum. */
  private async drawnOn(
    days: { readonly from: IsoDate; readonly until: IsoDate },
    places: readonly string[],
    timeZone: string,
  ): Promise<DoneByDrum['drawn']> {
    if (places.length === 0) return [];
    const [from, until] = [days.from, days.until].map((date) => instantOf(date, '00:00', timeZone));
    const rows: readonly { readonly data: Drawn }[] = await this.database.query(
      `select data from movements
       where place = any($1) and kind = 'drawn' and happened_at >= $2 and happened_at < $3
         and data ->> 'medevac' is null and ${leftAStep}
       order by happened_at, id`,
      [[...new Set(places)], from, until],
    );
    return rows.map(({ data: { place, drum, programme, millilitres, happenedAt } }) => ({
      date: localDate(happenedAt, timeZone),
      place,
      drum,
      for: programme,
      litres: litresOf(millilitres),
    }));
  }

  private async slungSince(
    day: IsoDate,
    pads: readonly string[],
    timeZone: string,
  ): Promise<readonly DrumMove[]> {
    if (pads.length === 0) return [];
    const rows: readonly { readonly data: Slung }[] = await this.database.query(
      `select data from movements
       where place = any($1) and kind = 'slung' and happened_at >= $2 and ${leftAStep}`,
      [[...new Set(pads)], instantOf(day, '00:00', timeZone)],
    );
    return rows.map(({ data: { from, to, happenedAt } }) => ({
      date: localDate(happenedAt, timeZone),
      from,
      to,
      drums: 1,
    }));
  }

  /** Planned slings of the two weeks before a day. */
  async slingsBefore(day: IsoDate): Promise<readonly DrumMove[]> {
    const kept = await this.territory.all('slings');
    return kept
      .map(({ data }) => data as DrumMove)
      .filter(({ date }) => date < day && date >= addDays(day, -2 * slingDaysApart));
  }
}

/** A draw of a task longer ago is no more asked for. */
const daysAskedFor = 7;

const leftAStep =
  'exists (select from drum_steps where drum_steps.place = movements.place and movement = movements.id)';
