import { daysBetween, type IsoDate, litres } from '@drumline/units';
import type { Draw } from './drum.js';
import type { DrumMove } from './project-caches.js';

/** A sling may be flown so many days before or after its day and is still the planned one. */
export const slingDaysApart = 7;

/**
 * Planned draws less what has been drawn for them (conventions, "Left to do"): a draw is taken off those of its own
 * day, place and purpose (`for`), in their order. What was drawn beyond them is taken off nothing else, and a planned
 * draw that is done stays, with 0 L. Litres.
 */
export function drawsLeft<Planned extends Draw>(
  planned: readonly Planned[],
  drawn: readonly Draw[],
): readonly Planned[] {
  const left = amountsLeft(planned, drawn, {
    subject: ({ place, for: purpose }) => JSON.stringify([place, purpose]),
    amount: (draw) => draw.litres,
    daysApart: 0,
  });
  return planned.map((draw, index) =>
    draw.litres === left[index] ? draw : { ...draw, litres: litres(left[index]!) },
  );
}

/**
 * Planned slings less the drums that have been set down for them, by the same rule: drums slung on a day are those of
 * the planned sling between the same two places whose day is nearest, at most `slingDaysApart` away, whichever
 * helicopter flew. What was slung beyond it is taken off no other day's, and a sling that is done stays, with 0 drums.
 */
export function slingsLeft<Planned extends DrumMove>(
  planned: readonly Planned[],
  slung: readonly DrumMove[],
): readonly Planned[] {
  const left = amountsLeft<DrumMove>(planned, slung, {
    subject: ({ from, to }) => JSON.stringify([from, to]),
    amount: ({ drums }) => drums,
    daysApart: slingDaysApart,
  });
  return planned.map((sling, index) =>
    sling.drums === left[index] ? sling : { ...sling, drums: left[index]! },
  );
}

interface Dated {
  readonly date: IsoDate;
}

/** What a planned line and what was done for it have in common. */
interface Rule<Line> {
  readonly subject: (line: Line) => string;
  readonly amount: (line: Line) => number;
  /** From the day of the plan to the day on which it was done, at most. */
  readonly daysApart: number;
}

/** By planned line, in their order. */
function amountsLeft<Line extends Dated>(
  planned: readonly Line[],
  done: readonly Line[],
  rule: Rule<Line>,
): readonly number[] {
  const left = planned.map(rule.amount);
  const isOpen = (subject: string) => (line: Line, index: number) =>
    left[index]! > 0 && rule.subject(line) === subject;
  const isOfItsDay = ({ subject, date }: DayTotal) =>
    planned.some((line) => line.date === date && rule.subject(line) === subject);
  for (const { subject, date, amount } of inTurn(totalsByDay(done, rule), isOfItsDay)) {
    const day = nearestDay(planned.filter(isOpen(subject)), date, rule.daysApart);
    let more = amount;
    planned.forEach((line, index) => {
      if (line.date !== day || rule.subject(line) !== subject) return;
      const taken = Math.min(left[index]!, more);
      left[index] = left[index]! - taken;
      more -= taken;
    });
  }
  return left;
}

interface DayTotal extends Dated {
  readonly subject: string;
  readonly amount: number;
}

function totalsByDay<Line extends Dated>(lines: readonly Line[], rule: Rule<Line>): readonly DayTotal[] {
  const totals = new Map<string, DayTotal>();
  for (const line of lines) {
    const [subject, date] = [rule.subject(line), line.date];
    const key = `${date} ${subject}`;
    totals.set(key, { subject, date, amount: (totals.get(key)?.amount ?? 0) + rule.amount(line) });
  }
  return [...totals.values()];
}

/** What was done on a day of its own plan is of that day, before anything done on another day is given to it. */
function inTurn(totals: readonly DayTotal[], isOfItsDay: (total: DayTotal) => boolean): readonly DayTotal[] {
  const rank = (total: DayTotal) => (isOfItsDay(total) ? 0 : 1);
  return totals.toSorted((one, other) => rank(one) - rank(other) || daysBetween(other.date, one.date));
}

function nearestDay(lines: readonly Dated[], date: IsoDate, daysApart: number): IsoDate | undefined {
  const away = (day: IsoDate) => Math.abs(daysBetween(date, day));
  const [nearest] = lines
    .map((line) => line.date)
    .filter((day) => away(day) <= daysApart)
    .toSorted((one, other) => away(one) - away(other) || daysBetween(other, one));
  return nearest;
}
