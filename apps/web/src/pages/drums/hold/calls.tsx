import { z } from 'zod';
import { put, type Read, useAct, useCalendar, useMay, useRead } from '../../../api/index.js';
import { Button, ProblemLine } from '../../../ui/index.js';

const callsSchema = z.object({
  calls: z.array(z.object({ called: z.string(), by: z.string(), at: z.string() })),
});

export type Calls = z.output<typeof callsSchema>['calls'];

/** Who has been told of a hold by radio; before it is set there is nobody to tell. */
export const useCalls = (hold: string | null): Read<{ readonly calls: Calls }> =>
  useRead(hold === null ? null : `/api/holds/${hold}/not-heard`, callsSchema);

interface CallListProps {
  readonly hold: string;
  /** Places and flights that have a script. */
  readonly all: readonly string[];
  readonly calls: Calls;
  /** Whose script is shown. */
  readonly shown: string;
  readonly onCalled: () => void;
}

/** Who is still to be called: it gets shorter with every call, for everybody who looks. */
export const CallList = ({ hold, all, calls, shown, onCalled }: CallListProps) => {
  const { when } = useCalendar();
  const mayCall = useMay()('hold', 'enter');
  const call = useAct((name: string) => put(`/api/holds/${hold}/calls/${encodeURIComponent(name)}`));
  const left = toCall(all, calls);
  const made = calls.find(({ called }) => called === shown);
  const press = async () => {
    if ((await call.run(shown)) !== undefined) onCalled();
  };
  return (
    <div className="drums-calls">
      {mayCall && (
        <Button
          small
          kind="main"
          busy={call.isSending}
          offBecause={made === undefined ? undefined : `Called ${when(made.at)}, ${made.by}.`}
          onPress={() => void press()}
        >
          {`${shown} has been called`}
        </Button>
      )}
      <p role="status">
        {left.length === 0 ? (
          'Every place and crew has been called.'
        ) : (
          <>
            <b>To call: {left.join(', ')}.</b> {calls.length} of {all.length} called.
          </>
        )}
      </p>
      <ProblemLine problem={call.problem} />
    </div>
  );
};

export const toCall = (all: readonly string[], calls: Calls): readonly string[] =>
  all.filter((name) => !calls.some(({ called }) => called === name));
