import { inLocalTime } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { ClockService } from './clock.service.js';
import { TerritoryService } from './territory.service.js';

/** What is kept says its instants in UTC; people read them on the clock and the calendar of the territory. */
@Injectable()
export class LocalWordsService {
  constructor(
    private readonly clock: ClockService,
    private readonly territory: TerritoryService,
  ) {}

  private async readNow(): Promise<(text: string) => string> {
    const asOf = (await this.clock.now()).toISOString();
    const timeZone = await this.territory.timeZone();
    return (text) => inLocalTime(text, { asOf, timeZone });
  }

  /** Raised things as they are read now. */
  async raised<Thing extends { readonly what: string }>(things: readonly Thing[]): Promise<readonly Thing[]> {
    if (things.length === 0) return [];
    const read = await this.readNow();
    return things.map((thing) => ({ ...thing, what: read(thing.what) }));
  }

  /** What reports leave to be looked at, as it is read now. */
  async ofReports<Report extends { readonly raised: readonly string[] }>(
    reports: readonly Report[],
  ): Promise<readonly Report[]> {
    const read = await this.readNow();
    return reports.map((report) => ({ ...report, raised: report.raised.map(read) }));
  }
}
