import { useMemo, useRef } from 'react';
import { useCalendar, useSettings } from '../../api/index.js';
import { EmptyLine, Picture, useIsPrinting } from '../../ui/index.js';
import { ChartKey } from './chart-key.js';
import { chartLabels } from './chart-labels.js';
import { byNameAlone, drawnLegs } from './chart-legs.js';
import { chartScale } from './chart-scale.js';
import { dayInWords, type Moved } from './day-legs.js';
import { heardOf } from './heard.js';
import { LegsTable, PlacesTable } from './map-tables.js';
import { NetworkChart } from './network-chart.js';
import { PlaceButtons } from './place-buttons.js';
import { PlaceCard } from './place-card.js';
import { indexOf, type PlaceRow, placeRows, shortInWords } from './place-rows.js';
import { distancesOf, type MovedRead, type Network, useMoved } from './use-map.js';
import { useSize } from './use-size.js';

interface OpenMapProps {
  readonly network: Network;
  readonly day: string;
  readonly levelsOf: string;
  readonly selected: string | undefined;
  readonly onOpen: (code: string) => void;
}

export const OpenMap = ({ network, day, levelsOf, selected, onOpen }: OpenMapProps) => {
  const calendar = useCalendar();
  const timeZone = useSettings().value?.data.timeZone ?? 'UTC';
  const { outlook, filled, places, reports } = network;
  const rows = useMemo(
    () => placeRows(places, { outlook, filled, index: indexOf(outlook, day) }),
    [places, outlook, filled, day],
  );
  const distanceNm = useMemo(() => distancesOf(network), [network]);
  const read = useMoved(day, outlook);
  const moved = read.value ?? [];
  const chosen = rows.find(({ place }) => place.code === selected);
  const heard = heardOf(reports, { at: calendar.now, timeZone });
  const flown =
    read.value === undefined
      ? `${calendar.date(day)}: the flights are not known yet.`
      : dayInWords(read.value, calendar.date(day));
  const finding = [flown, shortInWords(rows)].join(' ');
  return (
    <div className="work-and-side map">
      <div className="work">
        <Chart {...{ rows, moved, distanceNm, selected, onOpen, finding }} />
      </div>
      <aside className="side" aria-label="The chosen place, and the chart as tables">
        {chosen === undefined ? (
          <div className="map-no-card">
            <EmptyLine>
              {selected === undefined
                ? 'Press a place on the chart, or Enter on it: its card opens here.'
                : `${selected} is not a place of this territory.`}
            </EmptyLine>
          </div>
        ) : (
          <PlaceCard
            row={chosen}
            levelsOf={levelsOf}
            heard={heard(chosen.place)}
            calendar={calendar}
            fromBases={fromBases(chosen, rows, distanceNm)}
          />
        )}
        <DayLegs read={read} day={calendar.day(day)} distanceNm={distanceNm} />
        <PlacesTable rows={rows} levelsOf={levelsOf} heard={heard} selected={selected} />
      </aside>
    </div>
  );
};

type DistanceNm = (from: string, to: string) => number;

interface ChartProps {
  readonly rows: readonly PlaceRow[];
  readonly moved: readonly Moved[];
  readonly distanceNm: DistanceNm;
  readonly selected: string | undefined;
  readonly onOpen: (code: string) => void;
  readonly finding: string;
}

/** Within the margins of A4 and Letter, so that neither letters nor the scale bar are made smaller. */
const onPaper = { width: 690, height: 600 };

/** Below this width labels are codes and figures alone. */
const narrow = 720;
/** Below this one, as on a phone, what a flight carries stands in the table alone. */
const small = 480;

/** On paper every letter has 10 points. */
const lettersOf = (size: { readonly width: number }) =>
  size === onPaper
    ? { hasNames: true, hasWords: false, wordsSize: 13.4 }
    : { hasNames: size.width >= narrow, hasWords: size.width >= narrow, wordsSize: 12 };

const Chart = ({ rows, moved, distanceNm, selected, onOpen, finding }: ChartProps) => {
  const area = useRef<HTMLDivElement>(null);
  const onScreen = useSize(area);
  const size = useIsPrinting() ? onPaper : onScreen;
  const scale = useMemo(
    () =>
      chartScale(
        rows.map(({ place }) => place),
        size,
      ),
    [rows, size],
  );
  const legs = useMemo(() => {
    const spotOf = new Map(rows.map(({ place }) => [place.code, place]));
    const drawn = drawnLegs(
      moved.flatMap((each) => each.legs),
      { scale, spotOf, distanceNm },
    );
    return size.width < small ? drawn.map(byNameAlone) : drawn;
  }, [rows, moved, scale, distanceNm, size]);
  const labels = useMemo(
    () => chartLabels(scale, { rows, legs, ...lettersOf(size) }),
    [scale, rows, legs, size],
  );
  return (
    <figure className="map-figure">
      <div ref={area} className="map-area">
        <NetworkChart {...{ scale, size, rows, legs, labels, selected, finding }} />
        <PlaceButtons rows={rows} scale={scale} selected={selected} onOpen={onOpen} />
      </div>
      <figcaption>
        <ChartKey pixelsPerNm={scale.pixelsPerNm} />
      </figcaption>
    </figure>
  );
};

interface DayLegsProps {
  readonly read: MovedRead;
  readonly day: string;
  readonly distanceNm: DistanceNm;
}

/** The chart stays when the flights of a day cannot be read. */
const DayLegs = ({ read, day, distanceNm }: DayLegsProps) => (
  <>
    {read.isHidden && <p className="map-hidden">Flights are not shown to this role: sling moves alone.</p>}
    <Picture read={read}>{(moved) => <LegsTable moved={moved} day={day} distanceNm={distanceNm} />}</Picture>
  </>
);

const fromBases = (
  { place }: PlaceRow,
  rows: readonly PlaceRow[],
  distanceNm: DistanceNm,
): readonly string[] =>
  rows
    .filter((row) => row.place.kind === 'base' && row.place.code !== place.code)
    .map((row) => `${row.place.code} ${distanceNm(row.place.code, place.code).toFixed(1)} NM`);
