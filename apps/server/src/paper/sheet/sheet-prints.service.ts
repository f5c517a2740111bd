import { Injectable } from '@nestjs/common';
import { LoadSheetsService } from '../../flights/sheet/load-sheets.service.js';
import type { Account } from '../../people/account.table.js';
import { StockFiguresService } from '../../stock/figures/stock-figures.service.js';
import type { PaperSize } from '../pdf/paper-size.js';
import { type Print, PrintsService } from '../prints.service.js';
import { loadSheetPages } from './load-sheet-pages.js';

/** Load sheets on paper, one flight at a time. Whoever may see the flight may print it. */
@Injectable()
export class SheetPrintsService {
  constructor(
    private readonly sheets: LoadSheetsService,
    private readonly figures: StockFiguresService,
    private readonly prints: PrintsService,
  ) {}

  async print(flight: string, paper: PaperSize, me: Account): Promise<Print> {
    const sheet = await this.sheets.sheet(flight, me);
    const { places, timeZone } = await this.figures.scenario();
    const stamp = await this.prints.stamp(timeZone, me);
    const names = new Map(places.map(({ code, name }) => [code, name]));
    const { version } = sheet.flight;
    return this.prints.make(
      {
        title: `Load sheet ${flight}, version ${version}`,
        paper,
        pages: loadSheetPages(sheet, { stamp, paper, names }),
        fileName: `${flight}-version-${version}.pdf`,
      },
      { subject: `load sheet ${flight}`, detail: { version, checkCode: sheet.checkCode } },
      me,
    );
  }
}
