import { type Litres, print, printNumber } from '@drumline/units';
import { unlikeItsDrums } from '../counted-drums.js';
import type { CountTolerance } from '../drum.js';
import { litresOf, type Millilitres } from './millilitres.js';
import type { Filled, Means, Movement, Received } from './movement.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';
import { type BatchDensities, unlikeItsBatch } from './unlike-its-batch.js';

/** What a report is held against that no ledger can know: the names of the territory, and what a drum holds. */
export interface KnownHere extends BatchDensities {
  readonly places: ReadonlySet<string>;
  /** Aeroplanes and helicopters. */
  readonly aircraft: ReadonlySet<string>;
  readonly programmes: ReadonlySet<string>;
  readonly batches: ReadonlySet<string>;
  /** Batches that some drum of the ledger has, or had. */
  readonly batchesInDrums: ReadonlySet<string>;
  readonly brimLitres: Litres;
  /** In a full drum. */
  readonly fillLitres: Litres;
  readonly countTolerance: CountTolerance;
}

/**
 * What a report names that nobody has set up, and figures that no drum can have: kept as they came, and to be looked at.
 * Empty once the name is set up. Whether the report still stands is for the caller to know.
 */
export function strangeIn(movement: Movement, known: KnownHere): readonly Raised[] {
  const odd = oddFigures(movement, known);
  return [
    ...strangeNames(movement, known),
    ...unknownBatch(movement, known),
    ...otherDrums(movement, known),
    ...(odd.length > 0 ? odd : otherDensity(movement, known)),
  ];
}

function strangeNames(movement: Movement, { places, aircraft, programmes }: KnownHere): readonly Raised[] {
  const strange = [
    ...placesIn(movement).flatMap((place) => (places.has(place) ? [] : [`place ${place}`])),
    ...aircraftIn(movement).flatMap((tail) => (aircraft.has(tail) ? [] : [`aircraft ${tail}`])),
    ...('programme' in movement && !programmes.has(movement.programme)
      ? [`programme ${movement.programme}`]
      : []),
  ];
  if (strange.length === 0) return [];
  return raised('not in the territory', movement, {
    what: `names ${strange.join(' and ')}, which ${strange.length === 1 ? 'is' : 'are'} not in the territory`,
    whatNext: 'Ask what was meant and correct the report, or have it added at Set-up.',
  });
}

function unknownBatch(movement: Movement, { batches, batchesInDrums }: KnownHere): readonly Raised[] {
  if ('of' in movement && 'batch' in movement.of) {
    const { batch } = movement.of;
    if (batches.has(batch) || batchesInDrums.has(batch)) return [];
    return raised('holds nothing', movement, {
      what: `is about batch ${batch}, which no drum has: it holds nothing`,
      whatNext: 'Read the batch again, now: the fuel that was meant may still be in use.',
    });
  }
  if (!('batch' in movement) || batches.has(movement.batch)) return [];
  return raised('unknown batch', movement, {
    what: `names batch ${movement.batch}, which is not set up: its drums have no retest date`,
    whatNext:
      'Read the batch again and correct the report, or have it added at Set-up. Do not use the drum before.',
  });
}

function oddFigures(movement: Movement, { brimLitres }: KnownHere): readonly Raised[] {
  const odd = [...tooMuch(movement, brimLitres), ...oddWeights(movement)];
  if (odd.length === 0) return [];
  return raised('impossible figures', movement, {
    what: `cannot be so: ${odd.join('; ')}`,
    whatNext: 'Ask for the figures again, weigh or dip the drum, and correct the report.',
  });
}

/** A slip of the litres or of the drums: the figure that the projection uses may be the wrong one. */
function otherDrums(movement: Movement, known: KnownHere): readonly Raised[] {
  // Counts of an opening come without their sealed drums.
  if (movement.kind !== 'counted' || movement.sealedDrums === 0) return [];
  const words = unlikeItsDrums({ ...movement, litres: litresOf(movement.millilitres) }, known);
  if (words === null) return [];
  return raised('impossible figures', movement, {
    what: `cannot be so: it found ${words}`,
    whatNext: 'Ask for the litres and the drums again, and correct the count.',
  });
}

/** Water, another fuel, a wrong tare, number or batch: the drum is not to be used before somebody has looked. */
function otherDensity(movement: Movement, known: KnownHere): readonly Raised[] {
  const words = movement.kind === 'filled' ? unlikeItsBatch(movement, known) : null;
  if (words === null) return [];
  return raised('unlike its batch', movement, {
    what: `does not weigh as its batch: ${words.replace(/\.$/, '')}`,
    whatNext: 'Weigh and dip the drum again, and correct the report; until then hold the drum.',
  });
}

function tooMuch(movement: Movement, brimLitres: Litres): readonly string[] {
  return amountsIn(movement).flatMap((amount) =>
    litresOf(amount) <= brimLitres
      ? []
      : [`${print(litresOf(amount), 'L')} in one drum, which holds ${print(brimLitres, 'L')} to the brim`],
  );
}

function oddWeights(movement: Movement): readonly string[] {
  if (movement.kind === 'weighed') return movement.grossKg > 0 ? [] : ['it weighs 0 kg'];
  if (movement.kind !== 'received' && movement.kind !== 'filled') return [];
  const { tareKg, grossKg, millilitres } = movement;
  if (!(tareKg > 0)) return ['it weighs 0 kg empty'];
  if (!(grossKg > 0)) return ['it weighs 0 kg'];
  return isFuelWeight(grossKg - tareKg, litresOf(millilitres)) ? [] : [densityWords(movement)];
}

/** Scales of a strip read to half a kilogram. Common practice, no source. */
const scaleErrorKg = 0.5;

// Range of Jet A-1, kg/L: as `isJetFuelDensity` has it, here at the temperature of the day.
const lightest = 0.775;
const heaviest = 0.84;

function isFuelWeight(netKg: number, amount: Litres): boolean {
  return netKg >= lightest * amount - scaleErrorKg && netKg <= heaviest * amount + scaleErrorKg;
}

function densityWords({ tareKg, grossKg, millilitres }: Filled | Received): string {
  const amount = litresOf(millilitres);
  const net = `${print(amount, 'L')} that weigh ${printNumber(grossKg - tareKg, 1)} kg`;
  if (amount === 0) return net;
  const density = ((grossKg - tareKg) / amount) * 1000;
  return `${net} have ${printNumber(density)} kg/m3, and jet fuel has 775 to 840 kg/m3`;
}

function placesIn(movement: Movement): readonly string[] {
  if (movement.kind === 'slung') return [movement.from, movement.to];
  return 'place' in movement ? [movement.place] : [];
}

function aircraftIn(movement: Movement): readonly string[] {
  if (movement.kind === 'slung') return [movement.helicopter];
  return movement.kind === 'drawn' ? [movement.into] : [];
}

/** Of one drum; a count is of a whole place. */
function amountsIn(movement: Movement): readonly Millilitres[] {
  if (movement.kind === 'counted') return [];
  return [
    ...('millilitres' in movement ? [movement.millilitres] : []),
    ...('foundMillilitres' in movement ? [movement.foundMillilitres] : []),
    ...('leftMillilitres' in movement ? [movement.leftMillilitres] : []),
  ].filter((amount) => amount !== null);
}

function raised(
  kind: Raised['kind'],
  movement: Movement,
  { what, whatNext }: Pick<Raised, 'what' | 'whatNext'>,
): readonly Raised[] {
  const drum = drumOf(movement);
  const [place] = placesIn(movement);
  return [
    raise(kind, [movement], {
      ...(drum === null ? {} : { drum }),
      ...(place === undefined ? {} : { place }),
      ...('flight' in movement ? { flight: movement.flight } : {}),
      what: `${reportWords(movement, drum)} by ${movement.by}, ${meansWords[movement.means]}, ${what}.`,
      whatNext,
    }),
  ];
}

/** Of what; a count is of a place. */
function reportWords(movement: Movement, drum: string | null): string {
  if (movement.kind === 'counted') return `${movement.place} count`;
  return `${drum === null ? '' : `Drum ${drum}: `}"${movement.kind}"`;
}

function drumOf(movement: Movement): string | null {
  if ('of' in movement) return 'drum' in movement.of ? movement.of.drum : null;
  return 'drum' in movement ? movement.drum : null;
}

const meansWords: Readonly<Record<Means, string>> = {
  screen: 'on screen',
  phone: 'by phone',
  radio: 'by radio',
  paper: 'on paper',
};
