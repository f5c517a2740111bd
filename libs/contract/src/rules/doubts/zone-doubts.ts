import { epochMinutes, type IsoDate, instantOf } from '@drumline/units';
import { isTimeZone } from '../dates.js';
import { across, type Rule } from '../rule.js';

/** Zones follow borders; China's one zone is 3 h off the sun at its western end, and no other goes further (from memory). */
const mostHoursOff = 3;

/** A time zone in which the sun is far from highest at noon: daylight would be looked for at the wrong hours. */
export const zoneDoubts: readonly Rule[] = [
  across(['timeZone', 'firstDay', 'places'], function* ({ timeZone, firstDay, places }) {
    if (!isTimeZone(timeZone)) return; // a fault, which is said
    const off = places
      .map(({ code, longitudeDeg }) => ({ code, hours: hoursOff(timeZone, firstDay, longitudeDeg) }))
      .filter(({ hours }) => Math.abs(hours) > mostHoursOff);
    const worst = off.toSorted((one, other) => Math.abs(other.hours) - Math.abs(one.hours))[0];
    if (worst !== undefined)
      yield [
        ['timeZone'],
        `by ${timeZone} the sun is highest at ${worst.code} about ${clockOf(worst.hours)}, not about noon: flights would be planned in the dark.`,
        'Look at the time zone, and at the longitudes of the places, west of Greenwich with a minus.',
      ];
  }),
];

/** How much later than 12:00 by the zone's clock the sun is highest, -12 to 12. */
const hoursOff = (timeZone: string, day: IsoDate, longitudeDeg: number): number => {
  const ahead = (epochMinutes(`${day}T12:00Z`) - epochMinutes(instantOf(day, '12:00', timeZone))) / 60;
  return ((((ahead - longitudeDeg / 15 + 12) % 24) + 24) % 24) - 12;
};

const clockOf = (hoursAfterNoon: number): string =>
  `${String((Math.round(12 + hoursAfterNoon) + 24) % 24).padStart(2, '0')}:00`;
