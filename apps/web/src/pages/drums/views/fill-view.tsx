import type { FillListAnswer } from '@drumline/contract';
import { useCalendar, useList, useMay } from '../../../api/index.js';
import {
  Button,
  EmptyLine,
  Field,
  Fields,
  figure,
  inWords,
  Lines,
  MessageLine,
  NotSetUp,
  Picture,
} from '../../../ui/index.js';
import type { Go } from '../address.js';
import { fillListSchema } from '../drums-read.js';
import { NotForYou } from './not-for-you.js';

/** Drums to fill for the approved flights, base by base. */
export const FillView = ({ go }: { readonly go: Go }) => {
  const may = useMay();
  const isMine = may('fill', 'view');
  const read = useList(isMine ? '/api/fill-lists' : null, fillListSchema);
  if (!isMine) return <NotForYou title="To fill" />;
  return (
    <Picture read={read}>
      {(lists) =>
        lists.length === 0 ? (
          <NotSetUp
            what="No base is set up yet"
            why="A base has bulk fuel, a price, empties and drums that it can fill in a day."
            step="bases"
            stepWords="Set-up, Bases"
          />
        ) : (
          lists.map((list) => <BaseFill key={list.place} list={list} go={go} />)
        )
      }
    </Picture>
  );
};

const BaseFill = ({ list, go }: { readonly list: FillListAnswer; readonly go: Go }) => {
  const { day } = useCalendar();
  const may = useMay();
  const { place, drums, litres, lines, short } = list;
  return (
    <section className="section" aria-label={`To fill at ${place}`}>
      <h2>
        To fill at {place}{' '}
        <small>
          {inWords(drums, 'drums')}, {inWords(litres, 'L')}
        </small>
      </h2>
      <Fields>
        <Field label="Bulk">{figure(list.bulkLitres)} L</Field>
        <Field label="Empties fit for use">{inWords(list.emptiesFitForUse, 'drums')}</Field>
        <Field label="Filling">{inWords(list.fillDrumsPerDay, 'drums')} a day</Field>
        <Field label="From batch">{list.batches[0]?.id ?? 'none is fit throughout'}</Field>
      </Fields>
      {short.map((words) => (
        <MessageLine key={words} what={words} />
      ))}
      {lines.length === 0 ? (
        <EmptyLine>Nothing to fill: every approved flight from {place} has its drums.</EmptyLine>
      ) : (
        <Lines
          caption={`Flights from ${place} that ask for drums`}
          captionUnseen
          rows={lines}
          keyOf={({ flight, to }) => `${flight} ${to}`}
          columns={[
            { head: 'Fill by', cell: ({ fillBy }) => <b>{day(fillBy)}</b> },
            { head: 'Drums', cell: (line) => inWords(line.drums, 'drums'), figures: true },
            { head: 'Flight', cell: ({ flight }) => flight, heads: true },
            { head: 'To', cell: ({ to }) => to },
            { head: 'Flies', cell: ({ date, departs }) => `${day(date)} ${departs}` },
            { head: 'Planned use', cell: ({ plannedUse }) => day(plannedUse), wide: true },
            {
              head: 'Mark',
              cell: ({ needsDecision }) =>
                needsDecision ? <span className="band">Needs a decision</span> : '',
            },
          ]}
        />
      )}
      {may('fill', 'enter') && (
        <div className="drums-acts">
          <Button small onPress={() => go({ act: 'fill', base: place, drum: null })}>
            Fill a drum at {place}
          </Button>
        </div>
      )}
    </section>
  );
};
