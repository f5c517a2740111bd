import type { IsoDate, Knots } from '@drumline/units';
import type { PlannedWind } from './place.js';

/** Planned wind component on a leg and day, plus is tailwind; null where none is given ("still air"). */
export type WindTable = (from: string, to: string, day: IsoDate) => Knots | null;

/** Planned winds by leg and day. A wind given for the day wins over one without dates; a wind holds one way. */
export const windTable = (winds: readonly PlannedWind[]): WindTable => {
  const known = new Map(
    winds.flatMap(({ from, to, dates = ['every day'], componentKt }) =>
      dates.map((date) => [`${from} ${to} ${date}`, componentKt] as const),
    ),
  );
  return (from, to, day) => known.get(`${from} ${to} ${day}`) ?? known.get(`${from} ${to} every day`) ?? null;
};
