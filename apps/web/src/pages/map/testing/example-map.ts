import type { Cache, Flight, Place, Sling } from '../map-read.js';

export const place = (code: string, rest: Partial<Place> = {}): Place => ({
  code,
  name: code.toLowerCase(),
  kind: 'strip',
  latitudeDeg: 66,
  longitudeDeg: 0,
  elevationFt: 100,
  stripClass: 2,
  runway: {
    lengthFt: 1900,
    material: 'gravel',
    oneWay: false,
    tailwindLimitKt: 5,
    committalPoint: null,
  },
  landingCapacityDrumsPerDay: 6,
  surface: { staleAfterHours: 12, expected: 'dry' },
  ...rest,
});

export const cache = (code: string, usable: readonly number[], ageHours = 5): Cache => ({
  place: code,
  minimumLitres: 1200,
  criticalLitres: 600,
  capacityDrums: 30,
  stock: { usableLitres: usable[0]!, lastCount: { countedLitres: usable[0]!, ageHours } },
  projections: { offered: { usableLitres: [...usable] } },
  deliveries: [],
  slings: [],
});

export const flight = (id: string, rest: Partial<Flight> = {}): Flight => ({
  id,
  state: 'offered',
  needsDecision: null,
  aircraft: 'B1',
  fromPlace: 'XALD',
  toPlace: 'XALD',
  stops: [{ place: 'XLOR', drums: 6 }],
  ...rest,
});

export const sling = (rest: Partial<Sling> = {}): Sling => ({
  ...{ date: '2027-06-15', helicopter: 'H2', from: 'XLOR', to: 'XOGR', drums: 4 },
  load: { drums: 4 },
  inQuestion: { drums: 0, litres: 0 },
  ...rest,
});

export const size = { width: 900, height: 700 };
