import { type Litres, litres } from '@drumline/units';

/** Mean litres a day over the given days, days without a draw included; 0 for no days. */
export function averageDraw(drawnByDay: readonly Litres[]): Litres {
  const total = drawnByDay.reduce((sum, drawn) => sum + drawn, 0);
  return litres(drawnByDay.length === 0 ? 0 : total / drawnByDay.length);
}

/** Days that the usable litres last at a mean draw; 0 when there is nothing left, null when nothing is drawn. */
export function daysOfCover(usable: Litres, meanDrawPerDay: Litres): number | null {
  return meanDrawPerDay > 0 ? Math.max(0, usable) / meanDrawPerDay : null;
}
