import type { Means } from '@drumline/stock';

/** When the demo's clock starts: day 1, 06:00. */
export const written = (happenedAt = '2027-06-14T06:00Z', means: Means = 'screen') => ({
  happenedAt,
  writtenAt: happenedAt,
  means,
});

const onLeg = { flight: 'F05', leg: 1, condition: 'sound', foundMillilitres: null } as const;

export const loaded = (drum: string, place: string, rest: object = {}) => ({
  kind: 'loaded',
  ...written('2027-06-14T06:05Z', 'phone'),
  ...onLeg,
  drum,
  place,
  bound: 'out',
  ...rest,
});

export const leftAt = (drum: string, place: string, rest: object = {}) => ({
  kind: 'left at',
  ...written('2027-06-14T06:07Z', 'phone'),
  ...onLeg,
  drum,
  place,
  ...rest,
});

export const drawn = (drum: string, place: string, litres: number, rest: object = {}) => ({
  kind: 'drawn',
  ...written('2027-06-14T06:08Z', 'phone'),
  drum,
  place,
  millilitres: litres * 1000,
  into: 'H1',
  programme: 'P1',
  leftMillilitres: null,
  ...rest,
});

export const counted = (place: string, litres: number, rest: object = {}) => ({
  kind: 'counted',
  ...written('2027-06-14T05:50Z'),
  place,
  method: 'dip',
  seenFrom: 'ground',
  millilitres: litres * 1000,
  sealedDrums: 12,
  openDrums: 0,
  emptyDrums: 0,
  ...rest,
});
