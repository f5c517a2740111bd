import { closures, expectedSurface, type Place, type SurfaceState } from '@drumline/network';
import { daysFrom, epochMinutes, type IsoDate, instantOf } from '@drumline/units';
import type { Scenario } from '../scenario.js';
import { listWords, momentWords, runWords, stillToComeWords } from '../wording.js';

/** Strips that are soft, closed or other than usual, by days; the notices; reports that are not known yet. */
export function stripRemarks(scenario: Scenario): readonly string[] {
  const { surfaceReports, asOf, noFlyingDays, timeZone } = scenario;
  const notKnown = surfaceReports.filter(({ at }) => epochMinutes(at) > epochMinutes(asOf));
  return [
    ...surfaceRemarks(scenario),
    ...(noFlyingDays.length > 0 ? [`Nothing flies on ${runWords(noFlyingDays)}.`] : []),
    ...noticeRemarks(scenario),
    ...notKnown.map(
      ({ place, state, at }) => `${place}: a report "${state}" is ${stillToComeWords(at, asOf, timeZone)}.`,
    ),
  ];
}

function surfaceRemarks(scenario: Scenario): readonly string[] {
  const hours = { timeZone: scenario.timeZone, ...scenario.policy.flyingDay };
  const surface = expectedSurface(scenario.surfaceReports, scenario.asOf, hours);
  return scenario.places.flatMap((place) => {
    const days = daysFrom(scenario.firstDay, scenario.days);
    const told = days
      .map((date) => ({ date, state: surface(place, date) }))
      .filter(({ state }) => state !== place.surface.expected || state === 'soft' || state === 'closed');
    if (told.length === 0) return [];
    const rest = told.length < days.length ? `; else ${place.surface.expected}` : '';
    return [`${place.code} is planned ${spells(told)}${rest}.`];
  });
}

/** "soft on Tue 15 Jun and Wed 16 Jun" */
function spells(days: readonly { readonly date: IsoDate; readonly state: SurfaceState }[]): string {
  const states = [...new Set(days.map(({ state }) => state))];
  return listWords(
    states.map(
      (state) => `${state} on ${runWords(days.filter((day) => day.state === state).map(({ date }) => date))}`,
    ),
  );
}

function noticeRemarks(scenario: Scenario): readonly string[] {
  const { notices, firstDay, days, timeZone } = scenario;
  const start = epochMinutes(instantOf(firstDay, '00:00', timeZone));
  const end = start + days * 1440;
  return notices
    .filter((notice) => epochMinutes(notice.from) < end && epochMinutes(notice.until) > start)
    .map((notice) => {
      const { id, source, text, from, until, circle } = notice;
      const time = `${momentWords(from, timeZone)} to ${momentWords(until, timeZone)} local time`;
      const closed = scenario.places.flatMap((place) => closedWords(scenario, notice, place));
      const across = circle ? ['closes every leg across its circle'] : [];
      const closes = [...closed, ...across];
      const none = closed.length > 0 ? '' : closes.length > 0 ? ', but no strip' : 'closes no strip';
      return `Notice ${id} (${source}), ${time}: ${sentence(text)} It ${listWords(closes)}${none}.`;
    });
}

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text || 'no text'}.`);

/** "closes JIBN on Thu 14 Oct and Fri 15 Oct" */
function closedWords(
  { policy, timeZone, firstDay, days }: Scenario,
  notice: Scenario['notices'][number],
  place: Place,
): readonly string[] {
  const { ofPlace } = closures([notice], { timeZone, ...policy.flyingDay });
  const dates = daysFrom(firstDay, days).filter((date) => ofPlace(place, date) !== null);
  return dates.length > 0 ? [`closes ${place.code} on ${runWords(dates)}`] : [];
}
