import { useCalendar, useRead } from '../../../api/index.js';
import { inWords } from '../../../ui/index.js';
import { closedCasesSchema } from './case-read.js';

/** How the newest difference case of a place was closed, if it is among the last hundred. */
export const LastClosedCase = ({ place }: { readonly place: string }) => {
  const { day, time } = useCalendar();
  const closed = useRead('/api/closed-cases?limit=100', closedCasesSchema).value?.items ?? [];
  const last = closed.find(({ counted }) => counted.place === place);
  if (last === undefined) return null;
  const { cause, words, by, second, at } = last.closing;
  return (
    <p className="cache-words">
      Difference case of {inWords(last.counted.millilitres / 1000, 'L')} closed {day(at)} {time(at)} by {by}{' '}
      and {second}: {cause}. "{words}"
    </p>
  );
};
