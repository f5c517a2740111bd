import type { IsoDate } from '@drumline/units';
import { across, each, type Finding, type Rule } from './rule.js';

const millisecondsPerDay = 86_400_000;

/** The last day looked ahead. */
const lastDay = (firstDay: IsoDate, days: number): IsoDate =>
  new Date(Date.parse(firstDay) + (days - 1) * millisecondsPerDay).toISOString().slice(0, 10);

const inHorizon = (
  list: 'helicopterTasks' | 'slings' | 'plannedUplifts' | 'bookedFlights' | 'flights' | 'handPlan',
): Rule =>
  each(list, ['firstDay', 'days'], function* ({ date }, { firstDay, days }) {
    const last = lastDay(firstDay, days);
    if (date < firstDay || date > last)
      yield [
        ['date'],
        `${date} is outside the days looked ahead, ${firstDay} to ${last}.`,
        'Correct the day, or take the line out.',
      ];
  });

export const ordered = (
  earlier: string,
  later: string,
  path: readonly PropertyKey[],
  words: string,
): Finding[] =>
  later < earlier ? [[path, `${later} is before ${earlier}, ${words}.`, 'Correct one of the two.']] : [];

/** Days and times come in an order that can be, and inside the days looked ahead. */
export const dateRules: readonly Rule[] = [
  inHorizon('helicopterTasks'),
  inHorizon('slings'),
  inHorizon('plannedUplifts'),
  inHorizon('bookedFlights'),
  inHorizon('flights'),
  inHorizon('handPlan'),
  each('batches', [], (batch) =>
    ordered(batch.filledOn, batch.retestDue, ['retestDue'], 'the day of filling'),
  ),
  each('notices', [], (notice) => ordered(notice.from, notice.until, ['until'], 'the start of the notice')),
  each('aircraft', [], (aircraft) =>
    aircraft.absences.flatMap(({ from, until }, index) =>
      ordered(from, until, ['absences', index, 'until'], 'the first day of the absence'),
    ),
  ),
  each('surfaceReports', [], (report) =>
    report.untilDate === undefined
      ? []
      : ordered(report.at.slice(0, 10), report.untilDate, ['untilDate'], 'the day of the report'),
  ),
  across(['policy'], ({ policy: { flyingDay } }) =>
    ordered(
      flyingDay.firstDeparture,
      flyingDay.lastLanding,
      ['policy', 'flyingDay', 'lastLanding'],
      'the first departure',
    ),
  ),
  across(['days', 'offeredDays'], function* ({ days, offeredDays }) {
    if (offeredDays > days)
      yield [
        ['offeredDays'],
        `${offeredDays} days are offered of ${days} looked ahead.`,
        `Give at most ${days}.`,
      ];
  }),
  across(['asOf', 'firstDay', 'days'], function* ({ asOf, firstDay, days }) {
    const last = lastDay(firstDay, days);
    if (asOf.slice(0, 10) > last)
      yield [['asOf'], `${asOf} is after the last day looked ahead, ${last}.`, 'Correct asOf or firstDay.'];
  }),
  across(['timeZone'], function* ({ timeZone }) {
    if (!isTimeZone(timeZone))
      yield [
        ['timeZone'],
        `${timeZone} is not a time zone of the IANA list.`,
        'Write one like Etc/GMT or Europe/Oslo.',
      ];
  }),
];

export const isTimeZone = (name: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
};
