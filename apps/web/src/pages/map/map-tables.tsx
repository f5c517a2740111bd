import { Link } from 'wouter';
import { EmptyLine, inWords, LevelMark, Lines, SurfaceWord } from '../../ui/index.js';
import type { Moved } from './day-legs.js';
import type { Heard } from './heard.js';
import { approachInWords, kindInWords, type PlaceRow } from './place-rows.js';

interface LegsTableProps {
  readonly moved: readonly Moved[];
  /** "Tue 15". */
  readonly day: string;
  readonly distanceNm: (from: string, to: string) => number;
}

/** What the lines of the chart say, in words. */
export const LegsTable = ({ moved, day, distanceNm }: LegsTableProps) =>
  moved.length === 0 ? (
    <EmptyLine>Nothing flies on {day}.</EmptyLine>
  ) : (
    <Lines
      caption={`Legs of ${day}`}
      rows={moved}
      keyOf={({ id, aircraft }) => `${id} ${aircraft}`}
      columns={[
        {
          head: 'Flight',
          heads: true,
          cell: ({ id, state }) =>
            state === 'sling' ? (
              'Sling'
            ) : state === 'booked' ? (
              <>
                {id} <small>booked</small>
              </>
            ) : (
              <>
                <Link href={`/week/${id}`}>{id}</Link> <small>{state}</small>
              </>
            ),
        },
        { head: 'With', cell: ({ aircraft }) => aircraft },
        {
          head: 'Route',
          cell: ({ route, needsDecision }) => (
            <>
              {route.join('-')}
              {needsDecision !== null && (
                <>
                  <br />
                  <span className="band">Needs a decision</span> {needsDecision}
                </>
              )}
            </>
          ),
        },
        { head: 'Load', cell: ({ load }) => load },
        {
          head: 'Way',
          figures: true,
          wide: true,
          cell: ({ route }) =>
            inWords(
              route.slice(1).reduce((sum, to, leg) => sum + distanceNm(route[leg]!, to), 0),
              'NM',
              1,
            ),
        },
      ]}
    />
  );

interface PlacesTableProps {
  readonly rows: readonly PlaceRow[];
  readonly levelsOf: string;
  readonly heard: (place: PlaceRow['place']) => Heard;
  readonly selected: string | undefined;
}

/** What the marks and labels of the chart say, from north to south. */
export const PlacesTable = ({ rows, levelsOf, heard, selected }: PlacesTableProps) => (
  <Lines
    caption={`Places, level: ${levelsOf}`}
    rows={rows}
    keyOf={({ place }) => place.code}
    isCurrent={({ place }) => place.code === selected}
    columns={[
      {
        head: 'Place',
        heads: true,
        cell: ({ place }) => <Link href={`/map/${place.code}${window.location.search}`}>{place.code}</Link>,
      },
      {
        head: 'What',
        wide: true,
        cell: ({ place }) => approachInWords(place) ?? kindInWords(place),
      },
      {
        head: 'Level',
        cell: ({ level, words }) =>
          level === null ? words || 'no cache' : <LevelMark level={level} words={words} />,
      },
      {
        head: 'Surface',
        cell: ({ place }) => (place.runway === null ? '' : <SurfaceWord state={heard(place).surface} />),
      },
    ]}
  />
);
