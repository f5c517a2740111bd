import { Injectable } from '@nestjs/common';
import { Problem } from '../../http/problem.js';
import type { PlaceFigures } from './place-figures.js';
import { type FiguresNow, StockFiguresService } from './stock-figures.service.js';
import { stockOf } from './stock-of.js';
import { WrittenOut } from './written-out.js';

/**
 * The stock as the pages show it, as JSON text. What was written out is kept as long as the figures are the same ones,
 * place by place, and within a minute: the ages of the counts are to the minute.
 */
@Injectable()
export class StockPagesService {
  private readonly lists = new WrittenOut<FiguresNow['figures']>();
  private readonly items = new WrittenOut<PlaceFigures>();
  private readonly places = new WrittenOut<PlaceFigures>();

  constructor(private readonly figures: StockFiguresService) {}

  /** Every cache in the order of the territory, then every other place where anything stands. */
  async all(): Promise<string> {
    const now = await this.figures.current();
    const { asOf, firstDay, days } = now.scenario;
    const items = this.lists.of(now.figures, asOf, (minute) => this.list(now, minute));
    return `{"asOf":"${asOf}","firstDay":"${firstDay}","days":${days},"items":${items},"next":null}`;
  }

  /** One place, with its drums and their batches. */
  async one(place: string): Promise<string> {
    const now = await this.figures.current();
    const { asOf } = now.scenario;
    const figures = now.figures.get(place);
    if (figures === undefined) {
      throw new Problem(
        'not-found',
        `There is no cache at ${place} and nothing stands there. See /api/stock.`,
      );
    }
    const fields = this.places.of(figures, asOf, (minute) =>
      JSON.stringify({ ...withAge(figures, minute), ...drumsAt(place, now) }).slice(1),
    );
    return `{"asOf":"${asOf}",${fields}`;
  }

  private list({ scenario, figures }: FiguresNow, minute: string): string {
    const order = new Map(scenario.places.map(({ code }, index) => [code, index]));
    const rank = ({ cache, place }: PlaceFigures) =>
      (order.get(place) ?? order.size) + (cache === null ? order.size + 1 : 0);
    const sorted = [...figures.values()].sort((a, b) => rank(a) - rank(b));
    const items = sorted.map((each) =>
      this.items.of(each, minute, () => JSON.stringify(inShort(withAge(each, minute)))),
    );
    return `[${items.join()}]`;
  }

  /** What a customer's people see: a word for each cache. */
  async levels() {
    const { scenario, figures } = await this.figures.current();
    return scenario.caches.map(({ place }) => ({
      place,
      level: figures.get(place)?.cache?.level === 'enough' ? ('enough' as const) : ('low' as const),
    }));
  }
}

/** In a list of places: of the projection, the levels and the days on which they are passed. */
const inShort = <Figures extends Pick<PlaceFigures, 'cache'>>({ cache, ...figures }: Figures) => {
  if (cache === null) return { ...figures, cache };
  const { usable, book, belowMinimumDay, belowCriticalDay, runOutDay } = cache.projection;
  return {
    ...figures,
    cache: { ...cache, projection: { usable, book, belowMinimumDay, belowCriticalDay, runOutDay } },
  };
};

const withAge = (figures: PlaceFigures, asOf: string) => ({
  ...figures,
  lastCount:
    figures.lastCount === null
      ? null
      : {
          ...figures.lastCount,
          // A count of this very minute is no age old.
          ageHours: Math.max(0, Date.parse(asOf) - Date.parse(figures.lastCount.count.at)) / 3_600_000,
        },
});

const drumsAt = (place: string, { scenario, stock }: FiguresNow) => {
  const there = stock.places.get(place);
  if (there === undefined) return { drums: [], batches: [] };
  const { drums, batches } = stockOf([there], stock.batches, scenario.batches, scenario.timeZone);
  const ofDrums = new Set(drums.map(({ batch }) => batch));
  return { drums, batches: batches.filter(({ id }) => ofDrums.has(id)) };
};
