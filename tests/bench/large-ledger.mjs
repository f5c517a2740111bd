import { randomUUID } from 'node:crypto';

// A territory of 60 caches and a ledger of about 100,000 movements of 5,000 drums, from the demo's document.

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const codeOf = (index) => `Y${letters[Math.floor(index / 26)]}${letters[index % 26]}Y`;

/** The demo's territory without its stock, with copies of one strip and its cache up to so many caches. */
export const largeTerritory = (document, caches) => {
  const strip = document.places.find(({ code }) => code === 'XCIN');
  const cache = document.caches.find(({ place }) => place === 'XCIN');
  const added = Array.from({ length: caches - document.caches.length }, (_, index) => codeOf(index));
  const copies = added.map((code, index) => ({
    ...strip,
    code,
    name: `Copy ${code}`,
    latitudeDeg: strip.latitudeDeg + 0.01 * (index + 1),
  }));
  const limits = document.stripLimits.filter(({ place }) => place === strip.code);
  const draws = added.map((place, index) => ({
    date: `2027-06-${String(14 + (index % 14)).padStart(2, '0')}`,
    place,
    litres: 200,
    for: 'round',
  }));
  return {
    ...document,
    places: [...document.places, ...copies],
    stripLimits: [
      ...document.stripLimits,
      ...added.flatMap((place) => limits.map((limit) => ({ ...limit, place }))),
    ],
    caches: [...document.caches, ...added.map((place) => ({ ...cache, place }))].map((each) => ({
      ...each,
      capacityDrums: 400,
    })),
    plannedUplifts: [...document.plannedUplifts, ...draws],
    drums: [],
    counts: [],
  };
};

/** Drums that have fuel in them, each with the strip where it stands. */
export const standingAt = (movements) => {
  const last = new Map(movements.map((movement) => [movement.drum, movement]));
  return [...last.values()]
    .filter(({ kind }) => kind === 'left at' || kind === 'drawn')
    .map(({ drum, place }) => ({ drum, place }));
};

const start = Date.parse('2027-01-01T00:00:00Z');
const end = Date.parse('2027-06-14T05:00:00Z');

/** So many drums, each filled, flown out, drawn on, emptied and brought home again until it has so many movements. */
export const largeLedger = (places, drums, movementsOfDrum) =>
  Array.from({ length: drums }, (_, index) =>
    lifeOf(String(10_000 + index), index, places, movementsOfDrum),
  ).flat();

const lifeOf = (drum, index, places, length) => {
  const cycle = (round) => {
    const place = places[(index + round * 7) % places.length];
    const flight = `F${index % 900}-${round}`;
    const leg = { flight, leg: 1, condition: 'sound', foundMillilitres: null };
    const home = { ...leg, flight: `${flight}h` };
    const draw = {
      kind: 'drawn',
      place,
      millilitres: 50_000,
      into: 'H1',
      programme: 'P1',
      leftMillilitres: null,
    };
    return [
      { kind: 'filled', place: 'XALD', batch: 'J27-012', millilitres: 200_000, tareKg: 19, grossKg: 179 },
      { kind: 'loaded', place: 'XALD', bound: 'out', ...leg },
      { kind: 'left at', place, ...leg },
      draw,
      draw,
      draw,
      draw,
      { kind: 'emptied', place, leaves: 'clean empty' },
      { kind: 'loaded', place, bound: 'home', ...home },
      { kind: 'brought home', place: 'XALD', ...home },
    ];
  };
  const all = Array.from({ length: Math.ceil(length / 10) + 1 }, (_, round) => cycle(round)).flat();
  const own = all.slice(0, length + (Math.floor(index / places.length) % 10) - 5);
  return own.map((movement, step) => {
    const at = new Date(start + ((end - start) * (step + index / 5000)) / (own.length + 1)).toISOString();
    const written = { id: randomUUID(), happenedAt: at, writtenAt: at, receivedAt: at };
    return { ...written, means: 'phone', by: 'bench', witnesses: [], drum, ...movement };
  });
};
