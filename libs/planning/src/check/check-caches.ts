import { daysFrom } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { dayWords, drumWords } from '../wording.js';
import { cacheLedger } from './cache-ledger.js';
import type { Survey, SurveyedFlight } from './survey.js';

/** Drums a strip can unload in a day, drums a site may hold, and the end of its permit. */
export function checkCaches(survey: Survey): readonly Fault[] {
  const ledger = cacheLedger(survey.scenario, survey.flights);
  return daysFrom(survey.scenario.firstDay, survey.scenario.days).flatMap((date, index) =>
    survey.scenario.places.flatMap(({ code }) => {
      const landing = survey.flights.filter((flown) => flown.day === index + 1 && drumsAt(flown, code) > 0);
      if (landing.length === 0 || landing.every((flown) => flown.isFact)) return [];
      const site: SiteDay = { place: code, when: `${code}, ${dayWords(date)}`, date, landing };
      return [
        ...landingCapacity(survey, site),
        ...capacity(survey, site, ledger.get(code)?.[index]?.afterLandings ?? 0),
        ...permit(survey, site),
      ];
    }),
  );
}

interface SiteDay {
  readonly place: string;
  readonly when: string;
  readonly date: string;
  readonly landing: readonly SurveyedFlight[];
}

const drumsAt = ({ flight }: SurveyedFlight, place: string): number =>
  flight.stops.reduce((sum, stop) => sum + (stop.place === place ? stop.drums : 0), 0);

const faultAt = ({ when, landing }: SiteDay, what: string, mend: string): readonly Fault[] => [
  { where: when, what, mend, flights: landing.map((flown) => flown.flight.id) },
];

function landingCapacity(survey: Survey, site: SiteDay): readonly Fault[] {
  const most = survey.place(site.place).landingCapacityDrumsPerDay;
  const drums = site.landing.reduce((sum, flown) => sum + drumsAt(flown, site.place), 0);
  if (most === null || drums <= most) return [];
  const what = `${drumWords(drums)} would be unloaded; the hands there unload ${most} a day.`;
  return faultAt(site, what, `Land ${drumWords(drums - most)} on another day.`);
}

function capacity({ scenario }: Survey, site: SiteDay, litresStanding: number): readonly Fault[] {
  const cache = scenario.caches.find((each) => each.place === site.place);
  if (!cache) return [];
  const drums = litresStanding / scenario.policy.drum.fillLitres;
  if (drums <= cache.capacityDrums + 1e-9) return [];
  const over = Math.ceil(drums - cache.capacityDrums - 1e-9);
  const what = `${drumWords(Math.ceil(drums - 1e-9))} would stand there after the landings; the site holds ${cache.capacityDrums}.`;
  return faultAt(site, what, `Land ${drumWords(over)} less, or later.`);
}

function permit({ scenario }: Survey, site: SiteDay): readonly Fault[] {
  const until = scenario.caches.find((each) => each.place === site.place)?.permitUntil;
  if (until === undefined || site.date <= until) return [];
  const what = `Drums may stand there until ${dayWords(until)} only.`;
  return faultAt(site, what, 'Land them before, or have the permit extended.');
}
