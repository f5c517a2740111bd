import type { z } from 'zod';
import { useCalendar, useList } from '../../api/index.js';
import { Field, inWords, levelsWith } from '../../ui/index.js';
import { isCountOld } from './cache-list.js';
import type { Caches } from './caches-read.js';
import { caseSchema } from './side/case-read.js';

/** What is shown, how old the counts are, what is open. */
export const CachesFields = ({ caches }: { readonly caches: Caches }) => {
  const { isoDay, today, when } = useCalendar();
  const cases = useList('/api/cases', caseSchema).value;
  const counts = caches.items.map(({ stock }) => stock.lastCount);
  const never = counts.filter((count) => count === null).length;
  const ofToday = counts.filter((count) => count !== null && isoDay(count.count.at) === today).length;
  return (
    <>
      <Field label="Levels">{levelsWith(caches.laterIdeas)}</Field>
      <Field label="As of">{when(caches.asOf)}</Field>
      <Field label="Counts">
        {ofToday} today, {caches.items.filter(isCountOld).length - never} over 7 days old, {never} never
      </Field>
      <Field label="Difference cases" state={cases !== undefined && cases.length > 0 ? 'grave' : 'plain'}>
        {casesWords(cases)}
      </Field>
    </>
  );
};

type Case = z.output<typeof caseSchema>;

/** Undefined: not read yet, which is not none. */
const casesWords = (cases: readonly Case[] | undefined): string => {
  if (cases === undefined) return 'Checking...';
  if (cases.length === 0) return 'none open';
  const more = cases.length > 2 ? '...' : '';
  return `${cases.length} open: ${cases.slice(0, 2).map(shortly).join('; ')}${more}`;
};

const shortly = ({ place, differenceMillilitres }: Case): string =>
  `${place} ${inWords(Math.abs(differenceMillilitres) / 1000, 'L')} ${differenceMillilitres < 0 ? 'short' : 'over'}`;
