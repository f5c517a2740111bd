import { type DrumAsLoaded, questionFill, questionWeight } from '@drumline/loading';
import { kilograms, type Litres, litres, print } from '@drumline/units';
import { useState } from 'react';
import { Keypad, Main, Notice, Page, Press } from '../../phone/index.js';
import { AnotherDrum } from '../drums-here/another-drum.js';
import type { FlightHere } from '../use-flight.js';
import { drumByWeight, drumInBook, type KnownDrum } from './aboard.js';

interface AnotherAboardProps {
  readonly here: FlightHere;
  readonly aboard: readonly DrumAsLoaded[];
  /** Where it stands. */
  readonly position: string;
  readonly onKeep: (drum: KnownDrum) => void;
  readonly onBack: () => void;
}

/** Another drum than planned, by its number; where no book has it, by its weight too. */
export const AnotherAboard = ({ here, aboard, position, onKeep, onBack }: AnotherAboardProps) => {
  const [unknown, setUnknown] = useState<string | null>(null);
  const take = (number: string) => {
    const drum = drumInBook(number, aboard, here.day);
    if (drum === null) setUnknown(number);
    else onKeep(drum);
  };
  if (unknown !== null)
    return (
      <WhatItWeighs
        above={`${here.flight.id} · ${unknown} in ${position}`}
        planningKg={here.flight.request!.load.request.drum.grossKg}
        brimLitres={litres(here.day.brimLitres)}
        byWeight={(kg) => drumByWeight(unknown, kilograms(kg), here.flight.request!)}
        onKeep={onKeep}
        onBack={() => setUnknown(null)}
      />
    );
  return (
    <AnotherDrum
      here={here}
      place={position}
      open={aboard.map(({ number }) => number)}
      onKeep={take}
      onBack={onBack}
    />
  );
};

interface WhatItWeighsProps {
  readonly above: string;
  readonly planningKg: Parameters<typeof questionWeight>[2]['grossKg'];
  readonly brimLitres: Litres;
  readonly byWeight: (kg: number) => KnownDrum;
  readonly onKeep: (drum: KnownDrum) => void;
  readonly onBack: () => void;
}

const WhatItWeighs = ({ above, planningKg, brimLitres, byWeight, onKeep, onBack }: WhatItWeighsProps) => {
  const [typed, setTyped] = useState('');
  const drum = byWeight(Number(typed));
  const doubt =
    typed.length < 2
      ? null
      : (questionWeight(Number(typed), 'kg', { count: 1, grossKg: planningKg }) ??
        questionFill(drum.grossKg, { litres: drum.litres, brimLitres }));
  return (
    <Page
      above={above}
      title="What does it weigh?"
      acts={
        <>
          <Press onPress={onBack}>Another number</Press>
          <Main waits={Number(typed) > 0 ? null : 'From the tag or a scale'} onPress={() => onKeep(drum)}>
            Keep{typed === '' ? '' : ` ${typed} kg`}
          </Main>
        </>
      }
    >
      <div className="grid tight">
        <output className="typed now" aria-label="Drum and fuel">
          {typed}
          <span className="unit">kg</span>
        </output>
        {doubt === null ? (
          <p className="small">
            Drum and fuel together. No book has this drum.
            {drum.litres > 0 &&
              ` The drum taken at ${print(drum.tareKg, 'kg', 1)}, that is ${print(drum.litres, 'L')} of fuel.`}
          </p>
        ) : (
          <Notice kind="check" word="Check." title={doubt} />
        )}
      </div>
      <Keypad value={typed} onType={setTyped} longest={4} />
    </Page>
  );
};
