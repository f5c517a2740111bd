import { Main, Page, Press } from '../../phone/index.js';
import { balanceOf } from '../leg/balance-words.js';
import { HeldNotices, heldAboard, whyHeld } from '../leg/held-notice.js';
import { SoftNotice } from '../leg/soft-notice.js';
import type { FlightHere } from '../use-flight.js';
import { AnotherAboard } from './another-aboard.js';
import { Cabin } from './cabin.js';
import { DoesNotHold, Remedies } from './does-not-hold.js';
import { aboveLoaded, type StepProps, Steps } from './loaded-steps.js';
import { NotAsPlanned } from './not-as-planned.js';
import { type Tap, usePositions } from './use-positions.js';

const titles: Readonly<Record<Tap, string>> = {
  read: 'Read it, then tap it',
  another: 'Which place has another?',
  swap: 'Tap the two that swap',
};

/** Each place with its drum, front at the top: read it, then tap it; what stands there instead is put in. */
export const Positions = (props: StepProps) => {
  const { here, draft } = props;
  const { flight, held } = here;
  const { drums } = flight.sheet!;
  const positions = usePositions(props);
  const { tap, setTap, first, asked, aboard, onTap, ask, leave, put, backToPlaces } = positions;
  if (asked !== null)
    return <AnotherAboard here={here} aboard={aboard} position={asked} onKeep={put} onBack={backToPlaces} />;
  return (
    <Page
      above={aboveLoaded(flight)}
      title={titles[tap]}
      acts={
        tap === 'read' ? (
          <ReadingActs {...props} setTap={setTap} />
        ) : (
          <Press onPress={() => setTap('read')}>Back to reading</Press>
        )
      }
    >
      <Steps now="positions" />
      <HeldNotices here={here} onAnother={ask} onLeave={leave} />
      <SoftNotice {...props} />
      <DoesNotHold sheet={flight.sheet!}>
        <Remedies here={here} positions={positions} />
      </DoesNotHold>
      <Cabin
        drums={drums}
        held={held}
        isRead={(number) => draft.read.includes(number)}
        first={first}
        onTap={onTap}
      />
      <p className="foot">{balanceWords(flight)}</p>
      {draft.aboard.length > 0 && <NotAsPlanned {...props} />}
    </Page>
  );
};

const ReadingActs = ({
  here,
  draft,
  setDraft,
  setTap,
}: StepProps & { readonly setTap: (tap: Tap) => void }) => {
  const { flight } = here;
  const { holds } = flight.sheet!;
  const numbers = flight.sheet!.drums.map(({ number }) => number);
  const unread = numbers.filter((number) => !draft.read.includes(number));
  const waits =
    whyHeld(heldAboard(here)) ??
    (unread.length > 0 ? `${unread.length} not read yet: ${unread.join(', ')}` : null);
  return (
    <>
      {flight.request !== null && (
        <div className="two">
          <Press onPress={() => setTap('swap')}>Swap two</Press>
          <Press onPress={() => setTap('another')}>Another drum</Press>
        </div>
      )}
      {!holds && waits === null && (
        <Press onPress={() => setDraft({ ...draft, step: 'totals', standsSo: true })}>
          It stands so in the aeroplane: to tell base
        </Press>
      )}
      <Main
        waits={waits ?? (holds ? null : 'This load does not hold')}
        onPress={() => setDraft({ ...draft, step: 'totals' })}
      >
        Positions right
      </Main>
    </>
  );
};

const balanceWords = ({ sheet }: FlightHere['flight']): string => {
  const { main, moments } = balanceOf(sheet!.legs[0]!);
  return `Balance ${main === 'Inside' ? 'inside' : main}: ${moments.join('; ')}.`;
};
