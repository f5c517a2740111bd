import type { Movement } from '@drumline/stock';
import { type ShownEntry, whenWords } from '../phone/index.js';
import { movementsOf } from './own-movements.js';
import type { PlacesHere } from './use-places.js';

/** The newest that this phone has reported at the place, with how far it has come. */
export const LastReport = ({ here, place }: { readonly here: PlacesHere; readonly place: string }) => {
  const last = here.entries.find((entry) => concerns(entry, here, place));
  if (last === undefined) return null;
  return (
    <p className="said last" role="status">
      <b>{last.words}</b>
      <br />
      {stateWords(last, here.at)}
      {last.says.map((words) => (
        <span key={words} className="says">
          {last.state === 'asks' ? 'Base asks: ' : 'Base will look at: '}
          {words}
        </span>
      ))}
    </p>
  );
};

const concerns = (entry: ShownEntry, here: PlacesHere, place: string): boolean =>
  movementsOf(entry).some((movement) => isAt(movement, here, place));

const isAt = (
  movement: Movement,
  { outlook, entries }: Pick<PlacesHere, 'outlook' | 'entries'>,
  place: string,
): boolean => {
  // What is taken back names no place: the report that was wrong does.
  if (movement.kind === 'corrected') {
    const wrong = entries.flatMap(movementsOf).find(({ id }) => id === movement.corrects);
    return wrong !== undefined && isAt(wrong, { outlook, entries }, place);
  }
  if (movement.kind === 'slung') return movement.from === place || movement.to === place;
  if (movement.kind !== 'held') return 'place' in movement && movement.place === place;
  // A hold names no place: the drum has one.
  const { of } = movement;
  return (
    'drum' in of && outlook.picture.drums.some((each) => each.number === of.drum && each.place === place)
  );
};

const stateWords = ({ state, clock, withBaseAt }: ShownEntry, now: Date): string => {
  const at = whenWords(clock.at, now);
  if (state === 'kept') return `${at}. Kept on this phone. Goes by itself when there is a signal.`;
  if (state === 'sent') return `${at}. Sent, no answer yet.`;
  return `${at}. With base ${whenWords(withBaseAt ?? clock.at, now)}.`;
};
