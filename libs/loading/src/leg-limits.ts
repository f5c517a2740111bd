import { pounds, poundsFromKilograms } from '@drumline/units';
import type { CabinConfiguration } from './aircraft-type.js';
import { balancedDrums } from './balanced-drums.js';
import type { LegFuel } from './fuel.js';
import type { FuelMoments } from './moment-window.js';
import type { LegEnd, LegLimit, LegRequest, LimitName, RouteRequest } from './route-load.js';
import { stripWeights } from './strip-limit.js';

/** What stands in the way of a leg: its limits, tightest first, and whether it can be flown without a drum. */
export interface LegLimits {
  readonly limits: readonly LegLimit[];
  /** Least room a weight limit leaves for drums, in lb; negative: too heavy without a drum. */
  readonly weightRoomLb: number;
  /** The limit that forbids the leg even without a drum. */
  readonly forbidden: LegLimit | null;
  readonly balanceUnknown: string | null;
}

/** Rounding noise that must not cost a drum, in drums. */
const noise = 1e-9;

/** Every limit on one leg: weights, strips, standing places, floor, passengers and balance. */
export function legLimits(
  request: RouteRequest,
  configuration: CabinConfiguration,
  leg: LegRequest,
  fuel: LegFuel,
  rampLb: number | null,
): LegLimits {
  const drumLb = poundsFromKilograms(request.drum.grossKg);
  const limit = (name: LimitName, place: string | null, roomLb: number): LegLimit => ({
    name,
    place,
    roomLb: pounds(roomLb),
    drums: Math.max(0, Math.floor(roomLb / drumLb + noise)),
  });
  const weights = weightLimits(request, configuration, leg, fuel, limit);
  const bans = legBans(request, leg, rampLb ?? fuel.fuelAtTakeoffLb, limit);
  const places = placeLimits(configuration, freightLb(leg), drumLb, limit);
  const limits = [...weights, ...bans, ...places];
  if (leg.passengers > 0) limits.push(limit('passengers aboard', null, (leg.drumsByApproval ?? 0) * drumLb));
  const balance = balanceLimit(request, configuration, leg, { ...fuelMoments(fuel), rampLb }, limits, limit);
  if (balance.limit) limits.push(balance.limit);
  const overweight = weights.filter(({ roomLb }) => roomLb < -noise).sort(byRoom)[0];
  return {
    limits: limits.sort(byRoom),
    weightRoomLb: Math.min(...weights.map(({ roomLb }) => roomLb)),
    forbidden: bans[0] ?? overweight ?? balance.forbidden,
    balanceUnknown: balance.unknown,
  };
}

type MakeLimit = (name: LimitName, place: string | null, roomLb: number) => LegLimit;

const byRoom = (a: LegLimit, b: LegLimit): number => a.roomLb - b.roomLb;

const fuelMoments = ({ fuelAtTakeoffLb, fuelAtLandingLb }: LegFuel) => ({
  takeoffLb: fuelAtTakeoffLb,
  landingLb: fuelAtLandingLb,
});

function weightLimits(
  { type }: RouteRequest,
  configuration: CabinConfiguration,
  leg: LegRequest,
  fuel: LegFuel,
  limit: MakeLimit,
): LegLimit[] {
  const dryLb = configuration.operatingWeightLb + poundsFromKilograms(leg.passengersKg) + freightLb(leg);
  const takeoffLb = dryLb + fuel.fuelAtTakeoffLb;
  const landingLb = dryLb + fuel.fuelAtLandingLb;
  const from = stripWeights(leg.from);
  const to = stripWeights(leg.to);
  const limits = [
    limit('max take-off weight', null, type.maxTakeoffLb - takeoffLb),
    limit('max landing weight', null, type.maxLandingLb - landingLb),
    limit('max zero-fuel weight', null, type.maxZeroFuelLb - dryLb),
  ];
  if (from.forbiddenBy === null)
    limits.push(limit('strip take-off limit', leg.from.place.code, from.takeoffLb - takeoffLb));
  if (to.forbiddenBy === null)
    limits.push(limit('strip landing limit', leg.to.place.code, to.landingLb - landingLb));
  return limits;
}

/** Limits that leave no way to fly the leg at all. */
function legBans(
  { type }: RouteRequest,
  leg: LegRequest,
  fuelNeededLb: number,
  limit: MakeLimit,
): LegLimit[] {
  const closed = (end: LegEnd): LegLimit[] => {
    const { forbiddenBy } = stripWeights(end);
    return forbiddenBy === null ? [] : [limit(forbiddenBy, end.place.code, 0)];
  };
  const tank = fuelNeededLb > type.fuelCapacityLb ? [limit('fuel capacity', null, 0)] : [];
  return [...closed(leg.to), ...closed(leg.from), ...tank];
}

function placeLimits(
  configuration: CabinConfiguration,
  freight: number,
  drumLb: number,
  limit: MakeLimit,
): LegLimit[] {
  const { drumPositions } = configuration;
  const free = drumPositions.length - positionsForFreight(configuration, freight);
  const strong = drumPositions.filter(({ limitLb }) => limitLb >= drumLb).length;
  const positions = limit('drum positions', null, free * drumLb);
  return strong < free ? [positions, limit('floor limit', null, strong * drumLb)] : [positions];
}

/** Drum positions that freight takes when the freight places are full: the fewest that hold the rest. */
function positionsForFreight({ freightPlaces, drumPositions }: CabinConfiguration, freight: number): number {
  let rest = freight - freightPlaces.reduce((sum, { limitLb }) => sum + limitLb, 0);
  const strongest = drumPositions.map(({ limitLb }) => limitLb).sort((a, b) => b - a);
  const taken = strongest.findIndex((limitLb) => {
    if (rest <= 0) return true;
    rest -= limitLb;
    return false;
  });
  return taken < 0 ? drumPositions.length : taken;
}

function balanceLimit(
  request: RouteRequest,
  configuration: CabinConfiguration,
  leg: LegRequest,
  fuel: FuelMoments,
  limits: readonly LegLimit[],
  limit: MakeLimit,
): { limit: LegLimit | null; forbidden: LegLimit | null; unknown: string | null } {
  const unknown = unplaced(configuration, leg);
  if (unknown !== null) return { limit: null, forbidden: null, unknown };
  const drumLb = poundsFromKilograms(request.drum.grossKg);
  const most = Math.min(...limits.map(({ drums }) => drums));
  const drums = balancedDrums(request.type, configuration, fuel, freightLb(leg), drumLb, most);
  if (drums === most) return { limit: null, forbidden: null, unknown };
  const balance = limit('balance', null, Math.max(0, drums) * drumLb);
  return { limit: balance, forbidden: drums < 0 ? balance : null, unknown };
}

/** Why the balance of a leg cannot be judged yet, or null when it can. */
function unplaced({ freightPlaces }: CabinConfiguration, leg: LegRequest): string | null {
  if (leg.passengers > 0) return 'balance not checked: the seats of the passengers are not given';
  const room = freightPlaces.reduce((sum, { limitLb }) => sum + limitLb, 0);
  return freightLb(leg) > room ? 'balance not checked: no place in the cabin is given for the freight' : null;
}

const freightLb = (leg: LegRequest): number => poundsFromKilograms(leg.freightKg);
