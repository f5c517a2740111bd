import type { DrumAsLoaded, SheetDrum } from '@drumline/loading';
import { useState } from 'react';
import { asPlanned, changePlaces, type KnownDrum, standsIn } from './aboard.js';
import { begunAnew, type StepProps } from './loaded-steps.js';

/** What a tap on a place does: reads its drum, says that another stands there, or chooses two that change places. */
export type Tap = 'read' | 'another' | 'swap';

export interface PositionsNow {
  readonly tap: Tap;
  readonly setTap: (tap: Tap) => void;
  /** The first of two that change places; null: none is chosen. */
  readonly first: string | null;
  /** The place in which another drum stands; null: none is asked about. */
  readonly asked: string | null;
  readonly aboard: readonly DrumAsLoaded[];
  readonly onTap: (drum: SheetDrum) => void;
  /** What stands in that place is asked for. */
  readonly ask: (position: string) => void;
  /** The flight goes without those drums. */
  readonly leave: (numbers: readonly string[]) => void;
  /** The drums stand so. */
  readonly stand: (aboard: readonly DrumAsLoaded[]) => void;
  readonly put: (drum: KnownDrum) => void;
  readonly backToPlaces: () => void;
}

/** The drums in their places while they are read, and while they are made other than planned. */
export const usePositions = ({ here: { flight }, draft, setDraft }: StepProps): PositionsNow => {
  const [tap, setTap] = useState<Tap>('read');
  const [chosen, setChosen] = useState<string | null>(null);
  const aboard =
    draft.aboard.length > 0 || flight.request === null ? draft.aboard : asPlanned(flight.request);
  const turn = (to: Tap) => {
    setTap(to);
    setChosen(null);
  };
  const read = (number: string): readonly string[] =>
    draft.read.includes(number) ? draft.read.filter((each) => each !== number) : [...draft.read, number];
  const stand = (next: readonly DrumAsLoaded[], stillRead = draft.read) =>
    setDraft({ ...draft, ...begunAnew, read: stillRead, aboard: next });
  const swap = (position: string) => {
    if (chosen === null) return setChosen(position);
    stand(changePlaces(aboard, chosen, position));
    turn('read');
  };
  return {
    tap,
    setTap: turn,
    first: tap === 'swap' ? chosen : null,
    asked: tap === 'another' ? chosen : null,
    aboard,
    onTap: ({ number, position }) => {
      if (tap === 'read') setDraft({ ...draft, read: read(number) });
      else if (tap === 'another') setChosen(position);
      else swap(position);
    },
    ask: (position) => {
      setTap('another');
      setChosen(position);
    },
    leave: (numbers) =>
      stand(
        aboard.filter(({ number }) => !numbers.includes(number)),
        draft.read.filter((number) => !numbers.includes(number)),
      ),
    stand: (next) => stand(next),
    put: (drum) => {
      // Whoever types its number has read it.
      const isRead = draft.read.includes(drum.number);
      stand(standsIn(aboard, chosen!, drum), isRead ? draft.read : read(drum.number));
      turn('read');
    },
    backToPlaces: () => setChosen(null),
  };
};
