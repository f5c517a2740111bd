import type { Calendar } from '../../../api/index.js';
import type { PaperEntries } from './paper-read.js';

/** "Nothing reached base from Tue 16:58 to Wed 14:00: 12 entries from paper, written Tue 17:20 to Wed 09:50." */
export const silenceWords = ({ items, silence }: PaperEntries, { when }: Calendar): string | null => {
  const paper = items.filter(({ means }) => means === 'paper');
  const [first, last] = [paper[0], paper.at(-1)];
  if (silence === null || first === undefined || last === undefined) return null;
  const from = silence.from === null ? '' : ` from ${when(silence.from)}`;
  const until = silence.until === null ? '' : ` to ${when(silence.until)}`;
  const many = paper.length === 1 ? '1 entry' : `${paper.length} entries`;
  return `Nothing reached base${from}${until}: ${many} from paper, written ${when(first.writtenAt)} to ${when(last.writtenAt)}.`;
};
