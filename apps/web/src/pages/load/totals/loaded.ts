import { areTwoPeople } from '@drumline/loading';
import { inWords } from '../../../ui/qty.js';
import { figureIn } from '../../../ui/typed-figure.js';
import type { LoadedFlight, Totals } from '../load-read.js';

export interface TwoTotals {
  readonly load: Totals | undefined;
  readonly takeOff: Totals | undefined;
}

/** What stands on the form under the totals. */
export interface Signatures {
  readonly loadedBy: string;
  readonly checkedBy: string;
  /** Who accepts a difference, and why; empty: nobody does. */
  readonly signedBy: string;
  readonly reason: string;
}

export const unsigned: Signatures = { loadedBy: '', checkedBy: '', signedBy: '', reason: '' };

/** The pairs that lie further apart than the operator allows. */
export const apart = ({ load, takeOff }: TwoTotals): readonly Totals[] =>
  [load, takeOff].flatMap((pair) => (pair === undefined || pair.agrees ? [] : [pair]));

const isSigned = ({ signedBy, reason }: Signatures): boolean =>
  signedBy.trim() !== '' && reason.trim().length >= 3;

/** Whoever checked the load has seen both figures too. */
const isAlone = ({ signedBy, checkedBy }: Signatures): boolean => !areTwoPeople(signedBy, checkedBy);

/** Why the flight cannot be called loaded yet; undefined: it can. */
export const loadedOff = (
  flight: Pick<LoadedFlight, 'state' | 'toleranceLb'>,
  totals: TwoTotals,
  signatures: Signatures,
): string | undefined => {
  if (flight.state !== 'given')
    return `Loaded is off: the flight is ${flight.state}; it has to be given first.`;
  if (flight.toleranceLb === null)
    return 'Loaded is off: nobody has said by how much two totals may differ. The policy in Set-up says it.';
  if (totals.load === undefined) return 'Loaded is off: the load is not added by hand yet.';
  if (totals.takeOff === undefined)
    return 'Loaded is off: the take-off weight by the aircraft is not typed yet.';
  const [first] = apart(totals);
  if (first !== undefined && !isSigned(signatures))
    return `Loaded waits: the two totals differ by ${inWords(first.differenceLb, 'lb')}. Add both again, or the commander signs with the reason.`;
  if (signatures.loadedBy.trim() === '') return 'Loaded is off: who loaded it is not written.';
  if (signatures.checkedBy.trim() === '') return 'Loaded is off: who checked it is not written.';
  if (first !== undefined && isAlone(signatures))
    return 'Loaded waits: whoever signs for the difference is not who checked it; it takes two people.';
  return undefined;
};

type LoadedDrum = NonNullable<LoadedFlight['load']>['sheet']['drums'][number];

interface Loading {
  readonly flight: Pick<LoadedFlight, 'id' | 'version'> & {
    readonly load: {
      readonly sheet: { readonly drums: readonly Pick<LoadedDrum, 'number' | 'leaveAt'>[] };
    } | null;
  };
  readonly totals: TwoTotals;
  readonly signatures: Signatures;
  readonly bySoftFigures: boolean;
  /** It stands so in the aeroplane: base keeps and raises what it may not enter as loaded. */
  readonly allTheSame: boolean;
  readonly at: string;
  readonly idOf: (drum: string) => string;
}

/** The report that makes the flight loaded, as the server reads it. */
export const loadReport = ({ flight, totals, signatures, bySoftFigures, allTheSame, at, idOf }: Loading) => {
  const { load, takeOff } = totals;
  if (load === undefined || takeOff === undefined || flight.load === null)
    throw new Error('not both totals are typed');
  const { loadedBy, checkedBy, signedBy, reason } = signatures;
  return {
    kind: 'load',
    flight: flight.id,
    happenedAt: at,
    writtenAt: at,
    means: 'screen',
    version: flight.version,
    witnesses: [`loaded by ${loadedBy.trim()}`, `checked by ${checkedBy.trim()}`],
    totals: {
      load: { bySheetLb: load.bySheetLb, byHandLb: load.typedLb },
      takeOff: { bySheetLb: takeOff.bySheetLb, byAircraftLb: takeOff.typedLb },
    },
    drums: flight.load.sheet.drums.map(({ number, leaveAt }) => ({
      movement: idOf(number),
      drum: number,
      to: leaveAt,
    })),
    ...(apart(totals).length > 0
      ? { signed: { by: signedBy.trim(), reason: reason.trim(), second: checkedBy.trim() } }
      : {}),
    bySoftFigures,
    ...(allTheSame ? { allTheSame } : {}),
  };
};

/** A typed total as whole pounds; undefined: it is none yet. */
export const poundsTyped = (typed: string): number | undefined => {
  const pounds = figureIn(typed) ?? -1;
  return Number.isInteger(pounds) && pounds >= 0 ? pounds : undefined;
};
