import { useState } from 'react';
import { ActForm } from '../../../ui/act-form.js';
import { Button, Choice, figure } from '../../../ui/index.js';
import type { Fallback, LoadedFlight } from '../load-read.js';
import type { LoadActs as Acts } from '../use-load-acts.js';
import { insteadWords, tooFewFit, withOther } from './standing.js';
import { TakeFit } from './take-fit.js';
import { TakeLess } from './take-less.js';
import { takeLessWords } from './take-less-words.js';

interface LoadActsProps {
  readonly flight: LoadedFlight;
  readonly fallback: Fallback | undefined;
  readonly acts: Acts;
  readonly mayAmend: boolean;
  readonly mayMove: boolean;
  readonly onMove: () => void;
}

/** Swap two drums, take the next oldest, take what a soft strip lets go. */
export const LoadActs = ({ flight, fallback, acts, mayAmend, mayMove, onMove }: LoadActsProps) => {
  const [asked, setAsked] = useState<'next oldest' | 'fewer' | 'fit' | null>(null);
  const before = ['offered', 'approved', 'given'].includes(flight.state);
  const off = before ? undefined : `It is ${flight.state}: drums change before it is loaded.`;
  const close = () => setAsked(null);
  if (asked === 'next oldest') return <TakeNextOldest flight={flight} acts={acts} onClose={close} />;
  const said = fallback === undefined ? null : takeLessWords(flight, fallback);
  if (asked === 'fewer' && fallback !== undefined && said !== null)
    return <TakeLess {...{ flight, fallback, said, acts }} onClose={close} />;
  const { insteadOfHeld: instead } = flight;
  if (asked === 'fit' && instead !== null) return <TakeFit {...{ flight, instead, acts }} onClose={close} />;
  return (
    <div className="acts load-acts">
      {mayAmend && instead !== null && before && (
        <Button
          kind="main"
          press="f"
          offBecause={tooFewFit(instead, flight.route[0]!)}
          onPress={() => setAsked('fit')}
        >
          {insteadWords(instead)}
        </Button>
      )}
      {mayMove && (
        <Button press="s" offBecause={off} onPress={onMove}>
          Swap two drums
        </Button>
      )}
      {mayAmend && (
        <Button press="n" offBecause={off} onPress={() => setAsked('next oldest')}>
          Take next oldest
        </Button>
      )}
      {mayAmend && said !== null && before && (
        <Button
          kind={flight.needsDecision === null || instead !== null ? 'plain' : 'main'}
          press="t"
          onPress={() => setAsked('fewer')}
        >
          {said.title}
        </Button>
      )}
    </div>
  );
};

interface TakeNextOldestProps {
  readonly flight: LoadedFlight;
  readonly acts: Acts;
  readonly onClose: () => void;
}

/** The drum that stays is chosen; which comes in its place is said before it is done. */
const TakeNextOldest = ({ flight, acts, onClose }: TakeNextOldestProps) => {
  const drums = flight.load?.sheet.drums ?? [];
  const [leave, setLeave] = useState(drums[0]?.number ?? '');
  const stays = drums.find(({ number }) => number === leave);
  const next = flight.nextOldest.find(({ place }) => place === stays?.leaveAt)?.drum ?? null;
  const send = async () => {
    if (next === null) return;
    if ((await acts.amend.run({ stops: withOther(flight, leave, next.number) })) !== undefined) onClose();
  };
  return (
    <ActForm
      title="Take next oldest"
      onClose={onClose}
      onSubmit={() => void send()}
      acts={
        <Button
          kind="main"
          type="submit"
          busy={acts.isSending}
          offBecause={next === null ? 'No drum that is fit stands free at the base.' : undefined}
        >
          {next === null ? 'Take another' : `Take ${next.number}`}
        </Button>
      }
    >
      <Choice
        label="Drum that stays"
        value={leave}
        options={drums.map(({ number, batch }) => [number, `${number}, ${batch}`] as const)}
        onChange={setLeave}
      />
      {stays !== undefined && next !== null && (
        <p>
          {stays.number}, {figure(stays.grossKg, 1)} kg, stays. {next.number}, {figure(next.kg, 1)} kg,{' '}
          {next.batch}, goes in its place. The places in the cabin are found anew where they must be.
        </p>
      )}
    </ActForm>
  );
};
