import '../../styles/landscape-print.css';
import './week.css';
import './board/week-board.css';
import './board/flight-box.css';
import './two-weeks.css';
import './card/week-card.css';
import './week-print.css';
import { addDays } from '@drumline/units';
import { useCallback, useEffect, useRef } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import {
  type Calendar,
  type Read,
  useCalendar,
  useLast,
  useMay,
  useMe,
  useRead,
  useSettings,
} from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { Button, EmptyLine, Picture, useKeys } from '../../ui/index.js';
import { actKeys } from './acts/press-acts.js';
import { focusBox } from './board/focus-box.js';
import { Legend } from './board/legend.js';
import { takenOffBooked } from './board/taken-off.js';
import { WeekBoard } from './board/week-board.js';
import { BookedCard, DecisionCard } from './card/decision-card.js';
import { CostLine } from './title/cost-line.js';
import { emptyWords, TallyLine } from './title/tally-line.js';
import { WeekTitle } from './title/week-title.js';
import { sendNow } from './undo/held-act.js';
import { JustDoneLine } from './undo/just-done-line.js';
import { useSelected } from './use-selected.js';
import { type Week, weekSchema } from './week-read.js';

export const WeekPage = ({ at }: PageProps) => {
  const calendar = useCalendar();
  const [search] = useSearchParams();
  const query = search.toString();
  const read = useLast(useRead(`/api/week${query === '' ? '' : `?${query}`}`, weekSchema));
  useStockCatchesUp(read);
  return (
    <>
      <WeekTitle week={read.value} calendar={calendar} />
      <Picture read={read}>{(week) => <OpenWeek week={week} calendar={calendar} chosen={at[0]} />}</Picture>
    </>
  );
};

/** The server works out what stock adds up to every 5 s at most: a picture that is behind is read again. */
const useStockCatchesUp = ({ value, readAt, again }: Read<Week>): void => {
  const isBehind = value?.stockIsBehind === true;
  // biome-ignore lint/correctness/useExhaustiveDependencies: from each reading on, whatever else is drawn anew
  useEffect(() => {
    if (!isBehind) return;
    const soon = setTimeout(again, 5_000);
    return () => clearTimeout(soon);
  }, [isBehind, readAt?.getTime()]);
};

interface OpenWeekProps {
  readonly week: Week;
  readonly calendar: Calendar;
  readonly chosen: string | undefined;
}

const OpenWeek = ({ week, calendar, chosen }: OpenWeekProps) => {
  const currency = useSettings().value?.data.currency ?? '';
  const selected = useSelected(week, chosen);
  const { open, side, backToBoard } = useOpen(selected);
  useEffect(() => () => void sendNow(), []);
  useKeys(useMay()('approve flight', 'decide') ? actKeys : {});
  const takenOff = takenOffBooked(week);
  const flight = week.flights.find(({ id }) => id === selected && !takenOff.has(id));
  const booked = week.booked.find(({ id }) => id === selected);
  return (
    <div className="work-and-side on-landscape week">
      <div className="work">
        <div className="week-figures">
          <CostLine cost={week.cost} flights={week.flightsCosted} plan={week.plan} currency={currency} />
          <TallyLine week={week} calendar={calendar} currency={currency} />
          <OtherDays week={week} />
        </div>
        {!week.flights.some(({ state }) => state === 'offered') && (
          <EmptyLine>{emptyWords(week, calendar)}</EmptyLine>
        )}
        <WeekBoard week={week} calendar={calendar} selected={selected} onOpen={open} />
        <Legend week={week} calendar={calendar} />
        <PrintFoot calendar={calendar} />
      </div>
      <aside ref={side} className="side week-card" aria-label="Decision card" onKeyDown={backToBoard}>
        <JustDoneLine week={week} calendar={calendar} onOpen={open} />
        {flight !== undefined ? (
          <DecisionCard key={flight.id} flight={flight} week={week} calendar={calendar} />
        ) : booked !== undefined ? (
          <BookedCard booked={booked} takenOff={takenOff.get(booked.id)} calendar={calendar} />
        ) : (
          <EmptyLine>
            {selected === undefined
              ? 'No flight to decide on. The arrows move on the board, Enter opens a card.'
              : `${selected} is not among the flights of these days.`}
          </EmptyLine>
        )}
      </aside>
    </div>
  );
};

/** The chosen flight stands in the address. By key the focus goes into the card, and Esc brings it back. */
const useOpen = (selected: string | undefined) => {
  const [, navigate] = useLocation();
  const side = useRef<HTMLElement>(null);
  const wantsCard = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: when another flight's card is there
  useEffect(() => {
    if (wantsCard.current) focusCard(side.current);
    wantsCard.current = false;
  }, [selected]);
  const open = useCallback(
    (id: string, byKey: boolean) => {
      wantsCard.current = byKey && id !== selected;
      if (byKey && id === selected) focusCard(side.current);
      navigate(`/week/${encodeURIComponent(id)}${window.location.search}`, { replace: true });
    },
    [navigate, selected],
  );
  const backToBoard = (event: React.KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented || selected === undefined) return;
    focusBox(selected);
  };
  return { open, side, backToBoard };
};

const focusCard = (card: HTMLElement | null): void => card?.querySelector<HTMLElement>('#week-card')?.focus();

const OtherDays = ({ week }: { readonly week: Week }) => {
  const [, setSearch] = useSearchParams();
  const first = week.days[0]!.date;
  const count = week.days.length;
  const show = (from: string, days: number) => setSearch({ from, days: String(days) }, { replace: true });
  return (
    <span className="other-days">
      <Button small press="[" onPress={() => show(addDays(first, -7), count)}>
        Earlier
      </Button>
      <Button small press="]" onPress={() => show(addDays(first, 7), count)}>
        Later
      </Button>
      <Button small press="w" onPress={() => show(first, count > 7 ? 7 : 14)}>
        {count > 7 ? '7 days' : '14 days'}
      </Button>
    </span>
  );
};

const PrintFoot = ({ calendar }: { readonly calendar: Calendar }) => {
  const { fullName } = useMe();
  return (
    <div className="week-foot">
      <p>
        Printed {calendar.date(calendar.now)}, {calendar.time(calendar.now)}, {fullName}. A later print
        replaces it: throw this one away then. Planning figures: the commander's approved data decide.
      </p>
      <p className="by-hand">Changes by hand, time, name</p>
    </div>
  );
};
