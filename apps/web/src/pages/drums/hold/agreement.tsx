import { put, remove, useAct, useCalendar, useMay, useMe, useTerritoryTime } from '../../../api/index.js';
import { Button, inWords, ProblemLine } from '../../../ui/index.js';
import type { Proposal } from '../drums-read.js';
import { sentenceOfProposal } from './proposal-words.js';

interface AgreementProps {
  readonly proposal: Proposal;
  /** How many drums it brings back into use; undefined: it is not about that. */
  readonly drums?: number;
}

/** Both names as fields of the same form; the second stays dotted until somebody else signs in to it. */
export const Agreement = ({ proposal, drums }: AgreementProps) => {
  const { id: me, fullName } = useMe();
  const { when } = useCalendar();
  const territoryTime = useTerritoryTime();
  const may = useMay();
  const agree = useAct(() => put(`/api/proposals/${proposal.id}/agreement`, {}));
  const withdraw = useAct(() => remove(`/api/proposals/${proposal.id}`));
  const isMine = proposal.agreed.includes(me);
  const isOpenToMe = may('release hold', 'decide');
  const why = isMine
    ? 'Your name is the first. Somebody else of fuel quality has to agree.'
    : isOpenToMe
      ? undefined
      : 'Two people of fuel quality decide this.';
  return (
    <section className="drums-form" aria-label={`Waits for a second person: ${proposal.subject}`}>
      <h2>Waits for a second person</h2>
      <p>{sentenceOfProposal(proposal)}</p>
      <div className="drums-two">
        <p>
          <small>First person</small>
          <br />
          <b>{proposal.agreedBy[0]}</b> <small>{when(territoryTime(proposal.proposedAt))}</small>
        </p>
        <p className="drums-second">
          <small>Second person</small>
          <br />
          {isMine || !isOpenToMe ? 'waits' : `${fullName}, when you press`}
        </p>
      </div>
      <ProblemLine problem={agree.problem ?? withdraw.problem} />
      <div className="drums-acts">
        <Button kind="last" busy={agree.isSending} offBecause={why} onPress={() => void agree.run()}>
          {drums === undefined ? 'Agree' : `Agree: release ${inWords(drums, 'drums')}`}
        </Button>
        {(isMine || isOpenToMe) && (
          <Button busy={withdraw.isSending} onPress={() => void withdraw.run()}>
            Withdraw it
          </Button>
        )}
      </div>
    </section>
  );
};
