import { litresOf, type Millilitres, type Movement, type MovementKind } from '@drumline/stock';
import { dateWords } from '@drumline/units';
import { figure, inWords } from '../../ui/index.js';

/** What a movement was, as one plain sentence. */
export const sentenceOf = (movement: Movement): string => sentences[movement.kind](movement as never);

type Sentences = { readonly [Kind in MovementKind]: (movement: Extract<Movement, { kind: Kind }>) => string };

const litres = (amount: Millilitres): string => inWords(litresOf(amount), 'L');
const kg = (weight: number): string => `${figure(weight, 1)} kg`;
const found = (amount: Millilitres | null): string =>
  amount === null ? '' : ` Found in it: ${litres(amount)}.`;
const condition = (words: string): string => (words === 'sound' ? 'condition sound' : words);
const of = (what: { readonly drum: string } | { readonly batch: string }): string =>
  'batch' in what ? `Batch ${what.batch}` : `Drum ${what.drum}`;

const sentences: Sentences = {
  received: ({ place, batch, content, millilitres, tareKg, grossKg }) =>
    `Into the book at ${place}: ${content}, batch ${batch}, ${litres(millilitres)}, ${kg(grossKg)} gross, tare ${kg(tareKg)}.`,
  filled: ({ place, batch, millilitres, tareKg, grossKg }) =>
    `Filled at ${place}, batch ${batch}, ${litres(millilitres)}, ${kg(grossKg - tareKg)} net, ${kg(grossKg)} gross, tare ${kg(tareKg)}.`,
  loaded: ({ flight, place, bound, condition: state, foundMillilitres }) =>
    `Loaded on ${flight} at ${place}, ${bound === 'out' ? 'outbound' : 'for home'}, ${condition(state)}.${found(foundMillilitres)}`,
  'left at': ({ flight, place, condition: state, foundMillilitres }) =>
    `Left at ${place} by ${flight}, ${condition(state)}.${found(foundMillilitres)}`,
  'brought home': ({ flight, place, condition: state, foundMillilitres }) =>
    `Brought home to ${place} by ${flight}, ${condition(state)}.${found(foundMillilitres)}`,
  opened: ({ place }) => `Opened at ${place}.`,
  drawn: ({ place, millilitres, into, programme, leftMillilitres, medevac }) =>
    [
      `${litres(millilitres)} drawn at ${place} into ${into} for ${programme}`,
      medevac === undefined ? '' : `, from the medevac reserve: ${medevac}`,
      leftMillilitres === null ? '.' : `; ${litres(leftMillilitres)} left in it.`,
    ].join(''),
  dipped: ({ place, millilitres }) => `Dipped at ${place}: ${litres(millilitres)}.`,
  counted: ({ place, method, seenFrom, millilitres, sealedDrums, openDrums, emptyDrums }) =>
    `${place} counted by ${method}, from the ${seenFrom}: ${litres(millilitres)}, ${sealedDrums} sealed, ${openDrums} open, ${emptyDrums} empty.`,
  held: ({ of: what, reason }) => `${of(what)} held: ${reason}.`,
  released: ({ of: what, reason, second }) => `${of(what)} released: ${reason}. Second person: ${second}.`,
  condemned: ({ reason }) => `Condemned: ${reason}.`,
  emptied: ({ place, leaves }) => `Emptied at ${place}, now ${leaves}.`,
  slung: ({ helicopter, from, to }) => `Slung by ${helicopter} from ${from} to ${to}.`,
  weighed: ({ place, grossKg }) => `Weighed at ${place}: ${kg(grossKg)} gross.`,
  'retest passed': ({ of: what, certificate, retestDue }) =>
    `${of(what)} passed its retest, certificate ${certificate}. Next retest due ${dateWords(retestDue)}.`,
  transferred: ({ drum, into, millilitres, place, batch }) =>
    `${litres(millilitres)} of batch ${batch} pumped from ${drum} into ${into} at ${place}.`,
  spilled: ({ place, millilitres, cause }) => `${litres(millilitres)} spilled at ${place}: ${cause}.`,
  lost: ({ place }) => `Not where it should be: ${place}. Nobody knows where it is.`,
  found: ({ place }) => `Found at ${place}.`,
  joined: ({ provisional, drum }) => `Provisional number ${provisional} is drum ${drum}.`,
  corrected: ({ reason }) => `Reversed by a later entry: ${reason}.`,
};

/** By which means an entry was made, as it is said. */
const means = { screen: 'at the screen', phone: 'by phone', radio: 'by radio', paper: 'from paper' } as const;

/** Below a sentence: who, when, by which means, when it was written and when it came in. */
export const sourceOf = (movement: Movement, when: (at: string) => string): string => {
  const { by, happenedAt, writtenAt, receivedAt, means: how, witnesses, note } = movement;
  const isLate = minute(writtenAt) !== minute(receivedAt);
  return [
    by,
    means[how],
    minute(writtenAt) === minute(happenedAt) ? '' : `written ${when(writtenAt)}`,
    isLate || minute(writtenAt) !== minute(happenedAt) ? `entered ${when(receivedAt)}` : '',
    witnesses.length === 0 ? '' : `seen by ${witnesses.join(', ')}`,
    note ?? '',
  ]
    .filter((part) => part !== '')
    .join(', ');
};

const minute = (at: string): string => at.slice(0, 16);
