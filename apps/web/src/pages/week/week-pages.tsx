import { mayOfAll, useMe } from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { ComparePage } from './compare/compare-page.js';
import { PlansPage } from './plan/plans-page.js';
import { WeekPage } from './week-page.js';

/** The board; below it the list of plans, and one of them beside what stood. Who sees plans only begins at their list. */
export const WeekPages = ({ at }: PageProps) => {
  const [word, id] = at;
  const seesFlights = mayOfAll(useMe(), 'approve flight', 'view');
  if (word === 'plans' || (word === undefined && !seesFlights)) return <PlansPage />;
  if (word === 'compare' && id !== undefined) return <ComparePage key={id} id={id} />;
  return <WeekPage at={at} />;
};
