import { leftToDo, type Scenario } from '@drumline/planning';
import { litresOf } from '@drumline/stock';
import { type IsoDate, type IsoInstant, localDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { ClockService } from '../../territory/clock.service.js';
import { TerritoryService } from '../../territory/territory.service.js';
import { DoneService } from './done.service.js';
import { KeptStock, lastCountAt, type PlaceStock, type StockNow } from './kept-stock.js';
import { bare, type PlaceFigures, placeFigures, type StandingAt } from './place-figures.js';
import { isInForce, stockOf } from './stock-of.js';

/** The figures of every place, and what they were made from. */
export interface FiguresNow {
  readonly scenario: Scenario;
  readonly stock: StockNow;
  readonly figures: ReadonlyMap<string, PlaceFigures>;
}

interface KeptTerritory {
  readonly version: number;
  readonly scenario: Scenario;
  /** The clock of the territory less the clock on the wall. */
  readonly aheadMs: number;
}

/** Figures that stand while the stock is the one they were made from, up to the next count of a clock that is ahead. */
interface KeptFigures extends Pick<FiguresNow, 'stock' | 'figures'> {
  readonly firstDay: IsoDate;
  readonly until: number;
}

/** Stock figures, made again only where a place or the territory has changed, or the day. */
@Injectable()
export class StockFiguresService {
  private territory: KeptTerritory | null = null;
  private last: KeptFigures | null = null;
  private readonly made = new Map<
    string,
    { readonly from: string; readonly figures: readonly PlaceFigures[] }
  >();

  constructor(
    private readonly kept: KeptStock,
    private readonly territories: TerritoryService,
    private readonly clock: ClockService,
    private readonly done: DoneService,
  ) {}

  async current(): Promise<FiguresNow> {
    const stock = await this.kept.read();
    const scenario = await this.scenarioNow(stock.territoryVersion);
    const { last } = this;
    const stands = last?.stock === stock && last.firstDay === scenario.firstDay;
    if (stands && Date.parse(scenario.asOf) < last.until) return { scenario, stock, figures: last.figures };
    const groups = groupsOf(scenario, stock);
    const toMake = groups.filter((places) => !this.isMade(places, scenario, stock)).flat();
    // What came in after the stock was read is made good by the next reading: it has another version.
    const left = leftToDo(scenario, await this.done.of(scenario, new Set(toMake)));
    const made = groups.flatMap((places) => this.figuresOf(places, left, stock));
    const figures = new Map(made.map((each) => [each.place, each]));
    this.last = { stock, figures, firstDay: scenario.firstDay, until: nextCountAfter(scenario.asOf, stock) };
    return { scenario, stock, figures };
  }

  /** The territory as it is kept now, without its stock. */
  async scenario(): Promise<Scenario> {
    return this.scenarioNow(await this.kept.territoryVersion());
  }

  /** The territory as it is kept now, looked at from this moment. It is read again when it or the day changes. */
  private async scenarioNow(version: number): Promise<Scenario> {
    if (this.territory?.version === version) {
      const { scenario, aheadMs } = this.territory;
      const asOf = new Date(Date.now() + aheadMs).toISOString();
      if (localDate(asOf, scenario.timeZone) === scenario.firstDay) return { ...scenario, asOf };
    }
    const now = await this.clock.now();
    const scenario = await this.territories.everything(now);
    this.territory = { version, scenario, aheadMs: now.getTime() - Date.now() };
    return { ...scenario, asOf: now.toISOString() };
  }

  private isMade(places: readonly string[], scenario: Scenario, stock: StockNow): boolean {
    const there = places.map((place) => stock.places.get(place));
    return this.made.get(places[0]!)?.from === madeFrom(there, scenario, stock);
  }

  private figuresOf(places: readonly string[], scenario: Scenario, stock: StockNow): readonly PlaceFigures[] {
    const there = places.map((place) => stock.places.get(place));
    const from = madeFrom(there, scenario, stock);
    const made = this.made.get(places[0]!);
    if (made?.from === from) return made.figures;
    const figures = placeFigures(
      scenarioOf(places, there, scenario, stock),
      new Map(places.map((place, index) => [place, standingAt(place, there[index], scenario.asOf)])),
    );
    this.made.set(places[0]!, { from, figures });
    return figures;
  }
}

/** Places between which slings go are read together; any other place has figures of its own. */
const groupsOf = ({ caches, slings }: Scenario, { places }: StockNow): readonly (readonly string[])[] => {
  const all = new Set([...caches.map(({ place }) => place), ...places.keys()]);
  const groups = new Map([...all].sort().map((place) => [place, [place]]));
  for (const { from, to } of slings) {
    const a = groups.get(from);
    const b = groups.get(to);
    if (a === undefined || b === undefined || a === b) continue;
    a.push(...b);
    for (const place of b) groups.set(place, a);
  }
  return [...new Set(groups.values())];
};

/** In milliseconds; infinite: every count that is known has happened. */
const nextCountAfter = (asOf: IsoInstant, { places }: StockNow): number => {
  const counts = [...places.values()].flatMap((place) => place.counts);
  const ahead = counts.map(({ counted }) => Date.parse(counted.happenedAt));
  return Math.min(...ahead.filter((at) => at > Date.parse(asOf)));
};

/** Two figures made from the same are the same. */
const madeFrom = (
  there: readonly (PlaceStock | undefined)[],
  { asOf, firstDay }: Scenario,
  { territoryVersion, batchesVersion }: StockNow,
): string => {
  const versions = there.map(
    (place) => `${place?.version ?? 0}/${lastCountAt(place, asOf)?.counted.id ?? ''}`,
  );
  return [territoryVersion, batchesVersion, firstDay, ...versions].join(' ');
};

const scenarioOf = (
  places: readonly string[],
  there: readonly (PlaceStock | undefined)[],
  scenario: Scenario,
  { batches }: StockNow,
): Scenario => {
  const standing = there.filter((place) => place !== undefined);
  return {
    ...scenario,
    ...stockOf(standing, batches, scenario.batches, scenario.timeZone),
    caches: scenario.caches.filter(({ place }) => places.includes(place)),
  };
};

const standingAt = (place: string, there: PlaceStock | undefined, at: IsoInstant): StandingAt => {
  const last = lastCountAt(there, at);
  return {
    balance: there?.balance ?? bare(place),
    countedLitres: last && isInForce(last) ? litresOf(last.counted.millilitres) : null,
  };
};
