import { useQuery } from '@tanstack/react-query';
import { z } from 'zod';
import { ApiProblem, post, useCalendar } from '../../../api/index.js';
import { figure, Lines } from '../../../ui/index.js';
import type { KeptLine } from './kept.js';
import { type TouchedCache, touchedDays } from './touched-days.js';

const levels = z.object({ usableLitres: z.array(z.number()) });
const side = z.object({ minimumLitres: z.number(), criticalLitres: z.number(), levels });
const answerSchema = z.object({
  dates: z.array(z.string()),
  items: z.array(z.object({ place: z.string(), before: side, after: side })),
});

interface TouchedProps {
  readonly kind: string;
  readonly data: unknown;
  readonly line: KeptLine | null;
}

/** Which caches a change touches, asked of the server before it is made. */
export const Touched = ({ kind, data, line }: TouchedProps) => {
  const change = { kind, id: line?.id ?? nobody, data };
  const asked = useQuery({
    queryKey: ['consequence', JSON.stringify(change)],
    queryFn: async () => (await post('/api/projections/consequence', change, { schema: answerSchema })).body,
    retry: false,
  });
  const { day } = useCalendar();
  if (asked.error instanceof ApiProblem && asked.error.status >= 500) return <p>{asked.error.why}</p>;
  // Not filled in yet: what is wrong is said when it is saved.
  if (asked.data === undefined) return null;
  const rows = touchedDays(asked.data);
  if (rows.length === 0) return <p role="status">No cache is touched in the days looked ahead.</p>;
  return (
    <div role="status" className="set-up-touched">
      <Lines<TouchedCache>
        caption="Caches it touches"
        rows={rows}
        keyOf={({ place, date }) => `${place} ${date}`}
        columns={[
          { head: 'Cache', heads: true, cell: ({ place }) => place },
          { head: 'Day', cell: ({ date }) => day(date) },
          { head: 'Now', figures: true, cell: ({ before }) => `${figure(before)} L` },
          { head: 'After', figures: true, cell: ({ after }) => <b>{figure(after)} L</b> },
          { head: 'Finding', cell: ({ words }) => words },
        ]}
      />
    </div>
  );
};

/** A thing that is not there yet needs a name to be asked about. */
const nobody = '00000000-0000-4000-8000-000000000000';
