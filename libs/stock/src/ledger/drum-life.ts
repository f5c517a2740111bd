import type { Kilograms } from '@drumline/units';
import type { DrumContent, Hold } from '../drum.js';
import type { DrumState, Where } from './ledger-state.js';
import type { Millilitres } from './millilitres.js';
import type { Drawn, DrumCondition, Emptied, Movement, Spilled, Transferred } from './movement.js';

/** What is known of a drum between two of its movements. */
export interface DrumLife {
  /** Some movement has said where it is. */
  readonly known: boolean;
  readonly where: Where;
  readonly content: DrumContent;
  readonly millilitres: Millilitres;
  readonly batch: string | null;
  readonly openedAt: string | null;
  readonly tareKg: Kilograms | null;
  readonly grossKg: Kilograms | null;
  readonly held: Hold | null;
  readonly condemned: Hold | null;
  readonly retest: DrumState['fitness']['retest'];
  readonly lastDip: DrumState['lastDip'];
}

const none = 0 as Millilitres;

export const unheardOf: DrumLife = {
  known: false,
  where: { kind: 'unknown', lastSeenAt: null },
  content: 'clean empty',
  millilitres: none,
  batch: null,
  openedAt: null,
  tareKg: null,
  grossKg: null,
  held: null,
  condemned: null,
  retest: null,
  lastDip: null,
};

export const hasFuel = ({ content }: Pick<DrumLife, 'content'>): boolean =>
  content === 'filled sealed' || content === 'part used';

/** The drum after a movement of it. `isSource`, `isTarget`: its part in a transfer between drums. */
export function lifeAfter(life: DrumLife, movement: Movement, part: TransferPart): DrumLife {
  switch (movement.kind) {
    case 'received':
      return { ...at(life, movement.place), ...filling(movement), openedAt: movement.openedAt ?? null };
    case 'filled':
      return { ...at(life, movement.place), ...filling(movement), content: 'filled sealed' };
    case 'loaded':
      return inCondition(aboard(life, movement), movement.condition, movement);
    case 'left at':
    case 'brought home':
      return inCondition(at(life, movement.place), movement.condition, movement);
    case 'opened':
      return open(at(life, movement.place), movement);
    case 'drawn':
    case 'spilled':
      return lessFuel(at(life, movement.place), movement);
    case 'transferred':
      return transferred(at(life, movement.place), movement, part);
    case 'dipped':
      return { ...at(life, movement.place), lastDip: dip(life, movement) };
    case 'emptied':
      return emptied(at(life, movement.place), movement);
    case 'weighed':
      return { ...at(life, movement.place), grossKg: movement.grossKg };
    case 'slung':
      return at(life, movement.to);
    case 'found':
      return at(life, movement.place);
    case 'lost':
      return { ...life, known: true, where: { kind: 'unknown', lastSeenAt: movement.place } };
    case 'held':
      return { ...life, held: life.held ?? holdBy(movement, movement.reason) };
    case 'released':
      return { ...life, held: null };
    case 'condemned':
      return { ...life, condemned: life.condemned ?? holdBy(movement, movement.reason) };
    case 'retest passed':
      return { ...life, retest: { certificate: movement.certificate, retestDue: movement.retestDue } };
    case 'joined':
    case 'counted':
    case 'corrected':
      return life;
  }
}

export interface TransferPart {
  readonly isSource: boolean;
  readonly isTarget: boolean;
}

const at = (life: DrumLife, place: string): DrumLife => ({
  ...life,
  known: true,
  where: { kind: 'at', place },
});

const aboard = (life: DrumLife, { flight, leg, place }: Movement & { kind: 'loaded' }): DrumLife => ({
  ...life,
  known: true,
  where: { kind: 'aboard', flight, leg, from: place },
});

/** Fuel that comes with its batch; a certificate of the fuel before it no longer counts. */
function filling(movement: Movement & { kind: 'received' | 'filled' }) {
  const { batch, millilitres, tareKg, grossKg } = movement;
  const content = movement.kind === 'received' ? movement.content : 'filled sealed';
  return { batch, millilitres, tareKg, grossKg, content, openedAt: null, retest: null };
}

function open(life: DrumLife, { happenedAt }: Movement): DrumLife {
  return life.content === 'filled sealed' ? { ...life, content: 'part used', openedAt: happenedAt } : life;
}

/** A broken seal is an opened drum; whatever is not sound is held until somebody has looked. */
function inCondition(life: DrumLife, condition: DrumCondition, movement: Movement): DrumLife {
  if (condition === 'sound') return life;
  const opened = condition === 'damaged' ? life : open(life, movement);
  return { ...opened, held: life.held ?? holdBy(movement, condition) };
}

/** A drum cannot hold less than nothing: what was taken beyond its content is raised, not booked. */
function lessFuel(life: DrumLife, movement: Drawn | Spilled | Transferred): DrumLife {
  const left = Math.max(0, life.millilitres - movement.millilitres) as Millilitres;
  return {
    ...open(life, movement),
    millilitres: left,
    content: left > 0 ? 'part used' : 'empty with residue',
  };
}

function transferred(life: DrumLife, movement: Transferred, { isSource, isTarget }: TransferPart): DrumLife {
  if (isSource && isTarget) return life;
  if (isSource) return lessFuel(life, movement);
  return {
    ...life,
    millilitres: (life.millilitres + movement.millilitres) as Millilitres,
    content: 'part used',
    openedAt: (hasFuel(life) ? life.openedAt : null) ?? movement.happenedAt,
    ...(hasFuel(life) ? {} : { batch: movement.batch, retest: null }),
  };
}

function emptied(life: DrumLife, { leaves }: Emptied): DrumLife {
  return { ...life, content: leaves, millilitres: none };
}

function dip(life: DrumLife, { happenedAt, by, millilitres }: Movement & { kind: 'dipped' }) {
  return { at: happenedAt, by, millilitres, bookMillilitres: life.millilitres };
}

const holdBy = ({ by, happenedAt }: Movement, reason: string): Hold => ({ reason, by, at: happenedAt });
