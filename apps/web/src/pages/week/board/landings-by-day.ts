import type { Week } from '../week-read.js';

type Landing = Week['landings'][number];

/** The landings of a day that there is room to list, and how many more there are. */
export interface DayLandings {
  readonly listed: readonly Landing[];
  readonly more: number;
}

/** By day. Where there are too many, those nearest to their limit are listed. */
export const landingsByDay = (
  landings: readonly Landing[],
  room: number,
): ReadonlyMap<string, DayLandings> => {
  const byDay = new Map<string, Landing[]>();
  for (const landing of landings) {
    const day = byDay.get(landing.date);
    if (day === undefined) byDay.set(landing.date, [landing]);
    else day.push(landing);
  }
  return new Map(
    [...byDay].map(([date, all]) => {
      if (all.length <= room) return [date, { listed: all, more: 0 }];
      const fullest = [...all].sort((one, other) => fullness(other) - fullness(one));
      return [date, { listed: fullest.slice(0, room - 1), more: all.length - (room - 1) }];
    }),
  );
};

const fullness = ({ drums, limitDrums }: Landing): number => (limitDrums === null ? 0 : drums / limitDrums);
