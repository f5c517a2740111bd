import type { ReactNode } from 'react';
import { useCalendar, useRead } from '../../../api/index.js';
import { EmptyLine, inWords, LevelMark, Lines, Picture, useKeys } from '../../../ui/index.js';
import type { Go } from '../address.js';
import { type Drum, drumSchema, pageOf } from '../drums-read.js';
import { factsOf } from '../facts.js';
import { DrumLink, moveAmongDrums } from './drum-link.js';

interface DrumListProps {
  readonly title: string;
  readonly path: string;
  /** What is said where there is none. */
  readonly empty: ReactNode;
  readonly current: string | null;
  readonly go: Go;
}

export const DrumList = ({ title, path, empty, current, go }: DrumListProps) => {
  const read = useRead(path, pageOf(drumSchema));
  useKeys({
    ArrowDown: { does: 'Next drum of the list', act: () => moveAmongDrums(1) },
    ArrowUp: { does: 'Drum before', act: () => moveAmongDrums(-1) },
  });
  return (
    <Picture read={read}>
      {({ items, next }) =>
        items.length === 0 ? (
          <>
            <h2>{title}</h2>
            {typeof empty === 'string' ? <EmptyLine>{empty}</EmptyLine> : empty}
          </>
        ) : (
          <>
            <div className="drums-table">
              <Drums title={title} drums={items} current={current} go={go} />
            </div>
            {next !== null && (
              <p className="drums-note">
                The first {inWords(items.length, 'drums')} by number. Type the last digits to find another.
              </p>
            )}
          </>
        )
      }
    </Picture>
  );
};

interface DrumsProps {
  readonly title: string;
  readonly drums: readonly Drum[];
  readonly current: string | null;
  readonly go: Go;
}

const Drums = ({ title, drums, current, go }: DrumsProps) => {
  const { today, day, date } = useCalendar();
  const facts = (drum: Drum) => factsOf(drum, today, date);
  return (
    <Lines
      caption={title}
      rows={drums}
      keyOf={({ number }) => number}
      isCurrent={({ number }) => number === current}
      columns={[
        { head: 'Number', cell: ({ number }) => <DrumLink number={number} go={go} />, heads: true },
        { head: 'Where', cell: (drum) => facts(drum).where },
        { head: 'What is in it', cell: (drum) => facts(drum).content },
        { head: 'Batch', cell: ({ batch }) => batch ?? 'not known' },
        {
          head: 'May it be used',
          cell: (drum) =>
            facts(drum).isHeld ? <LevelMark level="held" words={facts(drum).use} /> : facts(drum).use,
        },
        {
          head: 'Opened',
          cell: ({ openedAt }) => (openedAt === null ? '' : day(openedAt)),
          wide: true,
        },
      ]}
    />
  );
};
