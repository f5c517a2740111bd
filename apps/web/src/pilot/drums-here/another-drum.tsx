import { nearNumbers } from '@drumline/loading';
import { useState } from 'react';
import { DrumNumber, Keypad, Main, Notice, Page, Press } from '../../phone/index.js';
import type { FlightHere } from '../use-flight.js';

interface AnotherDrumProps {
  readonly here: FlightHere;
  readonly place: string;
  /** On the load and not said yet. */
  readonly open: readonly string[];
  readonly onKeep: (number: string) => void;
  readonly onBack: () => void;
}

/** A drum that is not on the load can always be kept: whoever reads it knows better than the book. */
export const AnotherDrum = ({ here, place, open, onKeep, onBack }: AnotherDrumProps) => {
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState(false);
  const isOnLoad = open.includes(typed);
  const near = nearNumbers(typed, open);
  if (!asked)
    return (
      <Page
        key="which"
        above={`${here.flight.id} · ${place}`}
        title="Which drum?"
        acts={
          <>
            <Press onPress={onBack}>Back</Press>
            <Main
              waits={typed.length < 4 ? 'The number on the drum first' : null}
              onPress={() => (isOnLoad ? onKeep(typed) : setAsked(true))}
            >
              This drum
            </Main>
          </>
        }
      >
        <div className="grid tight">
          <output className="typed now" aria-label="Drum number">
            {typed}
          </output>
        </div>
        <Keypad value={typed} onType={setTyped} longest={8} />
      </Page>
    );
  return (
    <Page
      key="kept anyway"
      above={`${here.flight.id} · ${place}`}
      title={
        <h1 className="title">
          <DrumNumber number={typed} big />
        </h1>
      }
      acts={
        <>
          {near.length > 0 && (
            <div className={near.length > 1 ? 'two' : undefined}>
              {near.map((number) => (
                <Press key={number} onPress={() => onKeep(number)}>
                  I meant {number}
                </Press>
              ))}
            </div>
          )}
          <Press onPress={() => setAsked(false)}>Type again</Press>
          <Main onPress={() => onKeep(typed)}>Keep {typed}</Main>
        </>
      }
    >
      <Notice kind="check" word="Check." title={`${typed} is not on your load. Keep anyway?`}>
        {bookWords(here, typed)} If you can read {typed} on the drum, the drum is right and the book is wrong.
      </Notice>
    </Page>
  );
};

const bookWords = ({ day }: FlightHere, number: string): string => {
  const drum = day.drums.find((each) => each.number === number);
  return drum === undefined
    ? `No drum ${number} with fuel in the book.`
    : `The book has it at ${drum.place}${drum.held === null ? '' : `, on hold: ${drum.held}`}.`;
};
