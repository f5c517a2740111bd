import { useCalendar, useList, useMay } from '../../../api/index.js';
import { Button, EmptyLine, inWords, Picture } from '../../../ui/index.js';
import type { Go } from '../address.js';
import { proposalSchema, type StandingHold, standingHoldSchema } from '../drums-read.js';
import { Agreement } from '../hold/agreement.js';
import { releasedBy, subjectWords } from '../hold/hold-words.js';
import { DrumList } from './drum-list.js';

interface HeldViewProps {
  readonly current: string | null;
  readonly go: Go;
}

/** Holds that stand, what waits for a second person, and every drum that is out of use. */
export const HeldView = ({ current, go }: HeldViewProps) => {
  const may = useMay();
  const holds = useList(may('hold', 'view') ? '/api/holds' : null, standingHoldSchema);
  return (
    <>
      {may('hold', 'view') && (
        <Picture read={holds}>
          {(standing) => (
            <section className="section" aria-label="Holds that stand">
              <h2>
                Holds that stand <small>{standing.length}</small>
              </h2>
              {standing.length === 0 && <EmptyLine>Nothing is held.</EmptyLine>}
              {standing.map((hold) => (
                <Standing key={subjectWords(hold.of)} hold={hold} go={go} />
              ))}
            </section>
          )}
        </Picture>
      )}
      <OtherProposals />
      <DrumList
        title="Drums held or condemned"
        path="/api/drums?limit=200&view=held"
        empty="No drum is held or condemned."
        current={current}
        go={go}
      />
    </>
  );
};

const Standing = ({ hold, go }: { readonly hold: StandingHold; readonly go: Go }) => {
  const { when } = useCalendar();
  const { of, drums, litres, places, reason, by, at } = hold;
  const open = () =>
    'batch' in of
      ? go({ act: 'hold', batch: of.batch, drum: null })
      : go({ act: 'hold', batch: null, drum: of.drum });
  return (
    <div className="drums-standing">
      <p>
        <b className="key">{subjectWords(of)}</b> {inWords(drums, 'drums')}, {inWords(litres, 'L')}:{' '}
        {places.join(', ') || 'at no place'}
        <br />
        <small>
          {reason}, {by}, {when(at)}
        </small>
      </p>
      <Button small onPress={open}>
        Open<span className="unseen"> {subjectWords(of)}</span>
      </Button>
    </div>
  );
};

/** Retests, and corrections of holds: releases stand in the sheet of their hold. */
const OtherProposals = () => {
  const read = useList('/api/proposals', proposalSchema);
  return (
    <Picture read={read}>
      {(proposals) =>
        proposals
          .filter((proposal) => proposal.act === 'release hold' && releasedBy(proposal) === null)
          .map((proposal) => <Agreement key={proposal.id} proposal={proposal} />)
      }
    </Picture>
  );
};
