import type { Missing } from '@drumline/contract';
import { Link } from 'wouter';
import { z } from 'zod';
import { useList, useMay, useRead } from '../../api/index.js';
import { bothOf, Picture } from '../../ui/index.js';
import { BringDocument } from './begin/bring-document.js';
import { type Demo, demoSchema, LoadDemo, PlanLink, RemoveDemo } from './begin/demo-panel.js';
import { below, MissingList } from './begin/missing-list.js';
import { useCurrency } from './kept/kept.js';

const missingSchema: z.ZodType<Missing> = z.object({
  at: z.string() as unknown as z.ZodType<Missing['at']>,
  of: z.string(),
  field: z.string(),
  what: z.string(),
  next: z.string(),
});

/** Where set-up stands: on an empty installation the three ways to begin, otherwise what is missing for a plan. */
export const Overview = () => {
  const missing = useList('/api/scenario/missing', missingSchema);
  const demo = useRead('/api/demo', demoSchema);
  return (
    <Picture read={bothOf(missing, demo)}>
      {([lacks, state]) =>
        state.canLoad && isBare(lacks) ? <Begin /> : <Standing missing={lacks} demo={state} />
      }
    </Picture>
  );
};

/** Nobody has set anything up; where somebody has begun by hand, what is missing is shown instead. */
const isBare = (missing: readonly Missing[]): boolean =>
  (['settings', 'policy'] as const).every((part) => missing.some(({ at }) => at === part));

const Begin = () => {
  const mayImport = useMay()('import and export', 'enter');
  const off = mayImport ? undefined : 'The operations manager or set-up does this.';
  return (
    <div className="set-up-overview">
      <p className="read">
        This installation is empty. Begin in one of three ways; each ends at the first plan. Nothing needs an
        edited file.
      </p>
      <section className="section">
        <h2>Make your own territory</h2>
        <p className="read">
          A base, a strip with its cache, an aeroplane, a pilot and your rules are enough for a first plan.
          Every step says what is still missing. Invented examples can be copied as a beginning.
        </p>
        <p className="read">
          <Link href="/set-up/begin">Begin, step by step</Link>
        </p>
      </section>
      <BringDocument offBecause={off} />
      <LoadDemo />
    </div>
  );
};

const Standing = ({ missing, demo }: { readonly missing: readonly Missing[]; readonly demo: Demo }) => (
  <div className="set-up-overview">
    <MissingList
      missing={missing}
      to={(section, id) => `/set-up/${section}${below(id)}`}
      currency={useCurrency()}
    />
    {missing.length === 0 && <PlanLink />}
    {missing.length === 0 && demo.loaded === undefined && <BesidesPlan />}
    {demo.loaded !== undefined && <RemoveDemo loaded={demo.loaded} />}
  </div>
);

/** What no plan waits for, and the days of flying do. */
const BesidesPlan = () => (
  <section className="section" aria-label="Needed besides a plan">
    <h2>Needed besides a plan</h2>
    <ul>
      <li>
        Drums that stand there already: their <Link href="/set-up/batches">batches</Link>, then their numbers
        as a <Link href="/set-up/files">file</Link>. A plan without them fills every drum anew.
      </li>
      <li>
        <Link href="/set-up/people">People</Link> who sign in: dispatcher, storekeeper, and each pilot with
        the crew name that Pilots has.
      </li>
      <li>
        <Link href="/set-up/tie-down">Tie-down</Link> and{' '}
        <Link href="/set-up/dangerous-goods">dangerous goods</Link>: load sheets say so where they are not
        given.
      </li>
    </ul>
  </section>
);
