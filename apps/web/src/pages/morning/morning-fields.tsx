import type { Calendar } from '../../api/index.js';
import { Field, inWords } from '../../ui/index.js';
import type { DecideRow } from './decide-row.js';
import type { Morning } from './morning-read.js';
import { timeWords } from './not-heard-rows.js';
import { reserveSaid } from './reserve-words.js';

interface MorningFieldsProps {
  readonly morning: Morning;
  readonly rows: readonly DecideRow[];
  readonly calendar: Calendar;
}

/** What the page adds up to. */
export const MorningFields = ({ morning, rows, calendar }: MorningFieldsProps) => {
  const { firstTakeOff, flights, fuel, worstOdds, away } = morning;
  const reserve = reserveSaid(fuel);
  const [first] = flights;
  const isLate = first !== undefined && Date.parse(first.by) < Date.parse(morning.asOf);
  const out = away.filter(({ word }) => word !== 'down and well');
  const overdue = out.filter(({ word }) => word === 'overdue').length;
  return (
    <>
      <Field
        label="First take-off"
        state={firstTakeOff !== null && firstTakeOff.lateMinutes > 0 ? 'grave' : 'plain'}
        note={firstTakeOff === null ? undefined : takeOffWords(firstTakeOff)}
      >
        {firstTakeOff?.at ?? 'none still to come'}
      </Field>
      <Field
        label="To decide"
        note={first && `first flight by ${calendar.when(first.by)}${isLate ? ', late' : ''}`}
      >
        {inWords(rows.length, 'lines')}
      </Field>
      <Field
        label="Away"
        state={overdue > 0 ? 'grave' : 'plain'}
        note={overdue > 0 ? `${overdue} overdue` : undefined}
      >
        {out.length}
      </Field>
      <Field label="Reserve" state={reserve.isShort ? 'grave' : 'plain'} note={reserve.note}>
        {reserve.value}
      </Field>
      {worstOdds !== null && (
        <Field
          label="Forecast: cancelled, worst strip"
          note={`morning, ${Math.round(worstOdds.afternoonCancel * 100)} % afternoon`}
        >
          {worstOdds.place} {Math.round(worstOdds.morningCancel * 100)} %
        </Field>
      )}
    </>
  );
};

/** "F06, A1", and past its hour "F06, A1, 12 min late". */
const takeOffWords = ({ flight, aircraft, lateMinutes }: NonNullable<Morning['firstTakeOff']>): string =>
  [flight, aircraft, ...(lateMinutes > 0 ? [`${timeWords(lateMinutes)} late`] : [])].join(', ');
