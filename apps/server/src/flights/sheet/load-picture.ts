import type { BlindMoment, BlindSheet, Fallback, LoadPicture, LoadStanding } from '@drumline/contract';
import {
  checkLoad,
  type LoadReport,
  type LoadSheet,
  type LoadSheetRequest,
  makeLoadSheet,
  type NamedLoad,
  type PayloadBar,
  payloadBars,
  printedLbOf,
} from '@drumline/loading';
import { pounds } from '@drumline/units';

/** The load drawn by leg, without the totals that somebody adds up without sight of them. */
export const loadPicture = (request: LoadSheetRequest): LoadPicture => {
  const { load, surfacesHeard } = request;
  const sheet = makeLoadSheet(request);
  return pictureOf(load, sheet, payloadBars(load, surfacesHeard));
};

const pictureOf = (load: NamedLoad, sheet: LoadSheet, bars: readonly PayloadBar[]): LoadPicture => ({
  ...loadStanding(checkLoad(load)),
  holds: sheet.holds,
  faults: sheet.faults,
  sheet: blind(sheet),
  bars,
  fallbacks: sheet.legs.flatMap((_, leg) => fallbackOf(load, sheet, leg)),
});

export const loadStanding = (report: LoadReport): LoadStanding => ({
  holds: report.holds,
  faults: report.faults,
  balanceFaults: report.balance.faults,
  moments: report.balance.moments.map(withoutWeight),
  mend:
    report.mend === null
      ? null
      : {
          words: report.mend.text,
          positions: report.mend.drums.map(({ id, position }) => ({ drum: id, position })),
        },
});

const withoutWeight = ({ weightLb: _, ...moment }: LoadReport['balance']['moments'][number]): BlindMoment =>
  moment;

const blind = ({ square: _, ...sheet }: LoadSheet): BlindSheet => ({
  ...sheet,
  legs: sheet.legs.map(({ totals: _totals, rows: _rows, allowedTakeoffLb: _allowed, ...leg }) => leg),
});

/** Where fewer drums go when the strip is soft: what stays, and where the centre of gravity lies then. */
const fallbackOf = (load: NamedLoad, sheet: LoadSheet, leg: number): readonly Fallback[] => {
  const fallback = sheet.legs[leg]!.goBack.ifSoft;
  if (fallback === null || fallback.leave.length === 0) return [];
  const { place, take, leave, moves, words, standing } = fallback;
  const positions = new Map(standing.map(({ number, position }) => [number, position]));
  const drums = load.drums.flatMap((drum) => {
    const position = positions.get(drum.number);
    return position === undefined ? [] : [{ ...drum, position }];
  });
  const name = `${sheet.legs[leg]!.from}-${sheet.legs[leg]!.to}`;
  const moments =
    take === null ? [] : checkLoad({ ...load, drums }).balance.moments.filter((each) => each.leg === name);
  const drumsLb = drums
    .filter(({ offAfterLeg }) => leg <= offAfterLeg)
    .reduce((sum, { grossKg }) => sum + printedLbOf(grossKg), 0);
  return [
    {
      leg,
      place,
      take,
      leave,
      moves,
      words,
      moments: moments.map(withoutWeight),
      drumsLb: pounds(drumsLb),
    },
  ];
};
