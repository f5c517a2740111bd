import { z } from 'zod';
import { put, remove, useAct, useCalendar, useList, useMe, useTerritoryTime } from '../../../api/index.js';
import { Button, EmptyLine, Lines, Picture, ProblemLine, stillToSignWords } from '../../../ui/index.js';
import { WhatIsSigned } from './what-is-signed.js';

export const proposalSchema = z.object({
  id: z.string(),
  subject: z.string(),
  payload: z.record(z.string(), z.unknown()),
  proposedBy: z.string(),
  proposedAt: z.string(),
  agreed: z.array(z.string()),
  draftedBy: z.string(),
  signedBy: z.array(z.string()),
  stillToSign: z.object({ people: z.number(), roles: z.array(z.string()) }),
});
export type Proposal = z.output<typeof proposalSchema>;

/** What two people have to put their names to. */
export const SignaturesPage = () => (
  <Picture read={useList('/api/proposals', proposalSchema)}>
    {(proposals) =>
      proposals.length === 0 ? (
        <EmptyLine>Nothing waits for a second person.</EmptyLine>
      ) : (
        <div className="set-up-list">
          <Signatures proposals={proposals} caption="Waiting for signatures" />
        </div>
      )
    }
  </Picture>
);

interface SignaturesProps {
  readonly proposals: readonly Proposal[];
  readonly caption: string;
}

export const Signatures = ({ proposals, caption }: SignaturesProps) => {
  const me = useMe();
  const { when } = useCalendar();
  const territoryTime = useTerritoryTime();
  const sign = useAct(async (ids: readonly string[]) => {
    for (const id of ids) await put(`/api/proposals/${id}/agreement`, {});
  }, '/api/proposals');
  const withdraw = useAct((id: string) => remove(`/api/proposals/${id}`), '/api/proposals');
  const mine = proposals.filter(({ agreed }) => !agreed.includes(me.id)).map(({ id }) => id);
  return (
    <>
      <Lines
        caption={caption}
        rows={proposals}
        keyOf={({ id }) => id}
        columns={[
          { head: 'What', heads: true, cell: (proposal) => <WhatIsSigned proposal={proposal} /> },
          {
            head: 'Drafted by',
            cell: ({ draftedBy, proposedAt }) => `${draftedBy}, ${when(territoryTime(proposedAt))}`,
          },
          { head: 'First', cell: ({ signedBy }) => signedBy[0] ?? notYet },
          {
            head: 'Second',
            cell: ({ signedBy, stillToSign }) => (
              <>
                {signedBy[1] ?? notYet}
                <br />
                <small>{stillToSignWords(stillToSign)}</small>
              </>
            ),
          },
          {
            head: 'Acts',
            cell: ({ id, proposedBy, agreed, signedBy }) =>
              agreed.includes(me.id) ? (
                <>
                  <small>
                    {signedBy.includes(me.fullName) ? 'Signed by you.' : 'Drafted by you.'} Somebody else
                    signs.{' '}
                  </small>
                  {proposedBy === me.id && (
                    <Button small onPress={() => void withdraw.run(id)}>
                      Withdraw
                    </Button>
                  )}
                </>
              ) : (
                <Button small busy={sign.isSending} onPress={() => void sign.run([id])}>
                  Sign
                </Button>
              ),
          },
        ]}
      />
      {mine.length > 1 && (
        <Button busy={sign.isSending} onPress={() => void sign.run(mine)}>
          Sign all {mine.length}
        </Button>
      )}
      <ProblemLine problem={sign.problem ?? withdraw.problem} />
    </>
  );
};

const notYet = <span className="surface unknown">not yet</span>;
