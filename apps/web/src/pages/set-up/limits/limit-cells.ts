import { questionLimit } from '@drumline/loading';
import { pounds } from '@drumline/units';
import { figure, figureIn } from '../../../ui/index.js';
import type { KeptLine } from '../kept/kept.js';

export const columns = ['takeoffLb', 'landingLb', 'softTakeoffLessLb', 'softLandingLessLb'] as const;
export type LimitColumn = (typeof columns)[number];

export const heads: Readonly<Record<LimitColumn, string>> = {
  takeoffLb: 'Take-off, lb',
  landingLb: 'Landing, lb',
  softTakeoffLessLb: 'Soft: off take-off, lb',
  softLandingLessLb: 'Soft: off landing, lb',
};

/** What is typed in the four cells of a type at a strip; all empty: not approved there. */
export type LimitCells = Readonly<Record<LimitColumn, string>>;

export interface LimitRow {
  /** As the server names it: XLOR-B. */
  readonly id: string;
  /** What the type may weigh anywhere. */
  readonly most: { readonly takeoffLb: number; readonly landingLb: number };
  readonly place: string;
  readonly type: string;
  readonly line: KeptLine | null;
}

interface WhenSoft {
  readonly takeoffLessLb: number;
  readonly landingLessLb: number;
}

const none: LimitCells = { takeoffLb: '', landingLb: '', softTakeoffLessLb: '', softLandingLessLb: '' };

export const cellsOf = (data: Readonly<Record<string, unknown>> | undefined): LimitCells => {
  if (data === undefined) return none;
  const soft = data.whenSoft as 'closed' | WhenSoft;
  return {
    takeoffLb: figureOf(data.takeoffLb),
    landingLb: figureOf(data.landingLb),
    softTakeoffLessLb: soft === 'closed' ? soft : figureOf(soft.takeoffLessLb),
    softLandingLessLb: soft === 'closed' ? soft : figureOf(soft.landingLessLb),
  };
};

const figureOf = (pounds: unknown): string =>
  typeof pounds === 'number' ? figure(pounds, Number.isInteger(pounds) ? 0 : 1) : '';

/** Every type at every place that aeroplanes land on, approved or not. */
export const limitRows = (
  places: readonly KeptLine[],
  types: readonly KeptLine[],
  limits: readonly KeptLine[],
): readonly LimitRow[] =>
  places
    .filter(({ data }) => data.kind !== 'pad')
    .flatMap((place) =>
      types.map((type) => {
        const id = `${place.id}-${type.id}`;
        const most = { takeoffLb: Number(type.data.maxTakeoffLb), landingLb: Number(type.data.maxLandingLb) };
        return {
          id,
          most,
          place: place.id,
          type: type.id,
          line: limits.find((limit) => limit.id === id) ?? null,
        };
      }),
    );

/** The limit that the cells say; null: not approved. What is no whole number of lb stays as typed and is refused. */
export const limitOf = ({ place, type }: LimitRow, cells: LimitCells, reference: string): object | null => {
  if (columns.every((column) => cells[column].trim() === '')) return null;
  const figure = (column: LimitColumn) => {
    const typed = typedFigure(cells[column]);
    return Number.isNaN(typed) ? cells[column] : typed;
  };
  const isClosed = [cells.softTakeoffLessLb, cells.softLandingLessLb].some(
    (text) => text.trim() === 'closed',
  );
  const given = { takeoffLb: figure('takeoffLb'), landingLb: figure('landingLb') };
  const whenSoft = { takeoffLessLb: figure('softTakeoffLessLb'), landingLessLb: figure('softLandingLessLb') };
  return {
    place,
    type,
    ...withoutGaps(given),
    whenSoft: isClosed ? 'closed' : withoutGaps(whenSoft),
    reference,
  };
};

/** Undefined: empty; NaN: no figure. */
const typedFigure = (cell: string): number | undefined => {
  return cell.trim() === '' ? undefined : (figureIn(cell) ?? Number.NaN);
};

/** "Is it kg?" of a figure that the type would be near to in kg only. */
export const cellDoubt = ({ most }: LimitRow, column: LimitColumn, cell: string): string | null => {
  const typed = typedFigure(cell) ?? Number.NaN;
  if ((column !== 'takeoffLb' && column !== 'landingLb') || Number.isNaN(typed)) return null;
  return questionLimit(pounds(typed), pounds(most[column]));
};

const withoutGaps = (given: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));

/** The cell that a fault's path speaks of; null: the whole line. */
export const columnOf = (path: string): LimitColumn | null => {
  if (path === 'whenSoft.takeoffLessLb' || path === 'whenSoft') return 'softTakeoffLessLb';
  if (path === 'whenSoft.landingLessLb') return 'softLandingLessLb';
  return columns.find((column) => column === path) ?? null;
};

/** "XLOR-B, Landing, lb": where a fault is, by the heads of the table; the whole line where it is of no one cell. */
export const faultWhere = ({ id, path }: { readonly id: string; readonly path: string }): string => {
  const column = columnOf(path);
  return column === null ? id : `${id}, ${heads[column]}`;
};

/** "strip table, revision 12": what the limits in force were taken from. */
export const references = (limits: readonly KeptLine[]): string =>
  [...new Set(limits.map(({ data }) => String(data.reference)))].join('; ');
