import type {
  CheckCodeAnswer,
  LoadAnswer,
  LoadStanding,
  Positions,
  TotalsAnswer,
  TypedTotal,
} from '@drumline/contract';
import {
  checkLoad,
  compareWithSheet,
  type LoadSheet,
  type NamedLoad,
  roundingBeside,
} from '@drumline/loading';
import { Injectable } from '@nestjs/common';
import { PrintedSheetsService } from '../../audit/printed-sheets.service.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { type Board, BoardService } from '../board/board.service.js';
import { FlightsService } from '../flights.service.js';
import type { Load } from '../store/flight.table.js';
import { loadAnswer } from './load-answer.js';
import { loadStanding } from './load-picture.js';
import { LoadWordsService } from './load-words.service.js';
import { drumsFor, namedFlight, ofItsDay } from './named-flight.js';
import { sheetOf } from './own-sheet.js';
import { refuseOtherDrums } from './positions.service.js';
import { type FlightOnPaper, sheetFor } from './sheet-for.js';
import { figuresOf } from './two-totals.js';

interface OnBoard {
  readonly board: Board;
  readonly flight: FlightOnPaper;
  readonly loads: readonly Load[];
}

/** Load sheets of flights, with the drums that stand to be taken, by the facts of now. */
@Injectable()
export class LoadSheetsService {
  constructor(
    private readonly flights: FlightsService,
    private readonly board: BoardService,
    private readonly words: LoadWordsService,
    private readonly printed: PrintedSheetsService,
  ) {}

  /** The whole sheet, totals and code square included: for paper and for the pilot's phone. */
  async sheet(id: string, me: Account): Promise<LoadSheet> {
    return this.wholeSheet(await this.read(id, me)).sheet;
  }

  /** What the load page shows. */
  async answer(id: string, me: Account): Promise<LoadAnswer> {
    const on = await this.read(id, me);
    const said = await this.words.ofCrewsAt(on.flight.stops.map(({ place }) => place));
    return { ...loadAnswer(on, said), loadings: await this.words.loadingsOf(on.flight) };
  }

  /** By which paper is told from another version, whichever day it is entered. */
  async checkCode(id: string, me: Account): Promise<CheckCodeAnswer> {
    const { board, flight, loads } = await this.read(id, me);
    return { version: flight.version, checkCode: sheetOf(board, flight, loads)?.checkCode ?? null };
  }

  /** The sheet's total is told only beside the one that somebody has typed, on its own day or after it. */
  async compare(id: string, { of, typedLb, leg }: TypedTotal, me: Account): Promise<TotalsAnswer> {
    const today = await this.read(id, me);
    const on = { ...today, board: ofItsDay(today.board, today.flight) };
    const { sheet } = this.wholeSheet(on);
    const figures = figuresOf(on.board, on.flight, sheet, leg);
    if (figures === null) throw new Problem('not-found', `${id} has no leg ${leg + 1}.`);
    const { loadLb, takeoffLb } = figures.totals;
    const bySheetLb = of === 'load' ? loadLb : takeoffLb;
    const { toleranceLb } = sheet;
    const compared = compareWithSheet(figures, { of, typedLb, bySheetLb, toleranceLb });
    const roundingWords = of === 'load' ? roundingBeside(figures.totals, compared) : null;
    return { ...compared, of, bySheetLb, typedLb, toleranceLb, roundingWords };
  }

  /** Whether the drums may stand as somebody has put them; nothing is changed. */
  async check(id: string, { positions }: Positions, me: Account): Promise<LoadStanding> {
    const { board, flight, loads } = await this.read(id, me);
    refuseOtherDrums(flight, loads, positions);
    const by = new Map(positions.map(({ drum, position }) => [drum, position]));
    const named = namedFlight(board, flight, loads, by);
    if (!named.found) throw new Problem('conflict', named.why);
    return loadStanding(checkLoad(named.load));
  }

  private async read(id: string, me: Account): Promise<OnBoard> {
    await this.flights.get(id, me);
    const board = await this.board.read();
    const flight = board.flights.find((each) => each.id === id) ?? (await this.flights.get(id, me)).flight;
    const printedCodes = await this.printed.codesOf(id, flight.version);
    return { board, flight: { ...flight, printedCodes }, loads: drumsFor(board, flight) };
  }

  private wholeSheet({ board, flight, loads }: OnBoard): { sheet: LoadSheet; load: NamedLoad } {
    const named = namedFlight(board, flight, loads);
    if (!named.found) throw new Problem('conflict', named.why);
    return { sheet: sheetFor(board, flight, named.load), load: named.load };
  }
}
