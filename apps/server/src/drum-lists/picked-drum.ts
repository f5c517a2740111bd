import type { PickedDrum } from '@drumline/contract';
import type { Where } from '@drumline/stock';
import { dateWords, type IsoDate } from '@drumline/units';
import type { DrumNow } from '../stock/drums.service.js';

/** For what a drum is to be taken: from the base, fit until the plan burns it. */
interface Purpose {
  readonly from: string;
  readonly plannedUse: IsoDate;
}

/** A drum of a pick list as it is now, with what speaks against taking it. */
export const pickedDrum = (drum: DrumNow, purpose: Purpose): PickedDrum => {
  const { number, where, batch, content, litres, grossKg, retestDue } = drum;
  return { number, where, batch, content, litres, grossKg, retestDue, against: against(drum, purpose) };
};

const against = (drum: DrumNow, { from, plannedUse }: Purpose): readonly string[] => {
  const { where, content, held, condemned, retestDue } = drum;
  return [
    ...(where.kind === 'at' && where.place === from ? [] : [`${whereWords(where)}, not at ${from}.`]),
    ...(content === 'filled sealed' ? [] : [`It is ${content}, not filled and sealed.`]),
    ...(condemned === null ? [] : [`Condemned by ${condemned.by}: ${condemned.reason}.`]),
    ...(held === null ? [] : [`HOLD by ${held.by}: ${held.reason}.`]),
    ...(retestDue === null ? ['Its retest date is not known.'] : []),
    ...(retestDue !== null && retestDue < plannedUse
      ? [`Its retest date, ${dateWords(retestDue)}, comes before its planned use, ${dateWords(plannedUse)}.`]
      : []),
  ];
};

const whereWords = (where: Where): string => {
  if (where.kind === 'at') return `It is at ${where.place}`;
  if (where.kind === 'aboard') return `It is aboard ${where.flight}`;
  return where.lastSeenAt === null ? 'Nobody knows where it is' : `It was last seen at ${where.lastSeenAt}`;
};
