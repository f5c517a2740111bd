import { figure } from '../../../ui/qty.js';
import type { Bar, Limit } from '../bar-read.js';

/** Pounds from one edge of a drawing to the other. */
export interface Scale {
  readonly fromLb: number;
  readonly toLb: number;
}

/** Where each weight of a bar ends. */
export interface Edges {
  readonly operating: number;
  readonly 'zero fuel': number;
  readonly landing: number;
  readonly 'take-off': number;
}

export const edgesOf = ({ operatingLb, load, fuelOnLandingLb, tripLb }: Bar): Edges => {
  const zeroFuel = operatingLb + load.reduce((sum, { lb }) => sum + lb, 0);
  const landing = zeroFuel + fuelOnLandingLb;
  return { operating: operatingLb, 'zero fuel': zeroFuel, landing, 'take-off': landing + tripLb };
};

/**
 * One scale for all legs, cut short at the left, where nothing but the aeroplane is; wide enough there for the mark of the
 * cut and the whole figure of the operating weight beside each other.
 */
export const scaleOf = (bars: readonly Bar[]): Scale => {
  const lightest = Math.min(...bars.map(({ operatingLb }) => operatingLb));
  const most = Math.max(
    ...bars.flatMap((bar) => [edgesOf(bar)['take-off'], ...bar.limits.map(({ limitLb }) => limitLb)]),
  );
  const shown = (most - lightest) * 1.14;
  return { fromLb: lightest - shown * 0.16, toLb: most + shown * 0.03 };
};

/** Share of the way across, as a length of a drawing. */
export const across = ({ fromLb, toLb }: Scale, lb: number): string =>
  `${(((lb - fromLb) / (toLb - fromLb)) * 100).toFixed(3)}%`;

export const shareOf = ({ fromLb, toLb }: Scale, lb: number): number => (lb / (toLb - fromLb)) * 100;

/** Round pounds for the scale: a tick at every 100 lb, a figure at every 500 or 1,000. */
export const ticksOf = ({
  fromLb,
  toLb,
}: Scale): readonly { readonly lb: number; readonly figure: boolean }[] => {
  const step = toLb - fromLb > 6000 ? 1000 : 500;
  const small = step / 5;
  const first = Math.ceil(fromLb / small) * small;
  const count = Math.floor((toLb - first) / small) + 1;
  return Array.from({ length: count }, (_, at) => first + at * small).map((lb) => ({
    lb,
    figure: lb % step === 0,
  }));
};

/** "XLOR landing, soft": the limit as its line is called. */
export const limitWords = ({ name, place, surface, moment }: Limit): string => {
  if (place === null) return ofAircraft[moment];
  const what = name === 'unload or stay' ? 'leave full' : moment;
  return `${place} ${what}${surface === null ? '' : `, ${surface}`}`;
};

const ofAircraft = {
  'zero fuel': 'Zero fuel',
  'take-off': 'Take-off, aircraft',
  landing: 'Landing, aircraft',
};

/** "169 lb spare", "531 lb over". */
export const spareWords = ({ spareLb, holds }: Pick<Limit, 'spareLb' | 'holds'>): string =>
  spareLb < 0 || !holds ? `${figure(-Math.min(-1, spareLb))} lb over` : `${figure(spareLb)} lb spare`;

/**
 * "Drum positions, 6 of 6; nearest weight XLOR strip landing limit, 169 lb spare dry, 531 lb over soft." where all are taken, and
 * "XLOR strip landing limit, 169 lb spare dry, 531 lb over soft. Drum positions 4 of 5." where a weight binds. The soft
 * landing of another limit is told only if it would be the nearer.
 */
export const bindsWords = (bar: Bar): string => {
  if (bar.forbiddenBy !== null) return `${bar.forbiddenBy}.`;
  const binding = bar.limits.find(({ binds }) => binds);
  if (binding === undefined) return 'No limit is given.';
  const name = binding.place === null ? binding.name : `${binding.place} ${binding.name}`;
  const other = bar.limits.find(
    ({ name: same, place, surface }) =>
      same === binding.name && place === binding.place && surface !== binding.surface,
  );
  const state = (limit: Limit) => (limit.surface === null ? '' : ` ${limit.surface}`);
  const both = other === undefined ? [binding] : [binding, other].toSorted(firmFirst);
  const also = other === undefined ? nearerSoft(bar, binding) : '';
  const soft = bar.forbiddenWhenSoft === null ? '' : ` When soft: ${bar.forbiddenWhenSoft}.`;
  const weight = `${name}, ${both.map((each) => `${spareWords(each)}${state(each)}`).join(', ')}${also}.`;
  if (bar.boundByCount === null) return `${weight}${positionsWords(bar)}${soft}`;
  const { name: count, aboard, most } = bar.boundByCount;
  return `${count}, ${aboard} of ${most}; nearest weight ${weight}${soft}`;
};

const firmFirst = (one: Limit, other: Limit): number =>
  Number(one.surface === 'soft') - Number(other.surface === 'soft');

const nearerSoft = ({ limits }: Bar, binding: Limit): string => {
  const soft = limits.find(
    ({ name, surface, spareLb }) =>
      name === 'strip landing limit' && surface === 'soft' && spareLb < binding.spareLb,
  );
  return soft === undefined ? '' : `; ${soft.place} ${soft.name} soft, ${spareWords(soft)}`;
};

const positionsWords = ({ drums, drumPositions }: Bar): string =>
  drums === 0 ? '' : ` Drum positions ${drums} of ${drumPositions}.`;

/** Drums by number with their own weights, or as many as are planned, each at the planning weight. */
export type DrumsAre = 'as weighed' | 'planned';

/** "6 drums as weighed", "4 passengers, freight": never what they weigh together. */
export const loadWords = ({ load, drums }: Bar, drumsAre: DrumsAre): string => {
  const others = load.filter(({ isDrum }) => !isDrum);
  const passengers = others.filter(({ name }) => /passengers?\b/.test(name));
  // One by one in their seats, or "4 passengers" in one block.
  const people = passengers.reduce((sum, { name }) => sum + (Number(/^\d+/.exec(name)?.[0]) || 1), 0);
  const parts = [
    ...(drums === 0 ? [] : [`${drums} ${drums === 1 ? 'drum' : 'drums'} ${drumsAre}`]),
    ...(people === 0 ? [] : [`${people} ${people === 1 ? 'passenger' : 'passengers'}`]),
    ...(others.length > passengers.length ? ['freight'] : []),
  ];
  return parts.length === 0 ? 'nothing aboard' : parts.join(', ');
};
