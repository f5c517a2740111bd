import type { LoadSheet, ParticularsSet } from '@drumline/loading';
import type { IsoDate, Litres } from '@drumline/units';
import type { PaperSize } from '../pdf/paper-size.js';
import type { Block } from '../pdf/parts.js';
import { longDay, type PrintStamp } from '../pdf/print-stamp.js';
import { blankSheetPage } from '../sheet/blank-sheet.js';
import { loadSheetPages } from '../sheet/load-sheet-pages.js';
import { slipsPage } from '../slips/slips.js';
import { coverPages } from './day-pack-cover.js';
import { radioScriptPage } from './radio-script.js';

/** Everything that a day needs on paper when the lights go out. */
export interface DayPack {
  readonly date: IsoDate;
  readonly stamp: PrintStamp;
  readonly paper: PaperSize;
  readonly flights: readonly PackFlight[];
  readonly places: readonly PackPlace[];
  readonly held: readonly { readonly what: string; readonly where: string }[];
  /** Names of all places by code. */
  readonly names: ReadonlyMap<string, string>;
  /** People of the field from whom nothing has come in for a day. */
  readonly silentPeople: readonly string[];
  readonly programmes: readonly string[];
  /** Null: the operator has given no fields for dangerous goods. */
  readonly goods: ParticularsSet | null;
  readonly slips: { readonly count: readonly string[]; readonly draw: readonly string[] };
}

export interface PackFlight {
  readonly id: string;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly departs: string;
  readonly pilot: string | null;
  readonly state: string;
  readonly needsDecision: string | null;
  readonly stops: readonly {
    readonly place: string;
    readonly drums: number;
    readonly numbers: readonly string[];
  }[];
  /** Or why there is none. */
  readonly sheet: LoadSheet | { readonly why: string };
}

export interface PackPlace {
  readonly code: string;
  readonly name: string;
  readonly radioTime: string | null;
  /** Who helps with drums there. */
  readonly hands: string | null;
  readonly drumsADay: number | null;
  readonly tailwindLimitKt: number | null;
  readonly isOneWay: boolean;
  /** As known now and since when: "dry 14 June 05:58", or "unknown"; null: no strip. */
  readonly surface: string | null;
  readonly usableLitres: Litres;
  readonly minimumLitres: Litres | null;
  readonly level: string;
  /** Of a cache: never counted, or too long ago. */
  readonly needsCount: boolean;
}

/** Cover with strips and caches, every load sheet of the day, radio script, blank forms. */
export const dayPackPages = (pack: DayPack): readonly Block[] => {
  const { stamp, paper, names, programmes, slips } = pack;
  return [
    ...coverPages(pack),
    ...pack.flights.flatMap(({ sheet }) =>
      'why' in sheet ? [] : loadSheetPages(sheet, { stamp, paper, names }),
    ),
    radioScriptPage(pack),
    slipsPage({ kind: 'count', numbers: slips.count, paper, programmes }),
    slipsPage({ kind: 'draw', numbers: slips.draw, paper, programmes }),
    blankSheetPage(paper, pack.goods),
  ];
};

export const packTitle = ({ date }: Pick<DayPack, 'date'>): string => `Day pack ${longDay(date)}`;
