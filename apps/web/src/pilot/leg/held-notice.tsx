import type { SheetDrum } from '@drumline/loading';
import { Notice, Press } from '../../phone/index.js';
import type { FlightHere } from '../use-flight.js';

/** Drums aboard that are on hold, by base or by this phone: none of them may go out. */
export const heldAboard = ({ flight, held }: FlightHere): readonly SheetDrum[] =>
  flight.sheet!.drums.filter(({ number }) => held.has(number));

interface HeldNoticesProps {
  readonly here: FlightHere;
  readonly onAnother: (position: string) => void;
  readonly onLeave: (numbers: readonly string[]) => void;
}

/** Each drum on hold with what to do: another in its place, or without it. */
export const HeldNotices = ({ here, onAnother, onLeave }: HeldNoticesProps) =>
  heldAboard(here).map(({ number, position }, _, { length }) => (
    <Notice
      key={number}
      kind="stop"
      word="HOLD."
      title={`${number} may not go out: ${here.held.get(number)}. Take it off.`}
    >
      {here.flight.request === null ? (
        'Ask base for another version of this load.'
      ) : (
        <div className="two">
          <Press onPress={() => onAnother(position)}>Another in {position}</Press>
          {here.flight.sheet!.drums.length > length && (
            <Press onPress={() => onLeave([number])}>Leave {number} behind</Press>
          )}
        </div>
      )}
    </Notice>
  ));

/** Null: nothing aboard is on hold. */
export const whyHeld = (drums: readonly SheetDrum[]): string | null =>
  drums.length === 0 ? null : `On hold: ${drums.map(({ number }) => number).join(', ')}. Take it off first`;
