import { pounds, poundsFromKilograms, print } from '@drumline/units';
import type { LegFuel } from './fuel.js';
import type { LegLimit, LegRequest, RouteRequest } from './route-load.js';

/**
 * What would have to change for one more drum on the leg than it may carry: the limits in its way, tightest first,
 * with their figures; of many only the two tightest. Of a closed place only that: nothing that is aboard opens it.
 */
export function relaxWords(
  request: RouteRequest,
  leg: LegRequest,
  limits: readonly LegLimit[],
  drums: number,
  fuel: LegFuel,
): string {
  const closed = limits.find(({ name }) => name === 'closed');
  if (closed !== undefined) return closedWords(leg, closed);
  const inTheWay = limits.filter((limit) => limit.drums <= drums).slice(0, 2);
  const changes = inTheWay.map((limit) => change(request, leg, limit, drums, fuel));
  return `${capitalized(nth(drums + 1))} drum takes ${changes.join('; and ')}`;
}

const closedWords = ({ to }: LegRequest, { place }: LegLimit): string =>
  `${place} is closed: no drum can ${place === to.place.code ? 'land there' : 'go on from there'}`;

/** "a 1st", "an 8th", "an 11th", "a 22nd". */
function nth(count: number): string {
  const isTeen = Math.floor(count / 10) % 10 === 1;
  const ending = (isTeen ? undefined : ['th', 'st', 'nd', 'rd'][count % 10]) ?? 'th';
  return `${/^(8|11$|18$)/.test(String(count)) ? 'an' : 'a'} ${count}${ending}`;
}

const capitalized = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Why a leg cannot be flown even without a drum, and what would open it. */
export function whyForbidden({ type }: RouteRequest, leg: LegRequest, limit: LegLimit): string {
  const over = print(pounds(Math.ceil(-limit.roomLb)), 'lb');
  switch (limit.name) {
    case 'type not approved':
      return `${limit.place}: type ${type.id} is not approved there`;
    case 'closed':
      return `${limit.place} is closed`;
    case 'closed when soft':
      return `${limit.place} is soft and then closed to type ${type.id}`;
    case 'fuel capacity':
      return `${legName(leg)}: the fuel needed is more than the tanks hold; plan an uplift`;
    case 'balance':
      return `${legName(leg)}: out of balance without a drum; ballast or other seats are needed`;
    case 'max take-off weight':
    case 'max landing weight':
    case 'max zero-fuel weight':
    case 'strip take-off limit':
    case 'strip landing limit':
    case 'drum positions':
    case 'floor limit':
    case 'passengers aboard':
    case 'unload or stay':
      return `${legName(leg)}: ${over} over ${where(limit)} without a drum`;
  }
}

function change(
  { type, drum, passengerRule }: RouteRequest,
  leg: LegRequest,
  limit: LegLimit,
  drums: number,
  fuel: LegFuel,
): string {
  const drumLb = poundsFromKilograms(drum.grossKg);
  switch (limit.name) {
    case 'drum positions':
      return `${nth(drums + 1)} standing place`;
    case 'floor limit':
      return `a floor limit of ${print(pounds(Math.ceil(drumLb)), 'lb')} in one more position`;
    case 'balance':
      return `positions that balance with ${drums + 1} drums`;
    case 'passengers aboard':
      return `${legName(leg)} without its ${leg.passengers} passengers (${passengerRule.reference})`;
    case 'type not approved':
      return `an approved line for type ${type.id} at ${limit.place}`;
    case 'closed':
      return `${limit.place} open`;
    case 'closed when soft':
      return `${limit.place} dry, or a type that may use it soft`;
    case 'fuel capacity':
      return `a planned uplift: ${print(fuel.fuelAtTakeoffLb, 'lb')} at take-off, tanks ${print(type.fuelCapacityLb, 'lb')}`;
    case 'max take-off weight':
    case 'max landing weight':
    case 'max zero-fuel weight':
    case 'strip take-off limit':
    case 'strip landing limit':
    case 'unload or stay':
      return `${print(pounds(Math.ceil((drums + 1) * drumLb - limit.roomLb)), 'lb')} more under ${where(limit)}`;
  }
}

const legName = ({ from, to }: LegRequest): string => `${from.place.code}-${to.place.code}`;

const where = ({ name, place }: LegLimit): string => (place === null ? name : `${place} ${name}`);
