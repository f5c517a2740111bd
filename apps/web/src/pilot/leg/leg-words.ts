import type { MyDay, PhoneFlight, PhonePlace } from '@drumline/contract';
import { knownSurface, type SurfaceReport, type SurfaceState } from '@drumline/network';
import { pounds, print } from '@drumline/units';
import type { ReportedDrum } from '../reports/own-reports.js';
import { type BalanceWords, balanceOf } from './balance-words.js';
import { type GoBackWords, goBackWords } from './go-back-words.js';

/** The essentials of one leg, in the order in which they decide. */
export interface LegWords {
  readonly drums: readonly string[];
  readonly binds: { readonly main: string; readonly rest: string };
  readonly leave: { readonly over: boolean; readonly main: string; readonly rest: readonly string[] } | null;
  readonly goBack: GoBackWords;
  readonly balance: BalanceWords;
  readonly fuel: string;
  /** Everything else that was decided the evening before. */
  readonly lines: readonly string[];
}

/** Drums that are aboard on a leg: of the sheet as it flies on, and what was taken aboard on the way and rides home. */
export const drumsOnLeg = (
  { sheet, route }: PhoneFlight,
  index: number,
  reported: readonly ReportedDrum[],
): { readonly onSheet: readonly string[]; readonly besides: readonly string[] } => {
  const named = new Set(sheet?.drums.map(({ number }) => number));
  const isHome = index > 0 && index === route.length - 2;
  return {
    onSheet: sheet?.drums.filter(({ offAfterLeg }) => index <= offAfterLeg).map(({ number }) => number) ?? [],
    besides: isHome
      ? reported.flatMap(({ drum, kind }) => (kind === 'brought home' && !named.has(drum) ? [drum] : []))
      : [],
  };
};

/** Null: there is no sheet, so there is nothing to say of weights. `softCounts`: the surface is soft, or unknown. */
export const legWords = (flight: PhoneFlight, index: number, softCounts = false): LegWords | null => {
  const leg = flight.sheet?.legs[index];
  if (flight.sheet === null || leg === undefined) return null;
  return {
    drums: drumsOnLeg(flight, index, []).onSheet,
    binds: bindsOf(leg, softCounts),
    leave: leaveOf(leg, softCounts, {
      loaded: 'loaded',
      weights: (arrivalLb) => weightsThere(flight, leg.to, arrivalLb),
    }),
    goBack: goBackWords(leg, flight.sheet.drums.filter(({ offAfterLeg }) => index < offAfterLeg).length),
    balance: balanceOf(leg),
    fuel: fuelOf(flight, index),
    lines: [...leg.goBack.lines, ...(leg.goBack.notToUse ? [leg.goBack.notToUse] : [])],
  };
};

export type Leg = NonNullable<PhoneFlight['sheet']>['legs'][number];

/** The soft landing is told where it would be the nearer, or where the type may not land; where soft counts, it binds. */
const bindsOf = ({ binds, rows, to }: Leg, softCounts: boolean): LegWords['binds'] => {
  const [main, ...rest] = binds.replace(/^Nearest limit: /, '').split(', ');
  const bindingLb = Math.min(
    ...rows.flatMap(({ kind, limit }) => (kind === 'sum' && limit ? limit.spareLb : [])),
  );
  const soft = rows.find(({ label }) => label.endsWith(', soft') && label.startsWith('land '));
  const spare = rest.join(', ').replace(/\.$/, '');
  const isNearer = soft !== undefined && (soft.limit === null || soft.limit.spareLb < bindingLb);
  if (!isNearer) return { main: main ?? binds, rest: spare };
  const landing =
    soft.limit === null ? (soft.forbiddenBy ?? 'no limit given') : spareWords(soft.limit.spareLb);
  if (softCounts) return { main: `${to} landing, soft`, rest: `${landing} · ${main}: ${spare}` };
  return { main: main ?? binds, rest: `${spare} · landing soft: ${landing}` };
};

const spareWords = (spareLb: number): string =>
  spareLb < 0 ? `${print(pounds(-spareLb), 'lb')} over` : `${print(pounds(spareLb), 'lb')} spare`;

interface Leaving {
  readonly loaded: 'loaded' | 'empty';
  /** By what one may reckon, from the weight on arrival. */
  readonly weights: (arrivalLb: number) => { readonly by: string; readonly lb: number }[];
}

/** On the surface that counts; of two weights the heavier decides and is told first. */
export const leaveOf = (
  { goBack }: Leg,
  softCounts: boolean,
  { loaded, weights: weightsBy }: Leaving,
): LegWords['leave'] => {
  const { leaveAgain: planned, leaveAgainSoft } = goBack;
  if (planned === null) return null;
  const counts = softCounts ? (leaveAgainSoft ?? planned) : planned;
  if (counts.limitLb === null)
    return { over: true, main: `Stay: no take-off there, ${counts.surface}`, rest: [counts.words] };
  const limitLb = counts.limitLb;
  const weights = weightsBy(counts.arrivalLb).sort((one, other) => other.lb - one.lb);
  const [heavier, lighter] = weights.map((weight) => ({ ...weight, over: weight.lb - limitLb }));
  const { over } = heavier!;
  const main =
    over > 0
      ? `Stay: ${print(pounds(over), 'lb')} too heavy`
      : `May leave ${loaded}: ${print(pounds(-over), 'lb')} spare`;
  return {
    over: over > 0,
    main: `${main}, ${counts.surface}`,
    rest: [
      `${heavier!.by}: ${print(pounds(heavier!.lb), 'lb')}, take-off limit ${print(limitLb, 'lb')} ${counts.surface}`,
      // The other figure only where it says something else.
      ...(lighter !== undefined && lighter.over <= 0 && over > 0
        ? [`${lighter.by}: ${print(pounds(lighter.lb), 'lb')}, ${spareWords(-lighter.over)}`]
        : []),
      ...(counts === planned || planned.limitLb === null
        ? []
        : [`If ${planned.surface}: ${spareWords(planned.limitLb - heavier!.lb)}`]),
    ],
  };
};

/** By the plan's drums and by the named ones. */
const weightsThere = ({ stops, request }: PhoneFlight, place: string, arrivalLb: number) => {
  const planned = stops.find((stop) => stop.place === place)?.planned ?? null;
  const kg = request?.load.request.drum.grossKg;
  const by = kg === undefined ? 'As planned' : `At ${print(kg, 'kg')} a drum`;
  return [...(planned === null ? [] : [{ by, lb: planned.arrivalLb }]), { by: 'As weighed', lb: arrivalLb }];
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

/** Whether the surface at the end of a leg is to be taken as soft now: it is, or nobody knows. */
export const isSoftNow = (...of: Parameters<typeof surfaceAt>): boolean => {
  const { state } = surfaceAt(...of);
  return state === null || state === 'soft';
};
