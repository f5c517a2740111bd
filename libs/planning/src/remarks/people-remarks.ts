import { daysFrom } from '@drumline/units';
import type { Scenario } from '../scenario.js';
import { listWords, runWords } from '../wording.js';

/** Pilots off and aircraft away on the days that are offered. */
export function peopleRemarks({ pilots, aircraft, firstDay, offeredDays }: Scenario): readonly string[] {
  const days = daysFrom(firstDay, offeredDays);
  const off = pilots.flatMap(({ id, daysOff }) => {
    const dates = days.filter((date) => daysOff.includes(date));
    return dates.length > 0 ? [`${id} on ${runWords(dates)}`] : [];
  });
  const away = aircraft.flatMap(({ tail, absences }) =>
    absences.flatMap(({ from, until, reason }) => {
      const dates = days.filter((date) => from <= date && date <= until);
      return dates.length > 0 ? [`${tail} on ${runWords(dates)} (${reason})`] : [];
    }),
  );
  return [
    ...(off.length > 0 ? [`Pilots off in the offered days: ${listWords(off)}.`] : []),
    ...(away.length > 0 ? [`Aircraft away in the offered days: ${listWords(away)}.`] : []),
  ];
}
