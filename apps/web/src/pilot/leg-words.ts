import type { MyDay, PhoneFlight, PhonePlace } from '@drumline/contract';
import { knownSurface, type SurfaceReport, type SurfaceState } from '@drumline/network';
import { pounds, print } from '@drumline/units';

/** The essentials of one leg, in the order in which they decide. */
export interface LegWords {
  readonly drums: readonly string[];
  readonly binds: { readonly main: string; readonly rest: string };
  readonly leave: { readonly over: boolean; readonly main: string; readonly rest: readonly string[] } | null;
  readonly goBack: { readonly main: string; readonly rest: readonly string[] };
  readonly fuel: string;
  /** Everything else that was decided the evening before. */
  readonly lines: readonly string[];
}

/** Null: there is no sheet, so there is nothing to say of weights. */
export const legWords = (flight: PhoneFlight, index: number): LegWords | null => {
  const leg = flight.sheet?.legs[index];
  if (flight.sheet === null || leg === undefined) return null;
  return {
    drums: flight.sheet.drums.filter(({ offAfterLeg }) => index <= offAfterLeg).map(({ number }) => number),
    binds: bindsOf(leg),
    leave: leaveOf(flight, leg),
    goBack: goBackOf(leg),
    fuel: fuelOf(flight, index),
    lines: leg.goBack.lines,
  };
};

type Leg = NonNullable<PhoneFlight['sheet']>['legs'][number];

const bindsOf = ({ binds, rows }: Leg): LegWords['binds'] => {
  const [main, ...rest] = binds.replace(/^Nearest limit: /, '').split(', ');
  const soft = rows.find(({ label }) => label.endsWith(', soft') && label.startsWith('land '));
  const softWords =
    soft === undefined
      ? []
      : soft.limit === null
        ? [`soft: ${soft.forbiddenBy ?? 'no limit given'}`]
        : [`${spareWords(soft.limit.spareLb)} soft`];
  return { main: main ?? binds, rest: [rest.join(', ').replace(/\.$/, ''), ...softWords].join(' · ') };
};

const spareWords = (spareLb: number): string =>
  spareLb < 0 ? `${print(pounds(-spareLb), 'lb')} over` : `${print(pounds(spareLb), 'lb')} spare`;

/** By the plan's drums and by the named ones; the heavier decides. */
const leaveOf = ({ stops }: PhoneFlight, { to, goBack: { leaveAgain } }: Leg): LegWords['leave'] => {
  if (leaveAgain === null) return null;
  const { limitLb, arrivalLb, surface } = leaveAgain;
  if (limitLb === null) return { over: true, main: 'Stay: no take-off there', rest: [leaveAgain.words] };
  const planned = stops.find(({ place }) => place === to)?.planned ?? null;
  const weights = [
    ...(planned === null ? [] : [{ by: 'As planned', lb: planned.arrivalLb, over: planned.overLb }]),
    { by: 'As weighed', lb: arrivalLb, over: leaveAgain.overLb ?? 0 },
  ].sort((one, other) => other.over - one.over);
  const [heavier, lighter] = weights;
  const over = heavier!.over;
  return {
    over: over > 0,
    main:
      over > 0
        ? `Stay: ${print(pounds(over), 'lb')} too heavy`
        : `May leave loaded: ${print(pounds(-over), 'lb')} spare`,
    rest: [
      `${heavier!.by}: ${print(pounds(heavier!.lb), 'lb')}, take-off limit ${print(limitLb, 'lb')} ${surface}`,
      ...(lighter === undefined || lighter.over === over
        ? []
        : [`${lighter.by}: ${print(pounds(lighter.lb), 'lb')}, ${spareWords(-lighter.over)}`]),
    ],
  };
};

const goBackOf = ({ to, goBack }: Leg): LegWords['goBack'] => {
  const { tailwindLimitKt, committalPoint, ifSoft } = goBack;
  const noSoft = ifSoft !== null && ifSoft.take === null;
  return {
    main:
      tailwindLimitKt === null
        ? 'No tailwind limit given'
        : `Tailwind more than ${print(tailwindLimitKt, 'kt')}`,
    rest: [
      noSoft
        ? 'Soft or closed'
        : ifSoft !== null && ifSoft.leave.length > 0
          ? `Closed, or soft with more than ${ifSoft.take ?? 0} drums`
          : 'Closed',
      committalPoint === null ? `No committal point at ${to}` : `Decide by ${committalPoint}`,
    ],
  };
};

/** What is in the tanks on landing, and what of it the next leg burns. */
const fuelOf = ({ sheet, route }: PhoneFlight, index: number): string => {
  const legs = sheet!.legs;
  const rows = legs[index]!.rows;
  const lb = (beginning: string) => rows.find(({ label }) => label.startsWith(beginning))?.lb ?? 0;
  const start = lb('fuel at start-up') + lb('fuel left') + lb('uplift at');
  const onLanding = start - lb('taxi') - lb('fuel to');
  const next = legs[index + 1]?.rows.find(({ label }) => label.startsWith('fuel to'));
  const home = next === undefined ? '' : ` · ${print(next.lb, 'lb')} to ${route[index + 2]}`;
  return `${print(pounds(onLanding), 'lb')} at ${route[index + 1]}${home}`;
};

/** "1,250 ft earth, 11 % slope, one-way. class 4. No helper." */
export const stripWords = ({ runway, helper, remarks, landingCapacityDrumsPerDay }: PhonePlace): string => {
  const parts = [
    ...(runway === null
      ? []
      : [
          `${print(runway.lengthFt, 'ft')}, ${runway.material}, ${runway.slopePercent} % slope${runway.oneWay ? ', one-way' : ''}`,
        ]),
    ...(helper === undefined ? [] : [`Helper: ${helper}`]),
    ...(landingCapacityDrumsPerDay === null ? [] : [`${landingCapacityDrumsPerDay} drums a day`]),
    ...(remarks === undefined ? [] : [remarks]),
  ];
  return parts.length === 0 ? '' : `${parts.join('. ')}.`;
};

export interface SurfaceWords {
  readonly state: SurfaceState | null;
  /** The newest, fresh or not; null: nobody has ever said. */
  readonly report: SurfaceReport | null;
}

/** The surface as it counts now: without a fresh report it is unknown, and soft counts. */
export const surfaceAt = (
  day: MyDay,
  reports: readonly SurfaceReport[],
  { code, now }: { readonly code: string; readonly now: Date },
): SurfaceWords => {
  const place = day.places.find((each) => each.code === code);
  const report = reports.find((each) => each.place === code) ?? null;
  if (place === undefined) return { state: null, report };
  return { state: knownSurface(reports, `${now.toISOString().slice(0, 19)}Z`, day.timeZone)(place), report };
};
