import type { WeekAnswer, WeekFlight } from '@drumline/contract';
import { cents } from '@drumline/units';
import type { Page } from 'playwright-core';
import type { At, WeekDesk } from './week-desk.js';

type Office = Pick<WeekDesk, 'office'>;

interface Shown {
  readonly at?: At;
  readonly days?: number;
}

/** Week with another answer than the server's, made from it. */
export const openMade = async (
  { office }: Office,
  { at, days = 7 }: Shown,
  make: (answer: WeekAnswer) => Partial<WeekAnswer>,
): Promise<Page> => {
  const page = await office.signIn('dispatcher', at);
  await page.route('**/api/week?*', async (route) => {
    const response = await route.fetch();
    const answer = (await response.json()) as WeekAnswer;
    await route.fulfill({ response, json: { ...answer, ...make(answer) } });
  });
  await page.goto(`/week?days=${days}`);
  await page.getByRole('grid').waitFor();
  return page;
};

const bound = ({ flights }: WeekAnswer): WeekFlight => flights.find(({ binding }) => binding !== null)!;

/** The week as it stands, its first flight on every aircraft so many times in the morning and in the afternoon of a day. */
export const openCrowded = (
  desk: Office,
  { perHalf = 3, ...shown }: Shown & { readonly perHalf?: number } = {},
): Promise<Page> => {
  const times = [
    ...['07:00', '08:30', '10:00'].slice(0, perHalf),
    ...['12:30', '14:00', '15:30'].slice(0, perHalf),
  ];
  return openMade(desk, shown, (answer) => ({
    flights: answer.aircraft.flatMap(({ tail }) =>
      times.map((departs, nth) => ({ ...bound(answer), id: `${tail}-${nth}`, aircraft: tail, departs })),
    ),
  }));
};

/** Flights of the demo's reference week (product.md, section 5): day of June, aircraft, strip, drums. */
const reference: readonly (readonly [day: string, aircraft: string, place: string, drums: number])[] = [
  ['14', 'A1', 'XKNA', 4],
  ['14', 'A2', 'XLOR', 5],
  ['14', 'A2', 'XESK', 5],
  ['14', 'C1', 'XESK', 5],
  ['15', 'B1', 'XLOR', 6],
  ['15', 'A1', 'XGAN', 4],
  ['15', 'A1', 'XESK', 5],
  ['16', 'B1', 'XLOR', 6],
  ['17', 'A1', 'XISK', 4],
  ['18', 'A1', 'XFAL', 5],
  ['18', 'A1', 'XFAL', 3],
  ['19', 'A1', 'XKNA', 4],
  ['19', 'A1', 'XFAL', 5],
  ['19', 'A2', 'XISK', 4],
  ['21', 'A1', 'XISK', 4],
  ['21', 'A1', 'XKNA', 4],
];

interface OfReference extends Shown {
  readonly states?: readonly WeekFlight['state'][];
  /** What is otherwise with each of its flights. */
  readonly each?: Partial<WeekFlight>;
}

/** The week as the reference has it, one flight of an aircraft in the morning, the other in the afternoon; the sum with ideas, and the gap. */
export const openReference = (
  desk: Office,
  { states = ['offered'], each = {}, ...shown }: OfReference,
): Promise<Page> =>
  openMade(desk, shown, (answer) => {
    const home = new Map(answer.aircraft.map(({ tail, home: base }) => [tail, base]));
    const flights = reference.map(([day, aircraft, place, drums], nth) => ({
      ...bound(answer),
      id: `F${String(nth + 1).padStart(3, '0')}`,
      date: `2027-06-${day}`,
      aircraft,
      route: [home.get(aircraft)!, place, home.get(aircraft)!],
      drums,
      drumsPossible: drums,
      state: states[nth % states.length]!,
      ...each,
      departs: reference.slice(0, nth).some(([d, a]) => d === day && a === aircraft) ? '13:00' : '07:00',
    }));
    const plan = { ...answer.plan!, isAsAccepted: true, laterIdeas: 2 };
    return { flights, plan: { ...plan, moneyGap: { savedAtMost: cents(31_200), share: 0.0067 } } };
  });
