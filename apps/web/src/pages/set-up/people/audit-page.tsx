import { useState } from 'react';
import { z } from 'zod';
import { useCalendar, useMay, useRead } from '../../../api/index.js';
import { Button, EmptyLine, Lines, Picture } from '../../../ui/index.js';

const pageSchema = z.object({
  items: z.array(
    z.object({
      id: z.string(),
      at: z.string(),
      person: z.string(),
      did: z.string(),
      subject: z.string(),
      detail: z.record(z.string(), z.unknown()),
    }),
  ),
  next: z.string().nullable(),
});

/** Who did what, the newest first. */
export const AuditPage = () => {
  const may = useMay()('audit', 'view');
  const [after, setAfter] = useState<string>();
  const { date, time } = useCalendar();
  const page = useRead(
    may ? `/api/audit?limit=50${after === undefined ? '' : `&after=${after}`}` : null,
    pageSchema,
  );
  if (!may) return <EmptyLine>The operations manager and fuel quality see the audit.</EmptyLine>;
  return (
    <Picture read={page}>
      {({ items, next }) => (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and holds nothing else that takes the focus
        <section className="set-up-list set-up-audit" aria-label="Audit" tabIndex={0}>
          <Lines
            caption="Audit, the newest first; times as on the wall"
            rows={items}
            keyOf={({ id }) => id}
            columns={[
              { head: 'Entry', figures: true, cell: ({ id }) => id },
              { head: 'When', cell: ({ at }) => `${date(at)} ${time(at)}` },
              { head: 'Who', heads: true, cell: ({ person }) => person },
              { head: 'Did', cell: ({ did, subject }) => `${did} ${subject}` },
              { head: 'More', cell: ({ detail }) => detailWords(detail) },
            ]}
          />
          <div className="set-up-acts">
            {after !== undefined && <Button onPress={() => setAfter(undefined)}>Newest</Button>}
            {next !== null && <Button onPress={() => setAfter(next)}>Older</Button>}
          </div>
        </section>
      )}
    </Picture>
  );
};

const detailWords = (detail: Readonly<Record<string, unknown>>): string =>
  Object.entries(detail)
    // There is one of it: its subject has said which.
    .filter(([name, value]) => !(name === 'id' && value === 'current'))
    .map(([name, value]) => `${name} ${Array.isArray(value) ? value.join(', ') : String(value)}`)
    .join('; ');
