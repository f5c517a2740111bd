import type { PhoneFlight } from '@drumline/contract';
import { pounds, print } from '@drumline/units';
import { numbersOf } from './opened-flight.js';

export interface DifferenceRow {
  readonly of: string;
  readonly opened: string;
  readonly newest: string;
}

/** What the two loads do not have in common, the drums first. */
export const differences = (opened: PhoneFlight, newest: PhoneFlight): readonly DifferenceRow[] => {
  const [before, after] = [numbersOf(opened), numbersOf(newest)];
  const rows: readonly DifferenceRow[] = [
    { of: 'Drums', opened: String(before.length), newest: String(after.length) },
    { of: 'Off the load', opened: '', newest: before.filter((number) => !after.includes(number)).join(' ') },
    { of: 'Onto the load', opened: '', newest: after.filter((number) => !before.includes(number)).join(' ') },
    { of: 'Aircraft', opened: opened.aircraft, newest: newest.aircraft },
    { of: 'Off at', opened: `${opened.date} ${opened.departs}`, newest: `${newest.date} ${newest.departs}` },
    { of: 'By', opened: opened.route.join(' '), newest: newest.route.join(' ') },
    ...weightRows(opened, newest),
    {
      of: 'Check code',
      opened: opened.sheet?.checkCode ?? 'none',
      newest: newest.sheet?.checkCode ?? 'none',
    },
  ];
  return rows.filter((row) => row.opened !== row.newest);
};

/** Landing weight and limit of the first leg; the totals that are typed blind are not among them. */
const weightRows = (opened: PhoneFlight, newest: PhoneFlight): readonly DifferenceRow[] => {
  const [before, after] = [landingOf(opened), landingOf(newest)];
  const lb = (weight: number | undefined) => (weight === undefined ? '' : print(pounds(weight), 'lb'));
  return [
    { of: 'Landing', opened: lb(before?.lb), newest: lb(after?.lb) },
    { of: 'Landing limit', opened: lb(before?.limit?.lb), newest: lb(after?.limit?.lb) },
    {
      of: 'Surface',
      opened: opened.sheet?.legs[0]?.surface ?? '',
      newest: newest.sheet?.legs[0]?.surface ?? '',
    },
  ];
};

const landingOf = ({ sheet }: PhoneFlight) =>
  sheet?.legs[0]?.rows.find(({ kind, label }) => kind === 'sum' && label.startsWith('land '));
