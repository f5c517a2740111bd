import type { SurfaceState } from '@drumline/network';
import { type Kilograms, type KilogramsPerLitre, knots, type Pounds, pounds, print } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import type { NamedLoad } from '../named-load/named-load.js';
import { type BarLimit, nearerWhenSoft, type SurfacesHeard } from '../named-load/payload-bar.js';
import { boundByCount, type WeighedLeg } from '../named-load/weigh-load.js';

/** The nearest limit of a leg in words, and the drum positions in use; where nobody knows the surface, soft counts. */
export function bindsWords(
  load: NamedLoad,
  index: number,
  weighed: WeighedLeg,
  heard: SurfacesHeard = {},
): string {
  const { limits, forbiddenBy } = weighed;
  const { request, drums } = load;
  if (forbiddenBy !== null) return `${forbiddenBy}.`;
  const softer = nearerWhenSoft(load, index, weighed, heard);
  const nearest = softer ?? limits[0]!;
  const byCount = softer === null ? weighed.boundByCount : boundByCount(load, index, softer);
  const name = limitWords(nearest);
  const spare =
    softer === null
      ? spareWords(nearest)
      : bothSurfacesWords(softer, limits, request.legs[index]!.to.surface);
  if (byCount !== null) {
    const { name: count, aboard, most } = byCount;
    return `Nearest limit: ${count}, ${aboard} of ${most}; nearest weight ${name} ${spare}.`;
  }
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const aboard = drums.filter(({ offAfterLeg }) => index <= offAfterLeg).length;
  const positions = drumPositions.length === 0 ? '' : ` Drum positions ${aboard} of ${drumPositions.length}.`;
  return `Nearest limit: ${name}, ${spare}.${positions}`;
}

const spareWords = ({ spareLb }: { readonly spareLb: Pounds }): string =>
  spareLb < 0 ? `${print(pounds(-spareLb), 'lb')} over` : `${print(spareLb, 'lb')} spare`;

/** "169 lb spare dry, 531 lb over soft": what the plan counts on, and what counts while nobody knows. */
function bothSurfacesWords(softer: BarLimit, limits: WeighedLeg['limits'], plannedOn: SurfaceState): string {
  const planned = limits.find(({ name, place }) => name === softer.name && place === softer.place);
  const firm = planned === undefined ? '' : `${spareWords(planned)} ${plannedOn}, `;
  return `${firm}${spareWords(softer)} soft`;
}

export const limitWords = ({
  name,
  place,
}: {
  readonly name: string;
  readonly place: string | null;
}): string => (place === null ? name : `${place} ${name}`);

/** "taxi 30 lb + XLOR 397 lb + ... + rounding 8 lb = 1,200 lb": whole pounds that add up. */
export function fuelWords({ request, route }: NamedLoad, legs: readonly WeighedLeg[]): string {
  const { type, fuelPolicy } = request;
  const firstUplift = request.legs.findIndex(({ upliftOnArrival }) => upliftOnArrival);
  const section = legs.slice(0, firstUplift < 0 ? legs.length : firstUplift + 1);
  const exactTrip = route.legs.slice(0, section.length).reduce((sum, leg) => sum + leg.tripFuelLb, 0);
  const flow = type.fuelFlowLbPerHour / 60;
  const byPercent = (exactTrip * fuelPolicy.contingencyPercent) / 100;
  const floor = flow * (fuelPolicy.contingencyFloorMinutes ?? 0);
  const contingency = Math.round(Math.max(byPercent, floor));
  const contingencyName =
    floor > byPercent
      ? `${fuelPolicy.contingencyFloorMinutes} min contingency`
      : `${fuelPolicy.contingencyPercent} % contingency`;
  const reserve = Math.round(flow * fuelPolicy.finalReserveMinutes);
  const parts: (readonly [string, Pounds])[] = [
    ['taxi', legs[0]!.taxiLb],
    ...section.map(({ to, tripLb }) => [to, tripLb] as const),
    [contingencyName, pounds(contingency)],
    [`${fuelPolicy.finalReserveMinutes} min reserve`, pounds(reserve)],
  ];
  const ramp = legs[0]!.fuelLb;
  const rounding = ramp - parts.reduce((sum, [, lb]) => sum + lb, 0);
  const all = rounding === 0 ? parts : [...parts, ['rounding', pounds(rounding)] as const];
  const written = all.map(([name, lb]) => `${name} ${print(lb, 'lb')}`).join(' + ');
  const until = firstUplift < 0 ? '' : ` to the uplift at ${section.at(-1)!.to}`;
  return `Fuel at start-up${until}: ${written} = ${print(ramp, 'lb')}. ${fuelPolicy.reference}.`;
}

/** What is known of the surfaces, beside what is planned on; in the words of the day pack. */
export function heardWords(heard: SurfacesHeard): string {
  const told = Object.entries(heard).map(([place, words]) => `${place} ${words}`);
  const isUnknown = Object.values(heard).includes('unknown');
  return `Heard: ${told.join(', ')}${isUnknown ? '; unknown counts as soft' : ''}. Planned on:`;
}

/** What the figures rest on, in one line. */
export function assumptionWords({ request }: NamedLoad, density: KilogramsPerLitre): string {
  const places = new Map(
    request.legs.flatMap(({ from, to }) => [from, to]).map((end) => [end.place.code, end]),
  );
  const surfaces = [...places].map(([code, { surface }]) => `${code} ${surface}`).join(', ');
  const winds = request.legs.every(({ windKt }) => windKt === null)
    ? 'no wind'
    : request.legs
        .map(
          ({ from, to, windKt }) =>
            `${from.place.code}-${to.place.code} wind ${print(windKt ?? knots(0), 'kt')}`,
        )
        .join(', ');
  const tables = [...new Set([...places.values()].flatMap(({ limit }) => limit?.reference ?? []))].join(', ');
  return `${surfaces}; ${winds}; density ${print(density, 'kg/L', 2)}; strip table ${tables || 'not given'}; aircraft ${request.type.reference}.`;
}

export const sheetCautions: readonly string[] = [
  'Planning figure. The commander’s approved data decide.',
  'For use on the ground only.',
];

/** Planned drums in one row, as the plan prints them. */
export const plannedDrumsLb = (drums: number, grossKg: Kilograms): Pounds =>
  pounds(Math.round((drums * grossKg) / 0.45359237));
