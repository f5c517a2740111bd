import { pounds, print } from '@drumline/units';
import { ActForm } from '../../../ui/act-form.js';
import { Button, figure } from '../../../ui/index.js';
import type { Fallback, LoadedFlight } from '../load-read.js';
import type { LoadActs } from '../use-load-acts.js';
import { withoutDrums } from './standing.js';
import type { TakeLessWords } from './take-less-words.js';

interface TakeLessProps {
  readonly flight: LoadedFlight;
  readonly fallback: Fallback;
  readonly said: TakeLessWords;
  readonly acts: LoadActs;
  readonly onClose: () => void;
}

/** What fewer drums for a soft strip mean, said before it is done: which stay, which move, and who has to hear. */
export const TakeLess = ({ flight, fallback, said, acts, onClose }: TakeLessProps) => {
  const { leave, words } = fallback;
  const stay = flight.load?.sheet.drums.filter(({ number }) => leave.includes(number)) ?? [];
  const send = async () => {
    if ((await acts.amend.run({ stops: withoutDrums(flight, leave) })) !== undefined) onClose();
  };
  return (
    <ActForm
      title={said.title}
      onClose={onClose}
      onSubmit={() => void send()}
      acts={
        <Button kind="main" type="submit" busy={acts.isSending}>
          Make it version {flight.version + 1}
        </Button>
      }
    >
      <p>{words}</p>
      <ul>
        {stay.map(({ number, grossKg, lb, position }) => (
          <li key={number}>
            {number}, {figure(grossKg, 1)} kg, {print(pounds(lb), 'lb')}, comes out of {position} and stays at{' '}
            {flight.route[0]}.
          </li>
        ))}
        {said.route !== null && <li>{said.route}</li>}
        <li>{said.moves}</li>
        <li>{whoHears(flight)}</li>
      </ul>
    </ActForm>
  );
};

/** Nothing takes a version back: another one does. */
const whoHears = ({ id, state, version, pilot }: LoadedFlight): string => {
  const again = `To take a drum on again, amend ${id} on the week page: one more version.`;
  if (state !== 'given') return again;
  return `${id} is given: ${pilot ?? 'the crew'} is told on the phone that version ${version + 1} has come in, and printed sheets of version ${version} are thrown away. ${again}`;
};
