import type { FlightReportBody, MovementBody } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import type { ShownEntry } from '../../phone/index.js';
import { takenBack } from '../../phone/taken-back.js';

import { saysNotOff } from './reports.js';

export type Condition = 'sound' | 'damaged' | 'leaking' | 'seal broken';

/** What this phone has said of one drum, and has not taken back. */
export interface ReportedDrum {
  /** Id of the movement. */
  readonly id: string;
  readonly drum: string;
  readonly kind: 'left at' | 'brought home';
  readonly place: string;
  readonly leg: number;
  readonly condition: Condition;
  readonly at: string;
}

/** What this phone has reported of one flight, with base or not. */
export interface OwnReports {
  readonly loadedVersion: number | null;
  readonly offAt: string | null;
  /** It was pressed by mistake: whatever base shows, it has not taken off. */
  readonly notOff: boolean;
  readonly downAt: string | null;
  readonly refusedAt: string | null;
  readonly drums: readonly ReportedDrum[];
}

type Body = FlightReportBody | MovementBody;
type Kept = Pick<ShownEntry, 'flight' | 'requests'>;

/** Read from the entries as they were kept; what base has asked back about counts as said all the same. */
export const ownReports = (entries: readonly Kept[], flight: string): OwnReports => {
  const own = entries.filter((entry) => entry.flight === flight);
  const bodies = own.toReversed().flatMap(({ requests }) => requests.map(({ body }) => body as Body));
  const last = <K extends Body['kind']>(kind: K) =>
    bodies.findLast((body): body is Extract<Body, { kind: K }> => body.kind === kind);
  const land = last('land') ?? last('turn back') ?? last('end elsewhere');
  const off = bodies.findLastIndex(({ kind }) => kind === 'take off');
  const notOff = bodies.findLastIndex((body) => saysNotOff(body, flight)) > off;
  return {
    loadedVersion: last('load')?.version ?? null,
    offAt: notOff ? null : (last('take off')?.happenedAt ?? null),
    notOff,
    downAt: land?.happenedAt ?? null,
    refusedAt: last('refuse')?.happenedAt ?? null,
    drums: drumsSaid(own.toReversed(), takenBack(entries)),
  };
};

const address = '/api/movements/';

/** Drum by drum what these entries say, without what has been taken back. */
export const drumsSaid = (entries: readonly Kept[], back: ReadonlySet<string>): readonly ReportedDrum[] =>
  entries.flatMap(({ requests }) =>
    requests.flatMap(({ path, body }) => {
      const report = body as Body;
      const id = path.slice(address.length);
      if ((report.kind !== 'left at' && report.kind !== 'brought home') || back.has(id)) return [];
      const { drum, kind, place, leg, condition, happenedAt } = report;
      return [{ id, drum, kind, place, leg, condition, at: happenedAt }];
    }),
  );

/** Drums that this phone has put on hold: it says so at once, whether base has heard or not. */
export const heldHere = (entries: readonly Kept[]): ReadonlySet<string> =>
  new Set(
    drumsSaid(entries, takenBack(entries)).flatMap(({ drum, condition }) =>
      condition === 'sound' ? [] : [drum],
    ),
  );

/** Surfaces as base knows them and as this phone has seen them; the newest of each place. */
export const surfacesKnown = (
  byBase: readonly SurfaceReport[],
  entries: readonly ShownEntry[],
): readonly SurfaceReport[] => {
  const own = entries.flatMap(({ requests }) =>
    requests.flatMap(({ path, body }) =>
      path.startsWith('/api/surface-reports/') ? [body as unknown as SurfaceReport] : [],
    ),
  );
  const ordered = [...byBase, ...own].sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
  return [...new Map(ordered.map((report) => [report.place, report])).values()];
};
