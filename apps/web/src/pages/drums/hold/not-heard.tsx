import { z } from 'zod';
import { useRead } from '../../../api/index.js';
import { Button, Picture } from '../../../ui/index.js';
import { type NotSeen, notSeenSchema } from '../drums-read.js';

interface ToHearProps {
  readonly people: readonly NotSeen[];
  /** Where the drums stand. */
  readonly places: readonly string[];
}

const notHeardSchema = z.object({ items: z.array(notSeenSchema), peopleWithDevice: z.number() });

/** Before the press: nobody in the field has heard of it yet. */
export const ToHear = ({ people, places }: ToHearProps) => (
  <section className="section" aria-label="Who has to hear of it">
    <h2>
      Who has to hear of it <small>{people.length}</small>
    </h2>
    {people.length === 0 ? (
      <p>
        {byRadio}
        {places.length > 0 && ` Places to call: ${places.join(', ')}.`}
      </p>
    ) : (
      <>
        <People people={people} />
        <small>Their devices say HOLD when they next ask. Until then: by radio.</small>
      </>
    )}
  </section>
);

/** Afterwards: whose devices have not asked since. */
export const NotHeard = ({ hold }: { readonly hold: string }) => {
  const read = useRead(`/api/holds/${hold}/not-heard`, notHeardSchema);
  return (
    <section className="section" aria-label="Who has not heard">
      <h2>
        Who has not heard <small>{read.value?.items.length ?? ''}</small>
      </h2>
      <Picture read={read}>
        {({ items: people, peopleWithDevice }) =>
          people.length === 0 ? (
            <p>
              {peopleWithDevice === 0
                ? `${byRadio} Who has been told stands with the radio script.`
                : 'Every device in the field has asked since. Who has none hears it by radio only: tell them.'}
            </p>
          ) : (
            <>
              <People people={people} />
              <small>Tell them by radio; the list gets shorter as their devices ask.</small>
            </>
          )
        }
      </Picture>
      <Button small onPress={read.again}>
        Look again
      </Button>
    </section>
  );
};

const byRadio = 'Nobody in the field has a device that is signed in: tell everybody by radio.';

const People = ({ people }: { readonly people: readonly NotSeen[] }) => (
  <ul className="drums-lines">
    {people.map(({ person, lastSeenAt }) => (
      <li key={person}>
        <b>{person}</b>
        <span>last heard {ageWords(lastSeenAt)}</span>
      </li>
    ))}
  </ul>
);

// Devices are seen by the clock on the wall, which in a demo is on another day than the territory's.
const ageWords = (at: string): string => {
  const minutes = Math.max(0, Math.round((Date.now() - Date.parse(at)) / 60_000));
  if (minutes < 60) return `${minutes} min ago`;
  return `${Math.floor(minutes / 60)} h ${minutes % 60} min ago`;
};
