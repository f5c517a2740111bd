import { z } from 'zod';
import { useCalendar, useList, useRead } from '../../api/index.js';
import { EmptyLine, inWords, Lines, Picture, Qty, TitleBlock } from '../../ui/index.js';

const programmeSchema = z.object({ code: z.string(), name: z.string() });
const taskSchema = z.object({
  date: z.string(),
  place: z.string(),
  hours: z.number(),
  litres: z.number(),
  note: z.string().nullable(),
});
const drawnSchema = z.object({
  litres: z.number(),
  items: z.array(z.object({ at: z.string(), date: z.string(), place: z.string(), litres: z.number() })),
});
const levelSchema = z.object({ place: z.string(), level: z.enum(['low', 'enough']) });

/** All that a customer's field leader sees: own tasks, own litres, and of caches whether there is enough. */
export const ProgrammePage = () => {
  const programmes = useList('/api/own-programmes', programmeSchema);
  return (
    <>
      <TitleBlock title="Own programme" sub={programmes.value?.map(({ code }) => code).join(', ')} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolled by key */}
      <section className="work" aria-label="Tasks, litres and caches" tabIndex={0}>
        <Picture read={programmes}>
          {(own) =>
            own.length === 0 ? (
              <EmptyLine>No programme is named for you yet. Ask the operations manager.</EmptyLine>
            ) : (
              own.map((programme) => <OneProgramme key={programme.code} {...programme} />)
            )
          }
        </Picture>
        <CacheLevels />
      </section>
    </>
  );
};

const OneProgramme = ({ code, name }: z.output<typeof programmeSchema>) => (
  <section aria-label={`Programme ${code}`}>
    <h2>
      {code} {name}
    </h2>
    <Tasks code={code} />
    <Drawn code={code} />
  </section>
);

const Tasks = ({ code }: { readonly code: string }) => {
  const { date } = useCalendar();
  const read = useList(`/api/own-programmes/${encodeURIComponent(code)}/tasks`, taskSchema);
  return (
    <Picture read={read}>
      {(tasks) =>
        tasks.length === 0 ? (
          <EmptyLine>No task of {code} is planned.</EmptyLine>
        ) : (
          <Lines
            caption={`Tasks of ${code}, as planned`}
            rows={tasks}
            keyOf={(task) => `${task.date} ${task.place} ${task.hours}`}
            numbered
            columns={[
              { head: 'Day', heads: true, cell: (task) => date(task.date) },
              { head: 'Place', cell: ({ place }) => place },
              { head: 'Flying', figures: true, cell: ({ hours }) => inWords(hours, 'h', 1) },
              { head: 'Fuel', figures: true, cell: ({ litres }) => <Qty value={litres} unit="L" /> },
              { head: 'Note', wide: true, cell: ({ note }) => note ?? '' },
            ]}
          />
        )
      }
    </Picture>
  );
};

const Drawn = ({ code }: { readonly code: string }) => {
  const { date } = useCalendar();
  const read = useRead(`/api/own-programmes/${encodeURIComponent(code)}/litres`, drawnSchema);
  return (
    <Picture read={read}>
      {({ items, litres }) =>
        items.length === 0 ? (
          <EmptyLine>Nothing has been drawn for {code} yet.</EmptyLine>
        ) : (
          <Lines
            caption={`Drawn for ${code}, the latest first`}
            rows={items}
            keyOf={(draw) => `${draw.at} ${draw.place} ${draw.litres}`}
            numbered
            columns={[
              { head: 'Day', heads: true, cell: (draw) => date(draw.date) },
              { head: 'Place', cell: ({ place }) => place },
              { head: 'Fuel', figures: true, cell: (draw) => inWords(draw.litres, 'L') },
            ]}
            sum={['Sum', '', inWords(litres, 'L')]}
          />
        )
      }
    </Picture>
  );
};

const CacheLevels = () => (
  <Picture read={useList('/api/cache-levels', levelSchema)}>
    {(caches) => (
      <Lines
        caption="Fuel at the caches, all programmes together"
        rows={caches}
        keyOf={({ place }) => place}
        columns={[
          { head: 'Cache', heads: true, cell: ({ place }) => place },
          { head: 'Level', cell: ({ level }) => (level === 'low' ? 'Low' : 'Enough') },
        ]}
      />
    )}
  </Picture>
);
