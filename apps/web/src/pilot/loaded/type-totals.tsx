import { questionWeight } from '@drumline/loading';
import { kilograms, printNumber } from '@drumline/units';
import { useState } from 'react';
import { Keypad, Main, Notice, Page } from '../../phone/index.js';
import { aboveLoaded, type LoadedDraft, type StepProps, Steps } from './loaded-steps.js';

type Box = 'byHand' | 'byAircraft';

/** The sheet's totals stay hidden until both others are in. */
export const TypeTotals = ({ here, draft, setDraft }: StepProps) => {
  const { flight } = here;
  const [box, setBox] = useState<Box>(draft.byHand === '' ? 'byHand' : 'byAircraft');
  const drums = flight.sheet!.drums.length;
  const items = flight.sheet!.legs[0]!.totals.items.length;
  const isBlank = draft.byHand === '' || draft.byAircraft === '';
  const doubt =
    draft.byHand.length < 3
      ? null
      : questionWeight(Number(draft.byHand), 'lb', { count: drums, grossKg: kilograms(180) });
  const compare = () =>
    setDraft({
      ...draft,
      step: 'compare',
      attempts: withAttempt(draft),
    });
  return (
    <Page
      above={aboveLoaded(flight)}
      title="Type your two totals"
      acts={
        <Main waits={isBlank ? 'Both totals first' : null} onPress={compare}>
          Compare
        </Main>
      }
    >
      <Steps now="totals" />
      <div className="grid tight">
        <TotalBox
          label={`By hand: the lb column, ${items} ${items === 1 ? 'row' : 'rows'}`}
          value={draft.byHand}
          now={box === 'byHand'}
          onPress={() => setBox('byHand')}
        />
        <TotalBox
          label="By the aircraft: take-off weight, after taxi"
          value={draft.byAircraft}
          now={box === 'byAircraft'}
          onPress={() => setBox('byAircraft')}
        />
        {doubt === null ? (
          <p className="small">The sheet’s totals stay hidden until both are in.</p>
        ) : (
          <Notice kind="check" word="Check." title={doubt} />
        )}
      </div>
      <Keypad value={draft[box]} onType={(typed) => setDraft({ ...draft, [box]: typed })} />
    </Page>
  );
};

/** Every pair that was compared stays on record; the same one again is no other. */
const withAttempt = ({ attempts, byHand, byAircraft }: LoadedDraft): readonly string[] => {
  const attempt = `${byHand} lb by hand, ${byAircraft} lb by the aircraft`;
  return attempts.at(-1) === attempt ? attempts : [...attempts, attempt];
};

interface TotalBoxProps {
  readonly label: string;
  readonly value: string;
  readonly now: boolean;
  readonly onPress: () => void;
}

const TotalBox = ({ label, value, now, onPress }: TotalBoxProps) => (
  <button type="button" className="total" aria-pressed={now} onClick={onPress}>
    <span className="soft">{label}</span>
    <span className={now ? 'typed now' : 'typed'}>
      <span className={now ? 'caret' : ''}>{value === '' ? '' : printNumber(Number(value))}</span>
      <span className="unit">lb</span>
    </span>
  </button>
);
