import { leftToDo } from '@drumline/planning';
import {
  asKnownAt,
  asLanded,
  bookStandsAfter,
  type CaseClosing,
  drawnOn,
  litresOf,
  type Movement,
  ridingHome,
  slingDaysApart,
  slungSince,
  standingCounts,
  toBatches,
  toCounts,
  toDrums,
  withRiding,
} from '@drumline/stock';
import { addDays, type IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { TerritoryService } from '../../territory/territory.service.js';
import { DoneService } from '../figures/done.service.js';
import { isCountAfter } from '../figures/is-count-after.js';
import { bare, type PlaceFigures, placeFigures } from '../figures/place-figures.js';
import { downAtOf, notDownAtSql } from '../figures/riding-home.js';

/** The stock as it was known at a moment: from what had come in by then. Levels and capacities are those of now. */
@Injectable()
export class KnownAtService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly done: DoneService,
  ) {}

  async figures(at: IsoInstant): Promise<readonly PlaceFigures[]> {
    const territory = await this.territory.everything(new Date(at));
    const rows: readonly { readonly data: Movement }[] = await this.database.query(
      'select data from movements where received_at <= $1',
      [at],
    );
    const movements = rows.map(({ data }) => data).filter((movement) => !isCountAfter(movement, at));
    const known = asKnownAt(movements, at);
    const notDown = await this.notDown(at);
    const downAt = await downAtOf(this.database.manager, movements);
    const state = withRiding(
      asLanded(known, (flight) => (notDown.has(flight) ? null : downAt(flight))),
      ridingHome(known, (flight) => !notDown.has(flight)),
    );
    const { firstDay, timeZone } = territory;
    const done = {
      drawn: drawnOn(state, firstDay, timeZone),
      slung: slungSince(state, addDays(firstDay, -slingDaysApart), timeZone),
      earlierSlings: await this.done.slingsBefore(firstDay),
    };
    const scenario = {
      ...leftToDo(territory, done),
      asOf: at,
      drums: toDrums(state, timeZone),
      batches: toBatches(state, territory.batches),
      counts: toCounts(state, await this.wrongCounts(at)),
    };
    const places = [
      ...new Set([...scenario.caches.map(({ place }) => place), ...state.balances.keys()]),
    ].sort();
    return placeFigures(
      scenario,
      new Map(
        places.map((place) => {
          const last = standingCounts(state, place).at(-1);
          const balance = state.balances.get(place) ?? bare(place);
          return [place, { balance, countedLitres: last ? litresOf(last.millilitres) : null }];
        }),
      ),
    );
  }

  private async notDown(at: IsoInstant): Promise<ReadonlySet<string>> {
    const rows: readonly { readonly flight: string }[] = await this.database.query(notDownAtSql, [at]);
    return new Set(rows.map(({ flight }) => flight));
  }

  private async wrongCounts(at: IsoInstant): Promise<ReadonlySet<string>> {
    const rows: readonly { readonly data: CaseClosing }[] = await this.database.query(
      'select data from case_closings',
    );
    return new Set(
      rows
        .filter(({ data }) => Date.parse(data.at) <= Date.parse(at) && bookStandsAfter(data.cause))
        .map(({ data }) => data.count),
    );
  }
}
