import { decimalsOf } from '@drumline/units';
import { Link } from 'wouter';
import { type Calendar, useMay } from '../../api/index.js';
import { openRadioLine } from '../../radio/radio-open.js';
import {
  ageInWords,
  Button,
  Field,
  Fields,
  inWords,
  LevelMark,
  SurfaceWord,
  stockInWords,
} from '../../ui/index.js';
import type { Heard } from './heard.js';
import { approachInWords, kindInWords, type PlaceRow } from './place-rows.js';

interface PlaceCardProps {
  readonly row: PlaceRow;
  /** "End of Tue 15", "Now". */
  readonly levelsOf: string;
  readonly heard: Heard;
  readonly calendar: Calendar;
  /** "XALD 150.3 NM". */
  readonly fromBases: readonly string[];
}

/** What is known of one place, as a printed form. */
export const PlaceCard = ({ row, levelsOf, heard, calendar, fromBases }: PlaceCardProps) => {
  const { place, cache } = row;
  return (
    <section className="map-card" aria-labelledby="map-card">
      <header>
        <h2 id="map-card" tabIndex={-1}>
          {place.code} <span>{place.name}</span>
        </h2>
        <small>{kindInWords(place)}</small>
      </header>
      {cache !== null && (
        <Fields>
          <Field label={levelsOf}>{stockInWords(row.litres!)}</Field>
          <Field label="Minimum">{inWords(cache.minimumLitres, 'L')}</Field>
          <Field label="Critical">{inWords(cache.criticalLitres, 'L')}</Field>
        </Fields>
      )}
      <dl className="form-rows">
        <Row label="Level">
          {row.level === null || cache === null ? (
            row.words || 'No cache is kept here'
          ) : (
            <LevelMark level={row.level} words={row.words.slice(row.words.indexOf(', ') + 2)} />
          )}
        </Row>
        {cache !== null && <CacheRows cache={cache} />}
        {place.runway !== null && <Surface heard={heard} calendar={calendar} />}
        <StripRows row={row} />
        <Row label="From">{fromBases.join(', ')}</Row>
      </dl>
      <CardActs code={place.code} hasCache={cache !== null} />
    </section>
  );
};

const CacheRows = ({ cache }: { readonly cache: NonNullable<PlaceRow['cache']> }) => {
  const { lastCount, usableLitres } = cache.stock;
  return (
    <>
      <Row label="Usable now">{inWords(usableLitres, 'L')}</Row>
      <Row label="Last count">
        {lastCount === null
          ? 'none'
          : `${inWords(lastCount.countedLitres, 'L')}, ${ageInWords(lastCount.ageHours)} old`}
      </Row>
      <Row label="Capacity">{inWords(cache.capacityDrums, 'drums')}</Row>
    </>
  );
};

const Surface = ({ heard: { surface, report }, calendar }: Pick<PlaceCardProps, 'heard' | 'calendar'>) => (
  <Row label="Surface">
    <SurfaceWord state={surface} />{' '}
    {report === undefined
      ? 'No report.'
      : surface === 'unknown'
        ? `Last report ${report.state}, ${calendar.when(report.at)}, ${report.by}: stale.`
        : `${calendar.when(report.at)}, ${report.by}`}
  </Row>
);

const StripRows = ({ row: { place } }: Pick<PlaceCardProps, 'row'>) => {
  const { runway, landingCapacityDrumsPerDay, radioTime, helper, remarks } = place;
  const approach = approachInWords(place);
  return (
    <>
      <Row label={place.kind === 'pad' ? 'Height' : 'Strip'}>
        {runway !== null && `${inWords(runway.lengthFt, 'ft')}, ${runway.material}, `}
        {inWords(place.elevationFt, 'ft')} up
      </Row>
      {approach !== null && <Row label="Approach">{approach}</Row>}
      {runway !== null && (
        <Row label="Tailwind, most">
          {inWords(runway.tailwindLimitKt, 'kt', decimalsOf(runway.tailwindLimitKt))}
        </Row>
      )}
      {runway?.committalPoint != null && <Row label="Decide by">{runway.committalPoint}</Row>}
      {landingCapacityDrumsPerDay !== null && (
        <Row label="Can unload">{inWords(landingCapacityDrumsPerDay, 'drums')} a day</Row>
      )}
      {radioTime !== undefined && <Row label="Radio">daily {radioTime}</Row>}
      {helper !== undefined && <Row label="Help with drums">{helper}</Row>}
      {remarks !== undefined && <Row label="Remarks">{remarks}</Row>}
    </>
  );
};

const Row = ({ label, children }: { readonly label: string; readonly children: React.ReactNode }) => (
  <div>
    <dt>{label}</dt>
    <dd>{children}</dd>
  </div>
);

const CardActs = ({ code, hasCache }: { readonly code: string; readonly hasCache: boolean }) => {
  const mayReport = useMay()('report surface', 'enter');
  return (
    <div className="map-acts">
      {hasCache && (
        <Link className="button main small" href={`/caches/${code}`}>
          Open cache
        </Link>
      )}
      {mayReport && (
        <Button small onPress={openRadioLine}>
          Enter radio report
        </Button>
      )}
    </div>
  );
};
