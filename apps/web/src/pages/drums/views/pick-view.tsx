import type { PickedDrum, PickListAnswer } from '@drumline/contract';
import { useCalendar, useList, useMay } from '../../../api/index.js';
import {
  Button,
  EmptyLine,
  figure,
  inWords,
  LevelMark,
  Lines,
  Picture,
  StateWord,
} from '../../../ui/index.js';
import type { Go } from '../address.js';
import { pickListSchema } from '../drums-read.js';
import { whereWords } from '../facts.js';
import { DrumLink } from './drum-link.js';
import { NotForYou } from './not-for-you.js';

interface PickViewProps {
  readonly current: string | null;
  readonly go: Go;
}

/** The drums set aside for each flight, in the order of its stops, the oldest fit first. */
export const PickView = ({ current, go }: PickViewProps) => {
  const may = useMay();
  const isMine = may('fill', 'view');
  const read = useList(isMine ? '/api/pick-lists' : null, pickListSchema);
  if (!isMine) return <NotForYou title="To pick by flight" />;
  return (
    <Picture read={read}>
      {(lists) =>
        lists.length === 0 ? (
          <>
            <h2>To pick by flight</h2>
            <EmptyLine>Nothing to pick: no approved flight waits for its drums.</EmptyLine>
          </>
        ) : (
          <>
            <div className="drums-acts">
              <Button small onPress={() => window.print()}>
                Print these lists
              </Button>
            </div>
            {lists.map((list) => (
              <FlightPick key={list.flight} list={list} current={current} go={go} />
            ))}
          </>
        )
      }
    </Picture>
  );
};

const FlightPick = ({ list, current, go }: PickViewProps & { readonly list: PickListAnswer }) => {
  const { day } = useCalendar();
  const { flight, aircraft, from, departs, date, pilot, state, needsDecision, stops, version } = list;
  return (
    <section className="section" aria-label={`To pick for ${flight}`}>
      <h2>
        {flight}{' '}
        <span>
          {aircraft}, {from} {day(date)} {departs}
          {pilot === null ? '' : `, ${pilot}`}
        </span>
        <small>version {version}</small>
      </h2>
      <StateWord state={state} needsDecision={needsDecision !== null} />
      {needsDecision !== null && <p>{needsDecision}</p>}
      {stops.map(({ place, plannedUse, drums, toFill }, stop) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a flight may stop twice at one place
        <div key={stop}>
          <p className="drums-note">
            For <b>{place}</b>, planned use {day(plannedUse)}
            {toFill > 0 && <b>. {inWords(toFill, 'drums')} still to fill</b>}
          </p>
          {drums.length > 0 && (
            <Lines
              caption={`Drums of ${flight} for ${place}`}
              captionUnseen
              numbered
              rows={drums}
              keyOf={({ number }) => number}
              isCurrent={({ number }) => number === current}
              columns={pickColumns(go)}
            />
          )}
        </div>
      ))}
    </section>
  );
};

const pickColumns = (go: Go) => [
  { head: 'Number', cell: ({ number }: PickedDrum) => <DrumLink number={number} go={go} />, heads: true },
  { head: 'Batch', cell: ({ batch }: PickedDrum) => batch ?? 'not known' },
  { head: 'At', cell: ({ where }: PickedDrum) => whereWords(where) },
  {
    head: 'Gross',
    cell: ({ grossKg }: PickedDrum) => (grossKg === null ? 'not weighed' : `${figure(grossKg, 1)} kg`),
    figures: true,
  },
  {
    head: 'Take it',
    cell: ({ against }: PickedDrum) => (against.length === 0 ? 'yes' : against.map(speaks)),
  },
];

/** The mark says HOLD in place of the word. */
const speaks = (words: string) => {
  const rest = words.replace(/^HOLD /, '');
  return (
    <span key={words} className="plum">
      {rest !== words && <LevelMark level="held" />} {rest}{' '}
    </span>
  );
};
