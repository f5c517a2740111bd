import type { Fault as FieldFault } from '@drumline/contract';
import { areTwoPeople, type OwnSheet, totalsApart } from '@drumline/loading';
import { knownSurface } from '@drumline/network';
import type { Scenario } from '@drumline/planning';
import { holdOn } from '@drumline/stock';
import type { Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';
import type { LoadBody } from './loads-aboard.js';

type Signed = NonNullable<LoadBody['signed']>;

/** A loading as it is reported, and base's own sheet of it. */
interface ReportedLoad {
  readonly body: LoadBody;
  readonly own: Pick<OwnSheet, 'figures' | 'toleranceLb'>;
}

/** What stands in the way of calling the flight loaded, by the moment at which it was loaded. */
export const faultsOfLoad = (
  board: Board,
  flight: Flight,
  { body, own }: ReportedLoad,
): readonly FieldFault[] => [
  ...versionFaults(flight, body),
  ...totalsFaults(body, own),
  ...surfaceFaults(board.scenario, flight, body),
  ...body.drums.flatMap((_, at) => drumFaultsAt(board, flight, body, at)),
];

/** A difference that somebody has signed for, in words; empty: there is none. */
export const signedDifferences = ({
  body: { signed, totals },
  own: { figures, toleranceLb },
}: ReportedLoad): readonly string[] =>
  signed === undefined || toleranceLb === null
    ? []
    : totalsApart(totals, figures, toleranceLb).map(
        ({ words }) => `${words} Signed by ${signedBy(signed)}: ${signed.reason}.`,
      );

const signedBy = ({ by, second }: Signed): string => (second === undefined ? by : `${by} with ${second}`);

const versionFaults = ({ id, version }: Flight, body: LoadBody): readonly FieldFault[] =>
  body.version === version
    ? []
    : [
        {
          path: 'version',
          problem: `${id} is at version ${version}; it was loaded by version ${body.version}.`,
          remedy: `Read version ${version}, change the load to it, and report it again.`,
        },
      ];

const totalsFaults = (
  { totals, signed }: LoadBody,
  { figures, toleranceLb }: ReportedLoad['own'],
): readonly FieldFault[] => {
  if (toleranceLb === null)
    return [
      {
        path: 'totals',
        problem: 'nobody has said by how much two totals may differ.',
        remedy: 'Ask the operations manager to enter `twoTotals` in the policy.',
      },
    ];
  const apart = totalsApart(totals, figures, toleranceLb);
  if (signed !== undefined) return apart.length > 0 && !isByTwo(signed) ? [signedAlone(signed)] : [];
  return apart.map(({ pair, words }) => ({
    path: `totals.${pair}`,
    problem: words,
    remedy: 'Add both up again; if they stay apart, the commander signs with the reason and a second person.',
  }));
};

const isByTwo = ({ by, second = '' }: Signed): boolean => areTwoPeople(by, second);

const signedAlone = ({ by }: Signed): FieldFault => ({
  path: 'signed.second',
  problem: `${by} alone has signed for the difference.`,
  remedy: 'Let a second person look at both figures, and name them.',
});

/** Where no report is fresh the surface is unknown, and only the soft figures will do. */
const surfaceFaults = (
  { places, surfaceReports, timeZone }: Scenario,
  { planned, stops }: Flight,
  { bySoftFigures, happenedAt, drums }: LoadBody,
): readonly FieldFault[] => {
  const surfaceAt = knownSurface(surfaceReports, happenedAt, timeZone);
  return [...new Set(stops.map(({ place }) => place))].flatMap((code) => {
    const place = places.find((each) => each.code === code);
    if (place?.kind !== 'strip') return [];
    const surface = surfaceAt(place) ?? (bySoftFigures ? 'soft' : null);
    if (surface === null)
      return [
        {
          path: 'bySoftFigures',
          problem: `the surface of ${code} is unknown: no report is fresh.`,
          remedy: `Ask ${code} for a report; or load by the soft figures, and say so.`,
        },
      ];
    if (surface === 'closed') return [closed(code, 'it is reported closed')];
    if (surface !== 'soft') return [];
    const stop = planned.stops.find((each) => each.place === code);
    if (stop === undefined || stop.drumsIfSoft === null)
      return [closed(code, 'nothing of this flight may land there soft')];
    const taken = drums.filter(({ to }) => to === code).length;
    return taken <= stop.drumsIfSoft
      ? []
      : [
          {
            path: 'drums',
            problem: `${taken} drums are aboard for ${code}; by the soft figures ${stop.drumsIfSoft} may go.`,
            remedy: `Leave ${taken - stop.drumsIfSoft} behind.`,
          },
        ];
  });
};

const closed = (code: string, why: string): FieldFault => ({
  path: 'drums',
  problem: `${code}: ${why}.`,
  remedy: 'Do not go; ask base to amend the flight or to call it off.',
});

const drumFaultsAt = (
  { scenario, flights, loads }: Board,
  flight: Flight,
  { drums, happenedAt }: LoadBody,
  at: number,
): readonly FieldFault[] => {
  const { drum: number, to } = drums[at]!;
  const fault = (field: string, problem: string, remedy: string): readonly FieldFault[] => [
    { path: `drums[${at}].${field}`, problem, remedy },
  ];
  if (!flight.stops.some(({ place }) => place === to))
    return fault(
      'to',
      `${to} is no stop of ${flight.id}.`,
      'Name a stop; what is left elsewhere is reported there.',
    );
  if (drums.findIndex(({ drum }) => drum === number) < at)
    return fault('drum', `drum ${number} is named twice.`, 'Read the numbers again.');
  const drum = scenario.drums.find((each) => each.number === number);
  const hold = drum === undefined ? undefined : holdOn(drum, scenario.batches)?.hold;
  if (hold !== undefined && Date.parse(hold.at) <= Date.parse(happenedAt))
    return fault('drum', `drum ${number} is held: ${hold.reason}.`, 'Leave it behind; take another.');
  const other = flights.find(
    ({ id, state }) =>
      id !== flight.id &&
      state === 'loaded' &&
      loads.some((load) => load.flightId === id && load.drum === number),
  );
  return other === undefined
    ? []
    : fault('drum', `drum ${number} is loaded on ${other.id}.`, 'Read the number again, here and there.');
};
