import { Injectable } from '@nestjs/common';
import { Problem } from '../http/problem.js';
import type { PlaceFigures } from './place-figures.js';
import { type FiguresNow, StockFiguresService } from './stock-figures.service.js';
import { stockOf } from './stock-of.js';

/** The stock as the pages show it. */
@Injectable()
export class StockPagesService {
  constructor(private readonly figures: StockFiguresService) {}

  /** Every cache in the order of the territory, then every other place where anything stands. */
  async all() {
    const now = await this.figures.current();
    const order = new Map(now.scenario.places.map(({ code }, index) => [code, index]));
    const rank = ({ cache, place }: PlaceFigures) =>
      (order.get(place) ?? order.size) + (cache === null ? order.size + 1 : 0);
    const items = [...now.figures.values()].sort((a, b) => rank(a) - rank(b));
    const { asOf, firstDay, days } = now.scenario;
    return { asOf, firstDay, days, items: items.map((each) => inShort(withAge(each, asOf))), next: null };
  }

  /** One place, with its drums. */
  async one(place: string) {
    const now = await this.figures.current();
    const figures = now.figures.get(place);
    if (figures === undefined) {
      throw new Problem(
        'not-found',
        `There is no cache at ${place} and nothing stands there. See /api/stock.`,
      );
    }
    const { asOf } = now.scenario;
    return { asOf, ...withAge(figures, asOf), drums: drumsAt(place, now) };
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
          ageHours: (Date.parse(asOf) - Date.parse(figures.lastCount.count.at)) / 3_600_000,
        },
});

const drumsAt = (place: string, { scenario, stock }: FiguresNow) => {
  const there = stock.places.get(place);
  return there ? stockOf([there], stock.batches, scenario.batches, scenario.timeZone).drums : [];
};
