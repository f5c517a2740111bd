import type { Closing, ProgrammeTotalsAnswer } from '@drumline/contract';
import { type DrawnFor, type MoneyParts, programmeTotals, type Scenario } from '@drumline/planning';
import { type Drawn, litresOf } from '@drumline/stock';
import { addDays, instantOf } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { TerritoryService } from '../territory/territory.service.js';

interface Days {
  readonly from: string;
  readonly until: string;
}

interface DrawnRow {
  readonly data: Drawn;
  readonly cost: MoneyParts | null;
  readonly closing: Closing | null;
}

/** What the programmes asked for and took, for whoever charges it on. */
@Injectable()
export class ProgrammeTotalsService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
  ) {}

  async between({ from, until }: Days): Promise<ProgrammeTotalsAnswer> {
    const programmes = await this.kept<Scenario['programmes'][number]>('programmes');
    const helicopterTasks = await this.kept<Scenario['helicopterTasks'][number]>('helicopter-tasks');
    const helicopters = await this.kept<Scenario['helicopters'][number]>('helicopters');
    const drawn = await this.drawn({ from, until });
    const items = programmeTotals({ programmes, helicopterTasks, helicopters, from, until }, drawn);
    return { from, until, items, next: null };
  }

  /** Draws that stand, each with what its drum's flight cost. */
  private async drawn({ from, until }: Days): Promise<readonly DrawnFor[]> {
    const zone = await this.territory.timeZone();
    const rows: readonly DrawnRow[] = await this.database.query(drawnSql, [
      instantOf(from, '00:00', zone),
      instantOf(addDays(until, 1), '00:00', zone),
    ]);
    return rows.map(({ data: { programme, into, millilitres }, cost, closing }) => ({
      ...{ programme, into, litres: litresOf(millilitres) },
      deliveredPerLitre:
        cost === null || closing === null ? (cost?.perLitre ?? null) : asFlown(cost, closing),
    }));
  }

  private async kept<Line>(kind: string): Promise<readonly Line[]> {
    const entries = await this.territory.all(kind);
    return entries.map(({ data }) => data as Line);
  }
}

/** Of a closed flight what it cost in the end, by the litres that it landed. */
const asFlown = ({ litres }: MoneyParts, { flightCost, fuelCost, handlingCost }: Closing): number | null =>
  litres > 0 ? (flightCost + fuelCost + handlingCost) / litres : null;

const drawnSql = `
  select movements.data, flights.planned -> 'cost' as cost, flights.closing
  from movements
  left join lateral (
    select brought.flight from movements brought
    where brought.drum = movements.drum and brought.kind = 'left at' and brought.happened_at <= movements.happened_at
    order by brought.happened_at desc limit 1
  ) last on true
  left join flights on flights.id = last.flight
  where movements.kind = 'drawn' and movements.happened_at >= $1 and movements.happened_at < $2
    and exists (select from drum_steps where drum_steps.place = movements.place and movement = movements.id)`;
