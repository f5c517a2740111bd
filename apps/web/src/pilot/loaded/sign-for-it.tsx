import { Main, Notice, NotKept, Page, Press } from '../../phone/index.js';
import { aboveLoaded, type StepProps } from './loaded-steps.js';
import { reasonWords, whyNotSigned } from './signing.js';

export interface Signed {
  readonly by: string;
  readonly reason: string;
  readonly second: string;
}

interface SignForItProps extends StepProps {
  readonly by: string;
  /** "2,378 lb and 2,387 lb: 9 lb apart". */
  readonly difference: string;
  readonly notKept: string | null;
  readonly onSign: (signed: Signed) => void;
  readonly onBack: () => void;
}

/** The commander accepts the difference before a second person; both figures and every attempt go to base. */
export const SignForIt = (props: SignForItProps) => {
  const { here, draft, setDraft, by, difference, notKept, onSign, onBack } = props;
  const signed = { by, reason: reasonWords(draft.reason, draft.attempts), second: draft.second.trim() };
  return (
    <Page
      above={aboveLoaded(here.flight)}
      title="Sign for it"
      acts={
        <>
          <NotKept words={notKept} />
          <Press onPress={onBack}>Back to compare</Press>
          <Main waits={whyNotSigned(by, draft.reason, draft.second)} onPress={() => onSign(signed)}>
            Loaded, signed
          </Main>
        </>
      }
    >
      <Notice kind="stop" word="Loaded with a difference." title={difference}>
        It takes two people. Both figures go to base.
      </Notice>
      <div className="grid">
        <label className="field">
          Why {by} accepts it
          <input
            value={draft.reason}
            maxLength={300}
            onChange={({ target }) => setDraft({ ...draft, reason: target.value })}
          />
        </label>
        <label className="field">
          Second person, full name
          <input
            value={draft.second}
            maxLength={100}
            autoComplete="off"
            onChange={({ target }) => setDraft({ ...draft, second: target.value })}
          />
        </label>
        <p className="small">The second person has looked at both figures, here and now.</p>
      </div>
    </Page>
  );
};
