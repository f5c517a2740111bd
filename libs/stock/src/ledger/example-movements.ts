import { kilograms, litres } from '@drumline/units';
import { millilitresOf } from './millilitres.js';
import type { Filled, LeftAt, Loaded, Movement, Received, Written } from './movement.js';

/** A clock time of Monday 14 June 2027, in UTC. */
export const at = (clock: string): string => `2027-06-14T${clock}Z`;

export const ml = (amount: number) => millilitresOf(litres(amount));

/** Written and received as it happens, unless said otherwise. */
export function written(id: string, clock: string, rest: Partial<Written> = {}): Written {
  const moment = at(clock);
  return {
    id,
    happenedAt: moment,
    writtenAt: moment,
    receivedAt: moment,
    means: 'phone',
    by: 'pilot',
    witnesses: [],
    ...rest,
  };
}

const weights = { tareKg: kilograms(20), grossKg: kilograms(180) };

export function filled(drum: string, clock: string, rest: Partial<Filled> = {}): Filled {
  return {
    ...written(`fill-${drum}`, clock, { by: 'storekeeper' }),
    kind: 'filled',
    drum,
    place: 'BASE',
    batch: 'J27',
    millilitres: ml(200),
    ...weights,
    ...rest,
  };
}

export function received(drum: string, clock: string, rest: Partial<Received> = {}): Received {
  return {
    ...written(`receive-${drum}`, clock, { by: 'storekeeper' }),
    kind: 'received',
    drum,
    place: 'STRIP',
    batch: 'J27',
    content: 'filled sealed',
    millilitres: ml(200),
    ...weights,
    ...rest,
  };
}

export function loaded(drum: string, clock: string, rest: Partial<Loaded> = {}): Loaded {
  return {
    ...written(`load-${drum}`, clock),
    kind: 'loaded',
    drum,
    place: 'BASE',
    flight: 'F05',
    leg: 1,
    condition: 'sound',
    foundMillilitres: null,
    bound: 'out',
    ...rest,
  };
}

export function leftAt(drum: string, clock: string, rest: Partial<LeftAt> = {}): LeftAt {
  return {
    ...written(`left-${drum}`, clock),
    kind: 'left at',
    drum,
    place: 'STRIP',
    flight: 'F05',
    leg: 1,
    condition: 'sound',
    foundMillilitres: null,
    ...rest,
  };
}

export function drawn(
  drum: string,
  clock: string,
  amount: number,
  rest: Partial<Movement & { kind: 'drawn' }> = {},
) {
  return {
    ...written(`draw-${drum}-${clock}`, clock, { by: 'helicopter crew' }),
    kind: 'drawn' as const,
    drum,
    place: 'STRIP',
    millilitres: ml(amount),
    into: 'H1',
    programme: 'P1',
    leftMillilitres: null,
    ...rest,
  };
}

export function corrected(corrects: string, clock: string): Movement {
  return { ...written(`correct-${corrects}`, clock), kind: 'corrected', corrects, reason: 'wrong number' };
}

export function counted(
  place: string,
  clock: string,
  amount: number,
  rest: Partial<Movement & { kind: 'counted' }> = {},
) {
  return {
    ...written(`count-${place}-${clock}`, clock, { by: 'helper' }),
    kind: 'counted' as const,
    place,
    method: 'dip' as const,
    seenFrom: 'ground' as const,
    millilitres: ml(amount),
    sealedDrums: 0,
    openDrums: 0,
    emptyDrums: 0,
    ...rest,
  };
}

/** A drum filled at base, flown out on F05 and left at the strip. */
export const flownOut = (drum: string): readonly Movement[] => [
  filled(drum, '05:00'),
  loaded(drum, '06:00'),
  leftAt(drum, '07:00'),
];
