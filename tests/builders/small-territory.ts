import { parseScenario } from '@drumline/contract';
import type { HelicopterTask, Scenario } from '@drumline/planning';
import { addDays, hours, litres } from '@drumline/units';
import * as fc from 'fast-check';

/** What is drawn for one small territory: a cut of a larger one, with a programme, weather and people of its own. */
export interface Cut {
  readonly strips: readonly string[];
  readonly tails: readonly string[];
  readonly pilots: readonly string[];
  readonly days: number;
  readonly tasks: readonly { readonly strip: number; readonly day: number; readonly litres: number }[];
  readonly soft: readonly { readonly strip: number; readonly day: number }[];
  readonly sick: readonly { readonly pilot: number; readonly day: number }[];
  /** Share of the drums that were never there, in hundredths. */
  readonly missingDrums: number;
  readonly lastLanding: string;
}

/** Small territories cut out of `whole`: one to four strips, one to three aeroplanes, two to six days. */
export function cuts(whole: Scenario, most = { strips: 4, tails: 3, days: 6 }): fc.Arbitrary<Cut> {
  const codes = whole.places.filter(({ kind }) => kind === 'strip').map(({ code }) => code);
  const index = fc.nat({ max: 9 });
  return fc.record({
    strips: fc.subarray(codes, { minLength: 1, maxLength: most.strips }),
    tails: fc.subarray(
      whole.aircraft.map(({ tail }) => tail),
      { minLength: 1, maxLength: most.tails },
    ),
    pilots: fc.subarray(
      whole.pilots.map(({ id }) => id),
      { minLength: 1 },
    ),
    days: fc.integer({ min: 2, max: most.days }),
    tasks: fc.array(fc.record({ strip: index, day: index, litres: fc.integer({ min: 5, max: 900 }) }), {
      maxLength: 8,
    }),
    soft: fc.array(fc.record({ strip: index, day: index }), { maxLength: 3 }),
    sick: fc.array(fc.record({ pilot: index, day: index }), { maxLength: 3 }),
    missingDrums: fc.integer({ min: 0, max: 60 }),
    lastLanding: fc.constantFrom('12:00', '15:00', '20:00'),
  });
}

/** The territory of a cut; throws with the faults where it is no scenario. */
export function smallTerritory(whole: Scenario, cut: Cut): Scenario {
  const bases = whole.places.filter(({ kind }) => kind === 'base').map(({ code }) => code);
  const places = new Set([...bases, ...cut.strips]);
  const at = (list: readonly string[], i: number) => list[i % list.length]!;
  const date = (day: number) => addDays(whole.firstDay, day % cut.days);
  const helicopter = whole.helicopters[0]!.id;
  const programme = whole.programmes[0]!.code;
  const asTask = (task: Cut['tasks'][number]): HelicopterTask => ({
    date: date(task.day),
    helicopter,
    programme,
    place: at(cut.strips, task.strip),
    hours: hours(1),
    litres: litres(task.litres),
  });
  const scenario: Scenario = {
    ...whole,
    days: cut.days,
    offeredDays: Math.min(whole.offeredDays, cut.days),
    noFlyingDays: [],
    places: whole.places.filter(({ code }) => places.has(code)),
    distances: whole.distances.filter(({ between }) => between.every((code) => places.has(code))),
    winds: [],
    weather: whole.weather.filter(({ place }) => places.has(place)),
    notices: [],
    stripLimits: whole.stripLimits.filter(({ place }) => places.has(place)),
    aircraft: whole.aircraft.filter(({ tail }) => cut.tails.includes(tail)),
    pilots: whole.pilots
      .filter(({ id }) => cut.pilots.includes(id))
      .map((pilot) => ({
        ...pilot,
        lastLandings: pilot.lastLandings.filter(({ place }) => places.has(place)),
        daysOff: cut.sick
          .filter((sick) => at(cut.pilots, sick.pilot) === pilot.id)
          .map(({ day }) => date(day)),
      })),
    drums: whole.drums.filter(({ place }, i) => places.has(place) && (i * 37) % 100 >= cut.missingDrums),
    caches: whole.caches.filter(({ place }) => places.has(place)),
    counts: [],
    helicopterTasks: cut.tasks.map(asTask),
    slings: [],
    plannedUplifts: [],
    bookedFlights: whole.bookedFlights.filter(
      (flight) =>
        cut.tails.includes(flight.aircraft) &&
        flight.date <= addDays(whole.firstDay, cut.days - 1) &&
        flight.legs.every(({ from, to }) => places.has(from) && places.has(to)),
    ),
    surfaceReports: cut.soft.map(({ strip, day }) => ({
      place: at(cut.strips, strip),
      state: 'soft',
      at: whole.asOf,
      by: 'strip helper',
      untilDate: date(day),
    })),
    flights: [],
    handPlan: [],
    policy: { ...whole.policy, flyingDay: { ...whole.policy.flyingDay, lastLanding: cut.lastLanding } },
  };
  const parsed = parseScenario(JSON.parse(JSON.stringify(scenario)));
  if (!parsed.ok) throw new Error(parsed.faults.map(({ path, problem }) => `${path}: ${problem}`).join('\n'));
  return parsed.scenario;
}
