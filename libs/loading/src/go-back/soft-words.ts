import { countWords, listWords } from '../wording.js';

/** Drums that are for one stop. */
export interface ForStop {
  readonly place: string;
  readonly drums: number;
}

/**
 * How many drums go, of all that are aboard: "4"; where the flight has other stops, which they are for: "4 (all for GAN)",
 * "4 (1 for LOR, 3 for GAN)". `stops`: every stop of the flight with what goes there, 0 where nothing does.
 */
export function drumsThatGo(stops: readonly ForStop[]): string {
  const total = stops.reduce((sum, { drums }) => sum + drums, 0);
  const served = stops.filter(({ drums }) => drums > 0);
  if (stops.length < 2 || total === 0) return String(total);
  const [only, ...more] = served;
  if (more.length === 0) return `${total} (${total === 1 ? '' : 'all '}for ${only!.place})`;
  return `${total} (${served.map(({ place, drums }) => `${drums} for ${place}`).join(', ')})`;
}

/**
 * "do not go" only where nothing would go; drums for other stops may go by a version that leaves the place out, and nobody
 * has weighed that here. `others`: the stops beside the place.
 */
export function doNotGo(place: string, others: readonly ForStop[]): string {
  const served = others.filter(({ drums }) => drums > 0);
  if (served.length === 0) return 'do not go';
  const what = listWords(served.map((stop) => `${countWords(stop.drums, 'drum')} for ${stop.place}`));
  const isOne = served.reduce((sum, { drums }) => sum + drums, 0) === 1;
  return `do not go by this version; ${what} ${isOne ? 'needs' : 'need'} another, without ${place}`;
}
