import type { MyPlaces } from '@drumline/contract';
import { type FlightToCome, leftToDo, stockOutlook, withLandings } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Account } from '../people/account.table.js';
import { ClockService } from '../territory/clock.service.js';
import { ProjectionsService } from './projections.service.js';

/** So far back a phone is told which of its own reports are in the picture. */
const knownDays = 7;

/** The caches for a phone that may have no line for days. */
@Injectable()
export class MyPlacesService {
  constructor(
    private readonly database: DataSource,
    private readonly projections: ProjectionsService,
    private readonly clock: ClockService,
  ) {}

  async of({ id, crew }: Account): Promise<MyPlaces> {
    // Reports before stock: one that comes in between is counted twice until the next reading, which is the safer mistake.
    const known = await this.reportedBy(id);
    const { board, toCome } = await this.projections.ahead();
    const { scenario, done } = board.facts;
    const own = scenario.helicopters.find((helicopter) => helicopter.id === crew);
    const isOwn = ({ helicopter }: { readonly helicopter: string }) => helicopter === own?.id;
    return {
      format: 'my-places/1',
      at: (await this.clock.now()).toISOString(),
      serverAt: new Date().toISOString(),
      timeZone: scenario.timeZone,
      today: scenario.firstDay,
      helicopter: own === undefined ? null : { id: own.id, name: own.name, drumsPerLift: own.drumsPerLift },
      tasks: scenario.helicopterTasks.filter(isOwn),
      slings: scenario.slings.filter(isOwn),
      programmes: scenario.programmes.map(({ code, name, recharge }) => ({
        code,
        name,
        isRecharged: recharge.kind !== 'not recharged',
      })),
      places: scenario.places.map(({ code, name }) => ({ code, name })),
      outlook: withLandings(scenario, stockOutlook(leftToDo(scenario, done)), toCome.filter(isApproved)),
      dipTables: scenario.policy.dipTables ?? [],
      bookDensityKgPerLitre: scenario.policy.bookDensityKgPerLitre,
      known,
    };
  }

  private async reportedBy(account: string): Promise<readonly string[]> {
    const since = new Date((await this.clock.now()).getTime() - knownDays * 86_400_000);
    const rows: readonly { readonly id: string }[] = await this.database.query(
      'select id from movements where account_id = $1 and received_at >= $2 order by entry',
      [account, since],
    );
    return rows.map(({ id }) => id);
  }
}

const isApproved = ({ state }: FlightToCome): boolean => state !== 'offered';
