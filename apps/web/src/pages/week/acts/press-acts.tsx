import { useStore } from '../../../api/index.js';
import { Button, type Key } from '../../../ui/index.js';
import { boardFocus } from '../board/board-focus.js';
import type { Card } from '../card/card-read.js';
import { DidItFly } from '../card/did-it-fly.js';
import type { ActName } from '../undo/opposing-act.js';
import type { WeekFlight } from '../week-read.js';
import { approveOff, type FormName, keepOff, openActs } from './flight-acts.js';
import type { FlightActs } from './use-flight-acts.js';

/** Sends an act under its name. */
export type Run = (name: ActName, work: Promise<unknown>) => Promise<void>;

interface PressActsProps {
  readonly flight: WeekFlight;
  readonly card: Card | undefined;
  readonly acts: FlightActs;
  readonly run: Run;
  readonly open: (form: FormName) => void;
}

/** What may be done with a flight in its state, each by one press. */
export const PressActs = ({ flight, card, acts, run, open }: PressActsProps) => {
  const can = openActs(flight);
  const fault = card?.faults[0];
  const fewer = card?.today?.fewer ?? null;
  const takesFewer = can.amend && !flight.unheard && fewer !== null && fewer.drums > 0;
  const busy = acts.isSending;
  const { key, elsewhere } = useCardKeys(flight);
  return (
    <div className="acts">
      {flight.unheard && <DidItFly flight={flight} why={fault?.problem} />}
      {elsewhere !== null && <p className="keys-rest">{elsewhere}</p>}
      {takesFewer && (
        <Button
          kind="main"
          busy={busy}
          onPress={() => void run('Amend', acts.amend.run(flight, { stops: fewer.stops }))}
        >
          {`Amend to ${fewer.drums} ${fewer.drums === 1 ? 'drum' : 'drums'}`}
        </Button>
      )}
      {can.approve && (
        <Button
          kind={takesFewer ? 'plain' : 'main'}
          press={key('a')}
          busy={busy}
          offBecause={approveOff(flight, fault)}
          onPress={() => void run('Approve', acts.approve.run(flight))}
        >
          Approve
        </Button>
      )}
      {can.give && (
        <Button
          kind="main"
          press={key('g')}
          busy={busy}
          offBecause={giveOff(flight)}
          onPress={() => void run('Give', acts.give.run(flight))}
        >
          {flight.pilot === null ? 'Give to the pilot' : `Give to ${flight.pilot}`}
        </Button>
      )}
      {can.decline && (
        <Button kind="grave" press={key('d')} onPress={() => open('decline')}>
          Decline
        </Button>
      )}
      {can.amend && (
        <Button press={key('m')} onPress={() => open('amend')}>
          Amend
        </Button>
      )}
      {can.keep && (
        <Button press={key('k')} offBecause={keepOff(card?.faults)} onPress={() => open('keep')}>
          Keep as it is
        </Button>
      )}
      {can.letGo && (
        <Button press={key('l')} onPress={() => open('let go')}>
          Let go
        </Button>
      )}
      {can.hold && (
        <Button press={key('h')} busy={busy} onPress={() => void run('Hold in place', acts.hold.run(flight))}>
          {flight.heldInPlace ? 'Free to move' : 'Hold in place'}
        </Button>
      )}
      {can.callOff && (
        <Button kind="grave" press={key('c')} onPress={() => open('call off')}>
          Call off
        </Button>
      )}
    </div>
  );
};

/** A letter is for the flight where the keyboard is: it rests while the card is that of another. */
const useCardKeys = ({ id }: WeekFlight) => {
  const at = useStore(boardFocus);
  const rest = at !== null && at.flight !== id;
  const words =
    at?.flight === undefined
      ? `The keyboard is on the board: the keys of ${id} rest.`
      : `The keyboard is at ${at.flight}: the keys of ${id} rest. Enter opens ${at.flight}.`;
  return {
    key: (name: string) => (rest ? undefined : name),
    elsewhere: rest ? words : null,
  };
};

/** Every key of the card: in the list of keys also while the flight that is open has no use for it. */
export const actKeys: Readonly<Record<string, Key>> = Object.fromEntries(
  Object.entries({
    a: 'Approve, of a flight that is offered',
    g: 'Give to the pilot, of a flight that is approved',
    d: 'Decline, of a flight that is offered',
    m: 'Amend',
    k: 'Keep as it is, of a flight that needs a decision',
    l: 'Let go, of a flight that is approved or given',
    h: 'Hold in place or free to move, of a flight that is offered',
    c: 'Call off, of a flight that is approved, given or loaded',
    n: 'After an act: the card of the next flight to decide',
    'Ctrl+Z': 'Undo the last act, or open what takes it back',
  }).map(([name, does]) => [name, { does, act: () => undefined, off: true }]),
);

const giveOff = ({ pilot, needsDecision }: WeekFlight): string | undefined => {
  if (needsDecision !== null) return 'Give is off: it needs a decision first.';
  return pilot === null ? 'Give is off: no pilot is named. Amend names one.' : undefined;
};
