import './morning.css';
import { type ReactNode, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { type Calendar, type Read, useCalendar, useMay, useRead } from '../../api/index.js';
import { openRadioLine } from '../../radio/radio-open.js';
import { Button, Choice, Field, inWords, Picture, PrintLink, TitleBlock } from '../../ui/index.js';
import { DecideList } from './decide-list.js';
import { type DecideRow, decideRows } from './decide-rows.js';
import { FuelDialog } from './fuel-dialog.js';
import { HandoverDialog } from './handover-dialog.js';
import { changedRows, OneWindow, WordsList } from './lists.js';
import { type Morning, morningSchema } from './morning-read.js';
import { awayRows, notHeardRows } from './not-heard-rows.js';
import { StripTable } from './strip-table.js';

type Since = 'evening' | 'handover';

export const MorningPage = () => {
  const calendar = useCalendar();
  const [since, setSince] = useState<Since>('evening');
  const [from, setFrom] = useState<string | null>(null);
  const read = useEveryMinute(useRead(`/api/morning${from === null ? '' : `?since=${from}`}`, morningSchema));
  const rows = read.value === undefined ? [] : decideRows(read.value, calendar);
  const choose = (next: Since) => {
    setSince(next);
    setFrom(next === 'handover' ? (read.value?.handedOverAt ?? null) : null);
  };
  return (
    <>
      <TitleBlock
        title="Morning"
        sub={calendar.date(calendar.today)}
        acts={<PageActs morning={read.value} />}
      >
        {read.value !== undefined && <MorningFields morning={read.value} rows={rows} calendar={calendar} />}
      </TitleBlock>
      <Picture read={read}>
        {(morning) => (
          <div className="morning">
            <div className="morning-columns">
              <Column name="Decide now">
                <h2>
                  Decide now <small>first due first</small>
                </h2>
                <div className="morning-decide">
                  <DecideList rows={rows} empty={nothingToDecide(morning, calendar)} />
                </div>
                <h2>
                  If only one window opens today <small>most harm avoided per hour first</small>
                </h2>
                <OneWindow flights={morning.oneWindow} />
              </Column>
              <Column name="Changed">
                <h2>
                  Changed since {calendar.when(morning.since)} <small>newest first</small>
                </h2>
                {morning.handedOverAt !== null && (
                  <Choice
                    label="Since"
                    value={since}
                    options={[
                      ['evening', '17:00 yesterday'],
                      ['handover', `the handover, ${calendar.when(morning.handedOverAt)}`],
                    ]}
                    onChange={choose}
                  />
                )}
                <WordsList
                  rows={changedRows(morning, calendar.when)}
                  empty={`Nothing has come in since ${calendar.when(morning.since)}.`}
                />
              </Column>
              <Column name="Who is away, and not heard from">
                <h2>
                  Who is away <small>expected back</small>
                </h2>
                <WordsList rows={awayRows(morning, calendar)} empty="Nobody is away." />
                <h2>
                  Not heard from <small>since</small>
                </h2>
                <WordsList rows={notHeardRows(morning, calendar)} empty="Everybody has been heard from." />
              </Column>
            </div>
            <StripTable strips={morning.strips} />
          </div>
        )}
      </Picture>
    </>
  );
};

/** Scrolls by itself where it is long; without a mouse too. */
const Column = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
  <section aria-label={name} tabIndex={0}>
    {children}
  </section>
);

/** Time alone makes a flight overdue and a report stale: the picture is read again by the minute. */
const useEveryMinute = (read: Read<Morning>): Read<Morning> => {
  const { again } = read;
  // biome-ignore lint/correctness/useExhaustiveDependencies: one timer from each reading on
  useEffect(() => {
    const timer = setTimeout(again, 60_000);
    return () => clearTimeout(timer);
  }, [read.readAt?.getTime()]);
  return read;
};

const PageActs = ({ morning }: { readonly morning: Morning | undefined }) => {
  const may = useMay();
  const [, go] = useLocation();
  const [open, setOpen] = useState<'handover' | 'fuel'>();
  const close = () => setOpen(undefined);
  return (
    <>
      <Button press="m" onPress={() => setOpen('fuel')}>
        Medevac
      </Button>
      {may('hand over', 'enter') && (
        <Button press="h" onPress={() => setOpen('handover')}>
          Handover
        </Button>
      )}
      {may('count', 'enter') && (
        <Button press="p" onPress={() => go('/morning/paper')}>
          Radio and paper
        </Button>
      )}
      <PrintLink href="/api/day-pack.pdf">Print day pack</PrintLink>
      {may('report surface', 'enter') && (
        <Button kind="main" onPress={openRadioLine}>
          Enter radio report
        </Button>
      )}
      {open === 'fuel' && morning !== undefined && <FuelDialog morning={morning} onClose={close} />}
      {open === 'handover' && morning !== undefined && <HandoverDialog morning={morning} onClose={close} />}
    </>
  );
};

interface MorningFieldsProps {
  readonly morning: Morning;
  readonly rows: readonly DecideRow[];
  readonly calendar: Calendar;
}

const MorningFields = ({ morning, rows, calendar }: MorningFieldsProps) => {
  const { firstTakeOff, flights, fuel, worstOdds, away } = morning;
  const locked = fuel.filter(({ reserveLitres }) => reserveLitres > 0);
  const out = away.filter(({ word }) => word !== 'down and well');
  const overdue = out.filter(({ word }) => word === 'overdue').length;
  return (
    <>
      <Field
        label="First take-off"
        note={firstTakeOff === null ? undefined : `${firstTakeOff.flight}, ${firstTakeOff.aircraft}`}
      >
        {firstTakeOff?.at ?? 'none today'}
      </Field>
      <Field
        label="To decide"
        note={flights[0] === undefined ? undefined : `first flight by ${calendar.when(flights[0].by)}`}
      >
        {rows.length}
      </Field>
      <Field
        label="Away"
        state={overdue > 0 ? 'grave' : 'plain'}
        note={overdue > 0 ? `${overdue} overdue` : undefined}
      >
        {out.length}
      </Field>
      <Field label="Reserve" note={`locked, ${locked.length} caches`}>
        {inWords(
          locked.reduce((sum, { reserveLitres }) => sum + reserveLitres, 0),
          'L',
        )}
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

const nothingToDecide = ({ changed, strips }: Morning, calendar: Calendar): string => {
  const last = strips
    .filter(({ reportedAt }) => reportedAt !== null)
    .toSorted((one, other) => (one.reportedAt! < other.reportedAt! ? 1 : -1))[0];
  if (last !== undefined)
    return `Nothing to decide. Last report ${calendar.when(last.reportedAt!)} ${last.place}.`;
  return `Nothing to decide. ${changed[0] === undefined ? 'No strip has reported yet.' : changed[0].what}`;
};
