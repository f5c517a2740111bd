import type { DayPack, PackPlace } from './day-pack.js';

/** Of what nothing has been heard for too long: surfaces, counts, people of the field. */
export const notHeardLines = ({
  places,
  silentPeople,
}: Pick<DayPack, 'places' | 'silentPeople'>): string[] => {
  const lines = [
    line(
      'Surface unknown',
      codes(places, ({ surface }) => surface === 'unknown'),
    ),
    line(
      'No count in 7 days',
      codes(places, ({ needsCount }) => needsCount),
    ),
    line('Silent for a day', silentPeople),
  ].flat();
  return lines.length === 0 ? ['Nothing is missing, nobody is silent.'] : lines;
};

const line = (what: string, of: readonly string[]): string[] =>
  of.length === 0 ? [] : [`${what}: ${of.length > mostNamed ? `${of.length} places` : of.join(', ')}.`];

/** More are a number: the cover has to stay one page, and where nearly everybody is silent the few others matter. */
const mostNamed = 4;

const codes = (places: readonly PackPlace[], is: (place: PackPlace) => boolean): readonly string[] =>
  places.filter(is).map(({ code }) => code);
