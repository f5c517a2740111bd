/** What a ledger leaves to be looked at; nothing of it was refused. */
export type RaisedKind =
  | 'not in the book'
  | 'already in the book'
  | 'not there'
  | 'not aboard'
  | 'aboard two flights'
  | 'loaded before filled'
  | 'filled over fuel'
  | 'no fuel in it'
  | 'already open'
  | 'held drum loaded'
  | 'held drum used'
  | 'released by one person'
  | 'more than was in it'
  | 'litres differ'
  | 'batches mixed'
  | 'reports differ'
  | 'joined twice'
  | 'clock ahead'
  | 'corrects an unknown movement'
  | 'draws look alike'
  | 'over capacity'
  | 'not in the territory'
  | 'unknown batch'
  | 'holds nothing'
  | 'impossible figures'
  | 'unlike its batch'
  | 'delivery not as planned'
  | 'flight report'
  | 'load or problem';

/** Something to look at: a value, with the same id whenever it is found again. */
export interface Raised {
  /** Kind and movements; stable from one replay to the next. */
  readonly id: string;
  readonly kind: RaisedKind;
  readonly drum: string | null;
  readonly place: string | null;
  readonly flight: string | null;
  /** Ids of the movements concerned. */
  readonly movements: readonly string[];
  readonly what: string;
  readonly whatNext: string;
}
