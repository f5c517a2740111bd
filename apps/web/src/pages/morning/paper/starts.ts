import { localDate } from '@drumline/units';
import type { Sheet, SheetFlight, Wanted } from './sheet.js';

/** What a kept line says, as it goes to base. */
interface Said {
  readonly requests: readonly { readonly body: object }[];
}

/** Beginnings of the lines that are likely next, from what stands in the plan and in the lines before: the rest is typed. */
export const startsOf = (sheet: Sheet, lines: readonly Said[]): readonly string[] => {
  const said = lines.flatMap(({ requests }) => requests.map(({ body }) => body as Wanted['body']));
  return sheet.flights
    .filter(({ date, state }) => date === sheet.day && mayHaveFlown(state, sheet))
    .toSorted((one, other) => (one.departs < other.departs ? -1 : 1))
    .flatMap((flight) => nextOf(flight, said, sheet) ?? []);
};

const underWay = ['given', 'loaded', 'away', 'home', 'turned back', 'ended elsewhere'];

/** A flight that was only approved is not spoken of while it may still be given; once its day is over it may have flown. */
const mayHaveFlown = (state: string, { day, now, timeZone }: Sheet): boolean =>
  underWay.includes(state) || (state === 'approved' && day < localDate(now, timeZone));

const nextOf = (
  flight: SheetFlight,
  said: readonly Wanted['body'][],
  { drums }: Sheet,
): string | undefined => {
  const { id, state, stops, loads } = flight;
  const has = (kinds: readonly string[], place?: string) =>
    said.some(
      (body) =>
        body.flight === id &&
        kinds.includes(String(body.kind)) &&
        (place === undefined || body.place === place),
    );
  const isDown = !['approved', 'given', 'loaded', 'away'].includes(state);
  const isThere = (place: string) =>
    loads.every(
      (load) => load.place !== place || drums.find(({ number }) => number === load.drum)?.place === place,
    );
  if (state === 'given' && !has(['load', 'take off'])) return `${id} loaded load `;
  if (!isDown && state !== 'away' && !has(['take off'])) return `${id} off at `;
  const left = stops.find(({ place }) => !isThere(place) && !has(['left at'], place));
  if (left !== undefined) return `${id} left ${left.place} all at `;
  if (!isDown && !has(['land', 'turn back', 'end elsewhere'])) return `${id} home at `;
  return has(['report']) ? undefined : `${id} reported at `;
};

/** How each kind of line is written: read beside the field, and pressed to begin with it. */
export const examples: readonly (readonly [line: string, what: string])[] = [
  [
    'F06 loaded 06:50 load 2378/2378 lb take-off 8528/8528 lb code U9XA',
    'code: the check code in the corner of the sheet. With the drums set aside, or their numbers (one that no book has: 9999 weighs 190 kg); by the sheet / by the other hand. They differ: by FW1 with S. Keeper because and the reason',
  ],
  [
    'F06 loaded 06:50 soft load 1585/1585 lb take-off 7735/7735 lb',
    'soft: by the soft figures, where no report of the surface was fresh',
  ],
  ['F06 off 07:02', 'home, turned back MER, ended ALD, refused, reported likewise'],
  ['F06 left GAN 0573 0574 0575 at 0805', 'a drum with SEAL, DAMAGED or LEAKING behind it; all: as loaded'],
  ['F06 back 0576 seal at 0936', 'brought home'],
  [
    'F06 problem cannot unload at 0820 because 0575 is jammed in R2L',
    'wrong drum, did not land, aircraft, strip not as said, other',
  ],
  [
    'drawn ESK 0447 200 L into H1 P1 at 0915',
    'L or lb; left 80 L, or left 34 cm by the stick: what is still in it. Another drum than the first in order: end with because',
  ],
  [
    'drawn ESK 0447 200 L into H1 P1 seal date clear dry gauge 640/993 lb at 0915',
    'the boxes ticked on the slip, and the gauge before / after',
  ],
  ['drawn ESK 0447 200 L into H1 P1 medevac at 0915 because patient at GAN', 'out of the medevac reserve'],
  ['rejected 0575 at 0915 because water found', 'before pumping, marked X; held likewise'],
  [
    'counted LOR 2150 L 10 sealed 1 open 3 empty 09:00',
    'air, seen; stick 34 51 cm in place of the litres: each open drum, the sealed ones full',
  ],
  ['slung ESK MAR H1 0447 0448 at 1010', 'strip, pad, helicopter, drums'],
  ['dropped ESK MAR H1 0447 at 1010', 'from under the helicopter, between strip and pad'],
  ['filled ALD 0491 J27-041 200 L tare 19.7 gross 180.1 temp 12 at 1130', 'kg, °C; by the storekeeper'],
  ['LOR soft 0652 helper until Wed', 'a surface'],
];
