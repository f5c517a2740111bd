import type { Place } from '@drumline/network';
import { surfaceHeard } from '@drumline/planning';
import { freshCountHours, silentHours } from '@drumline/stock';
import { addDays, type IsoDate, type IsoInstant, localTime } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { asStanding, type Board, BoardService } from '../../flights/board/board.service.js';
import { LoadSheetsService } from '../../flights/sheet/load-sheets.service.js';
import type { Flight } from '../../flights/store/flight.table.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { SessionsService } from '../../people/sessions.service.js';
import type { PlaceFigures } from '../../stock/figures/place-figures.js';
import { type FiguresNow, StockFiguresService } from '../../stock/figures/stock-figures.service.js';
import { inTheField } from '../../stock/holds/holds.service.js';
import { type StandingHold, StandingHoldsService } from '../../stock/holds/standing-holds.service.js';
import type { PaperSize } from '../pdf/paper-size.js';
import { type Print, PrintsService } from '../prints.service.js';
import { SlipNumbersService } from '../slips/slip-numbers.service.js';
import { type DayPack, dayPackPages, type PackFlight, type PackPlace, packTitle } from './day-pack.js';
import { levelWord } from './level-word.js';

/** From then on the pack of the next day is meant. */
const noon = '12:00';

/** All of a day on paper, at one click. */
@Injectable()
export class DayPacksService {
  constructor(
    private readonly board: BoardService,
    private readonly sheets: LoadSheetsService,
    private readonly figures: StockFiguresService,
    private readonly holds: StandingHoldsService,
    private readonly sessions: SessionsService,
    private readonly slips: SlipNumbersService,
    private readonly prints: PrintsService,
  ) {}

  /** `date` absent: today before noon, else tomorrow. */
  async print(date: IsoDate | undefined, paper: PaperSize, me: Account): Promise<Print> {
    const pack = await this.of(date, paper, me);
    const title = packTitle(pack);
    const sheets = pack.flights.flatMap(({ id, sheet }) =>
      'why' in sheet ? [] : [{ flight: id, version: sheet.flight.version, checkCode: sheet.checkCode }],
    );
    return this.prints.make(
      { title, paper, pages: dayPackPages(pack), foot: title, fileName: `day-pack-${pack.date}.pdf` },
      { subject: `day pack ${pack.date}`, detail: { sheets, slips: pack.slips } },
      me,
    );
  }

  private async of(asked: IsoDate | undefined, paper: PaperSize, me: Account): Promise<DayPack> {
    const board = await this.board.read();
    const { firstDay, asOf, timeZone, programmes, places } = board.scenario;
    const date = asked ?? (localTime(asOf, timeZone) < noon ? firstDay : addDays(firstDay, 1));
    if (date < firstDay)
      throw new Problem('bad-request', `${date} is over. Ask for the pack of ${firstDay} or a later day.`);
    const silentSince = new Date(Date.now() - silentHours * 3_600_000);
    const notHeard = await this.sessions.notSeenSince(silentSince, inTheField);
    return {
      date,
      paper,
      stamp: await this.prints.stamp(timeZone, me),
      flights: await this.flightsOf(board, date, me),
      names: new Map(places.map(({ code, name }) => [code, name])),
      places: placesOf(board, await this.figures.current()),
      held: (await this.holds.all()).map(heldWords),
      silentPeople: notHeard.map(({ person }) => person),
      programmes: programmes.map(({ code }) => code),
      goods: board.scenario.dangerousGoods ?? null,
      slips: { count: await this.slips.next('count'), draw: await this.slips.next('draw') },
    };
  }

  /** Those that stand, as they depart; with a sheet where drums can be named. */
  private async flightsOf(board: Board, date: IsoDate, me: Account): Promise<readonly PackFlight[]> {
    const flights: PackFlight[] = [];
    for (const flight of standingOn(board, date))
      flights.push({ ...packFlight(board, flight), sheet: await this.sheetOf(flight, me) });
    return flights;
  }

  private async sheetOf({ id, state }: Flight, me: Account): Promise<PackFlight['sheet']> {
    if (state === 'offered') return { why: 'not approved' };
    try {
      return await this.sheets.sheet(id, me);
    } catch (refused) {
      // That there is no sheet is an answer, and the pack says it; anything else is a fault of ours.
      if (refused instanceof Problem) return { why: refused.message };
      throw refused;
    }
  }
}

const standingOn = ({ flights }: Board, date: IsoDate): readonly Flight[] =>
  flights
    .filter((flight) => flight.date === date && asStanding(flight) !== null)
    .toSorted((one, other) => (one.departs < other.departs ? -1 : 1));

const packFlight = ({ loads }: Board, flight: Flight): Omit<PackFlight, 'sheet'> => {
  const { id, aircraft, departs, pilot, state, needsDecision, fromPlace, toPlace, stops } = flight;
  return {
    ...{ id, aircraft, departs, pilot, state, needsDecision },
    route: [fromPlace, ...stops.map(({ place }) => place), toPlace],
    stops: stops.map(({ place, drums }, stop) => ({
      place,
      drums,
      numbers: loads.flatMap((load) =>
        load.flightId === id && load.stop === stop && load.drum !== null ? [load.drum] : [],
      ),
    })),
  };
};

/** Strips and caches, in the order of the territory. */
const placesOf = ({ scenario }: Board, { figures }: FiguresNow): readonly PackPlace[] => {
  const { places } = scenario;
  const heard = surfaceHeard(scenario);
  const isListed = ({ kind, code }: Place) => kind === 'strip' || (figures.get(code)?.cache ?? null) !== null;
  return places.filter(isListed).map((place) => {
    const { code, name, runway, radioTime = null, helper = null } = place;
    const at = figures.get(code);
    const cache = at?.cache ?? null;
    return {
      ...{ code, name, radioTime, hands: helper },
      drumsADay: place.landingCapacityDrumsPerDay,
      tailwindLimitKt: runway?.tailwindLimitKt ?? null,
      isOneWay: runway?.oneWay ?? false,
      surface: place.kind === 'strip' ? heard(place) : null,
      usableLitres: at?.usableLitres ?? (0 as PackPlace['usableLitres']),
      minimumLitres: cache?.minimumLitres ?? null,
      needsCount: cache !== null && isOldCount(at?.lastCount ?? null, scenario.asOf),
      level: at === undefined ? 'no levels' : levelWord(at),
    };
  });
};

const isOldCount = (last: PlaceFigures['lastCount'], asOf: IsoInstant): boolean =>
  last === null || Date.parse(asOf) - Date.parse(last.count.at) > freshCountHours * 3_600_000;

const heldWords = ({ of, reason, drums, places }: StandingHold): DayPack['held'][number] => ({
  what: `${'batch' in of ? `Batch ${of.batch}` : `Drum ${of.drum}`} is held: ${reason}`,
  where:
    places.length === 0 ? `no place by the book (${drums} drums)` : `${places.join(', ')} (${drums} drums)`,
});
