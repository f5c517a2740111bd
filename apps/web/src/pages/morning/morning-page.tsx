import './morning.css';
import { type ReactNode, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { type Calendar, type Read, useCalendar, useMay, useRead } from '../../api/index.js';
import { useKeptSurfaces } from '../../radio/kept-surfaces.js';
import { openRadioLine } from '../../radio/radio-open.js';
import { Button, Choice, DayPackLink, Picture, TitleBlock, useWhyOfBefore } from '../../ui/index.js';
import { DecideList } from './decide-list.js';
import { decideRows } from './decide-rows.js';
import { FuelDialog } from './fuel-dialog.js';
import { HandoverDialog } from './handover-dialog.js';
import { changedRows, OneWindow, WordsList } from './lists.js';
import { MorningFields } from './morning-fields.js';
import { type Morning, morningSchema } from './morning-read.js';
import { awayRows, notHeardRows } from './not-heard-rows.js';
import { StripTable } from './strip-table.js';
import { WaitingHandover } from './waiting-handover.js';

type Since = 'evening' | 'handover';
type Open = 'handover' | 'fuel';

export const MorningPage = () => {
  const calendar = useCalendar();
  const [since, setSince] = useState<Since>('evening');
  const [from, setFrom] = useState<string | null>(null);
  const [open, setOpen] = useState<Open>();
  const read = useEveryMinute(useRead(`/api/morning${from === null ? '' : `?since=${from}`}`, morningSchema));
  const keptSurfaces = useKeptSurfaces();
  const isOfBefore = useWhyOfBefore(read) !== undefined;
  const rows = read.value === undefined ? [] : decideRows(read.value, calendar, isOfBefore);
  const choose = (next: Since) => {
    setSince(next);
    setFrom(next === 'handover' ? (read.value?.handedOverAt ?? null) : null);
  };
  return (
    <>
      <TitleBlock
        title="Morning"
        sub={calendar.operatingDate}
        acts={<PageActs read={read} onOpen={setOpen} />}
      >
        {read.value !== undefined && <MorningFields morning={read.value} rows={rows} calendar={calendar} />}
      </TitleBlock>
      <Picture read={read}>
        {(morning) => (
          <div className="morning">
            {morning.handover !== null && (
              <WaitingHandover handover={morning.handover} onOpen={() => setOpen('handover')} />
            )}
            <div className="morning-columns">
              <Column name="Decide now">
                <h2>
                  Decide now <small>what can hurt people first, then the first due</small>
                </h2>
                <div className="morning-decide">
                  <DecideList rows={rows} empty={nothingToDecide(morning, calendar)} />
                </div>
                <h2>
                  If only one window opens today <small>most harm avoided per hour first</small>
                </h2>
                <OneWindow morning={morning} />
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
                <WordsList
                  rows={notHeardRows(morning, calendar, keptSurfaces)}
                  empty="Everybody has been heard from."
                />
              </Column>
            </div>
            <StripTable strips={morning.strips} />
          </div>
        )}
      </Picture>
      {read.value !== undefined && open !== undefined && (
        <OpenDialog open={open} morning={read.value} onClose={() => setOpen(undefined)} />
      )}
    </>
  );
};

interface OpenDialogProps {
  readonly open: Open;
  readonly morning: Morning;
  readonly onClose: () => void;
}

const OpenDialog = ({ open, morning, onClose }: OpenDialogProps) =>
  open === 'fuel' ? (
    <FuelDialog morning={morning} onClose={onClose} />
  ) : (
    <HandoverDialog morning={morning} onClose={onClose} />
  );

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

interface PageActsProps {
  /** The picture that the dialogs speak of. */
  readonly read: Read<Morning>;
  readonly onOpen: (open: Open) => void;
}

/** Without a picture the page says why below: Medevac and Handover, which speak of it, are left out. */
const PageActs = ({ read, onOpen }: PageActsProps) => {
  const may = useMay();
  const [, go] = useLocation();
  const isFirstRead = read.value === undefined;
  const isShown = !isFirstRead || read.problem === undefined;
  return (
    <>
      {isShown && (
        <Button press="m" busy={isFirstRead} onPress={() => onOpen('fuel')}>
          Medevac
        </Button>
      )}
      {isShown && may('hand over', 'enter') && (
        <Button press="h" busy={isFirstRead} onPress={() => onOpen('handover')}>
          Handover
        </Button>
      )}
      {may('count', 'enter') && (
        <Button press="p" onPress={() => go('/morning/paper')}>
          Radio and paper
        </Button>
      )}
      <DayPackLink />
      {may('report surface', 'enter') && (
        <Button kind="main" onPress={openRadioLine}>
          Enter radio report
        </Button>
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
