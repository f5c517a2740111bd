import type { MyPlaces } from '@drumline/contract';
import {
  drawsLeft,
  litresOf,
  type Movement,
  type StockOutlook,
  slingsLeft,
  stockAfter,
} from '@drumline/stock';
import { type IsoDate, localDate } from '@drumline/units';

/** The caches as this phone knows them: base's last word and its own reports since. */
export interface PlacesNow {
  readonly places: MyPlaces;
  readonly outlook: StockOutlook;
  readonly today: IsoDate;
}

/** Base's picture with what it does not know yet, looked at now. */
export const placesNow = (places: MyPlaces, own: readonly Movement[], now: Date): PlacesNow => {
  const today = localDate(now.toISOString(), places.timeZone);
  return afterThese({ places, outlook: onDay(places.outlook, today, now), today }, own);
};

/** The same with some movements more: what a page says before Keep is what it says after. */
export const afterThese = (now: PlacesNow, movements: readonly Movement[]): PlacesNow => {
  const { places, outlook, today } = now;
  const drawn = movements.flatMap((movement) => {
    if (movement.kind !== 'drawn' || movement.medevac !== undefined) return [];
    const { happenedAt, place, millilitres, programme } = movement;
    return [
      { date: localDate(happenedAt, places.timeZone), place, litres: litresOf(millilitres), for: programme },
    ];
  });
  const slung = movements.flatMap((movement) => {
    if (movement.kind !== 'slung') return [];
    const { happenedAt, from, to } = movement;
    return [{ date: localDate(happenedAt, places.timeZone), from, to, drums: 1 }];
  });
  const picture = stockAfter(outlook.picture, movements, places.timeZone);
  const draws = drawsLeft(outlook.draws, drawn);
  const slings = slingsLeft(outlook.slings, slung);
  return { places, today, outlook: { ...outlook, picture, draws, slings } };
};

/** A picture of yesterday leads on from today. */
const onDay = (outlook: StockOutlook, today: IsoDate, now: Date): StockOutlook => {
  const ahead = outlook.dates.filter((date) => date >= today);
  return {
    ...outlook,
    picture: { ...outlook.picture, asOf: now.toISOString() },
    dates: ahead.length > 0 ? ahead : [today],
  };
};
