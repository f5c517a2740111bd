import { useCalendar } from '../../../api/index.js';
import { EmptyLine, Lines } from '../../../ui/index.js';
import type { PaperEntries } from './paper-read.js';
import { silenceWords } from './silence-words.js';

/** What base has from radio and paper, by when it was written; when it was entered, and by whom, beside it. */
export const EnteredList = ({ entries }: { readonly entries: PaperEntries }) => {
  const calendar = useCalendar();
  const silence = silenceWords(entries, calendar);
  if (entries.items.length === 0)
    return (
      <EmptyLine>Nothing was entered by radio or from paper since {calendar.when(entries.since)}.</EmptyLine>
    );
  return (
    <>
      {silence !== null && <p className="paper-silence">{silence}</p>}
      <Lines
        caption="Entered by radio and from paper"
        captionUnseen
        numbered
        rows={entries.items}
        keyOf={({ id }) => id}
        columns={[
          { head: 'Written at', cell: ({ writtenAt }) => calendar.when(writtenAt) },
          { head: 'Entered at', cell: ({ enteredAt }) => calendar.when(enteredAt) },
          {
            head: 'What',
            heads: true,
            cell: ({ flight, what }) => (flight === null ? what : `${flight} ${what}`),
          },
          { head: 'Said or written by', cell: ({ by }) => by },
          { head: 'Entered by', wide: true, cell: ({ enteredBy }) => enteredBy ?? 'the program' },
          { head: 'Means', cell: ({ means }) => means },
        ]}
      />
    </>
  );
};
