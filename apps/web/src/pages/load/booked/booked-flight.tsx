import './booked.css';
import { useState } from 'react';
import { Link } from 'wouter';
import { type Calendar, useLast, useMay, useRead } from '../../../api/index.js';
import { EmptyLine, Field, inWords, Lines, MessageLine, Picture, TitleBlock } from '../../../ui/index.js';
import { firstLaden, LoadLegs } from '../legs/load-legs.js';
import { type BookedRow, bookedRoute } from '../list/flight-list.js';
import type { Planned } from '../load-read.js';
import { AddDrums } from './add-drums.js';
import { type Asked, type BookedLoad, bookedLoadPath, bookedLoadSchema } from './booked-read.js';
import { shownWords, standWords } from './booked-words.js';

interface BookedFlightProps {
  readonly booked: BookedRow;
  readonly calendar: Calendar;
}

/** A flight that flies anyway: what is booked on it, and drums that may be added. */
export const BookedFlight = ({ booked, calendar }: BookedFlightProps) => {
  const { id, data } = booked;
  const mayAdd = useMay()('approve flight', 'decide');
  const [asked, setAsked] = useState<Asked>({ approval: data.approval ?? '' });
  const read = useRead(bookedLoadPath(id, asked), bookedLoadSchema);
  return (
    <>
      <BookedTitle booked={booked} calendar={calendar} />
      <div className="work load-page">
        <Picture read={useLast(read)}>
          {(load) => (
            <>
              <BookedPicture load={load} />
              <div className="load-booked">
                <LegsTake booked={booked} load={load} />
                {mayAdd ? (
                  <AddDrums
                    {...{ booked, load, asked, calendar }}
                    isOfBefore={read.value === undefined}
                    onAsk={setAsked}
                  />
                ) : (
                  <p>{standWords(load)}</p>
                )}
              </div>
            </>
          )}
        </Picture>
      </div>
    </>
  );
};

const BookedTitle = ({ booked: { id, data }, calendar }: BookedFlightProps) => (
  <TitleBlock
    title={`${id}, load`}
    sub={bookedRoute(data)}
    acts={
      <Link href="/load" className="load-all">
        All flights
      </Link>
    }
  >
    <Field label="Aircraft">{data.aircraft}</Field>
    <Field label="Off" note={`takes ${inWords(data.heldHours, 'h', 1)}`}>
      {calendar.day(data.date)}, {data.departs ?? 'hour not set'}
    </Field>
    <Field label="For">{data.purpose}</Field>
    <Field label="Approval cited">{data.approval ?? 'none'}</Field>
  </TitleBlock>
);

/** Its bars as of a flight whose drums are planned; or why there are none. */
const BookedPicture = ({ load }: { readonly load: BookedLoad }) => {
  const { planned, why, notKnown } = load;
  if (planned === null) return <EmptyLine>{why}</EmptyLine>;
  return (
    <>
      <MessageLine
        kind="note"
        what={shownWords(load)}
        why="Passengers and freight are as booked, not as weighed."
        next={notKnown.join(' ')}
      />
      <p className="load-assumed">
        <b>Assumed:</b> {planned.assumptions} {planned.fuelWords} <b>{planned.cautions[0]}</b>
      </p>
      <BookedLegs planned={planned} />
    </>
  );
};

const BookedLegs = ({ planned: { legs, bars } }: { readonly planned: Planned }) => {
  const [leg, setLeg] = useState(firstLaden(bars));
  return <LoadLegs {...{ legs, bars, leg }} drumsAre="planned" onLeg={setLeg} />;
};

interface LegsTakeProps {
  readonly booked: BookedRow;
  readonly load: BookedLoad;
}

/** What is booked on each leg, how many drums may be aboard beside it, and what keeps a further one off. */
const LegsTake = ({ booked: { data }, load: { legs } }: LegsTakeProps) => (
  <Lines
    caption="What each leg takes"
    rows={data.legs.map((leg, at) => ({ ...leg, most: legs[at] }))}
    keyOf={({ from, to }) => `${from}-${to}`}
    numbered
    columns={[
      { head: 'Leg', heads: true, cell: ({ from, to }) => `${from}-${to}` },
      {
        head: 'Passengers',
        figures: true,
        cell: ({ passengers, passengersKg }) =>
          passengers === 0 ? 'none' : `${passengers}, ${inWords(passengersKg, 'kg')}`,
      },
      { head: 'Freight', figures: true, cell: ({ freightKg }) => inWords(freightKg, 'kg') },
      {
        head: 'Drums, at most',
        figures: true,
        cell: ({ most }) => (most === undefined ? 'not looked at' : most.drums),
      },
      { head: 'No more because of', cell: ({ most }) => most?.by ?? '' },
    ]}
  />
);
