import { type Dispatch, type SetStateAction, useMemo, useState } from 'react';
import type { Calendar } from '../../../api/index.js';
import { ActForm, Button, Choice, Entry } from '../../../ui/index.js';
import type { Card } from '../card/card-read.js';
import type { Week, WeekFlight } from '../week-read.js';
import { Breaks, offWords, useAmendCheck } from './amend-check.js';
import { type Amendment, amendmentOf, type Draft, draftFault, draftOf } from './amendment.js';

interface AmendFormProps {
  readonly flight: WeekFlight;
  readonly card: Card;
  readonly week: Week;
  readonly calendar: Calendar;
  readonly mayAssign: boolean;
  readonly busy: boolean;
  readonly onSend: (amendment: Amendment) => void;
  readonly onClose: () => void;
}

/** Drums, stops, aircraft, pilot, day: what would break is said while it is typed. */
export const AmendForm = (props: AmendFormProps) => {
  const { flight, card, mayAssign, busy, onSend, onClose } = props;
  const planned = card.today?.planned ?? card.planned;
  const before = useMemo(
    () =>
      draftOf(
        flight,
        planned.stops.filter(({ drums }) => drums > 0),
      ),
    [flight, planned],
  );
  const [draft, setDraft] = useState(before);
  const fault = draftFault(draft);
  const amendment = fault === undefined ? amendmentOf(before, draft) : null;
  const check = useAmendCheck(flight.id, amendment);
  const off = fault ?? offWords(amendment, check);
  return (
    <ActForm
      title={`Amend ${flight.id}`}
      onClose={onClose}
      onSubmit={() => off === undefined && !busy && amendment !== null && onSend(amendment)}
      acts={
        <Button kind="main" type="submit" busy={busy} offBecause={off}>
          Amend {flight.id}
        </Button>
      }
    >
      <StopEntries draft={draft} setDraft={setDraft} caches={props.week.caches} />
      <FlightChoices {...props} draft={draft} setDraft={setDraft} mayAssign={mayAssign} />
      <Breaks
        check={check}
        flight={flight.id}
        onFreeTime={(departs) => setDraft((now) => ({ ...now, departs }))}
      />
    </ActForm>
  );
};

interface PartProps {
  readonly draft: Draft;
  readonly setDraft: Dispatch<SetStateAction<Draft>>;
}

const StopEntries = ({ draft, setDraft, caches }: PartProps & { readonly caches: readonly string[] }) => {
  const change = (index: number, stop: Partial<Draft['stops'][number]>) =>
    setDraft((now) => ({
      ...now,
      stops: now.stops.map((each, at) => (at === index ? { ...each, ...stop } : each)),
    }));
  const options = [...new Set([...draft.stops.map(({ place }) => place), ...caches])];
  return (
    <>
      {draft.stops.map((stop, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a stop has no name but its place in the order
        <div key={index} className="amend-stop">
          <Entry
            label={`Drums, stop ${index + 1}`}
            unit="drums"
            value={stop.drums}
            onChange={(drums) => change(index, { drums })}
            input={{ inputMode: 'numeric' }}
          />
          <Choice
            label={`At, stop ${index + 1}`}
            value={stop.place}
            options={options.map((place) => [place, place])}
            onChange={(place) => change(index, { place })}
          />
        </div>
      ))}
      <Button
        small
        onPress={() =>
          setDraft((now) => ({ ...now, stops: [...now.stops, { place: options[0] ?? '', drums: '0' }] }))
        }
      >
        Another stop
      </Button>
    </>
  );
};

const FlightChoices = ({
  draft,
  setDraft,
  flight,
  card,
  week,
  calendar,
  mayAssign,
}: PartProps & Pick<AmendFormProps, 'flight' | 'card' | 'week' | 'calendar' | 'mayAssign'>) => {
  const days = [
    ...new Set([draft.date, ...week.days.map(({ date }) => date).filter((date) => date >= week.today)]),
  ];
  const crew = card.today?.crew ?? [];
  // Who is fit was asked of the flight as it stands: of another day or aircraft the check says it.
  const isAsStands = draft.date === flight.date && draft.aircraft === flight.aircraft;
  return (
    <>
      <div className="amend-stop">
        <Choice
          label="Day"
          value={draft.date}
          options={days.sort().map((date) => [date, calendar.day(date)])}
          onChange={(date) => setDraft((now) => ({ ...now, date }))}
        />
        <Choice
          label="Aircraft"
          value={draft.aircraft}
          options={week.aircraft.map(({ tail, home }) => [tail, `${tail}, ${home}`])}
          onChange={(aircraft) => setDraft((now) => ({ ...now, aircraft }))}
        />
        <Entry
          label="Off"
          value={draft.departs}
          onChange={(departs) => setDraft((now) => ({ ...now, departs }))}
          input={{ placeholder: 'first free' }}
        />
      </div>
      {!mayAssign && (
        <p>
          {draft.pilot === '' ? 'No pilot is named' : `Pilot: ${draft.pilot}`}. The dispatcher names another:
          what only another pilot may fly, the dispatcher amends.
        </p>
      )}
      {mayAssign && (
        <Choice
          label="Pilot"
          value={draft.pilot}
          options={[
            ['', 'Nobody named'],
            ...crew.map(({ id, whyNot }) => [id, (isAsStands && whyNot) || id] as const),
          ]}
          onChange={(pilot) => setDraft((now) => ({ ...now, pilot }))}
        />
      )}
    </>
  );
};
