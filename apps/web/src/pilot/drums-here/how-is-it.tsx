import type { PhoneFlight } from '@drumline/contract';
import { useState } from 'react';
import { Choices, DrumNumber, Main, Notice, Page, Press } from '../../phone/index.js';
import type { Condition } from '../reports/own-reports.js';
import type { DrumDone } from './drum-reports.js';

export const conditionWords: Readonly<Record<Condition, string>> = {
  sound: 'Good',
  damaged: 'Dented',
  leaking: 'Leaking',
  'seal broken': 'Seal broken',
};

const conditions = (Object.keys(conditionWords) as Condition[]).map((value) => ({
  value,
  word: conditionWords[value],
}));

interface HowIsItProps {
  readonly flight: PhoneFlight;
  readonly drum: DrumDone;
  readonly onSaid: (drum: DrumDone) => void;
  /** Nothing is said of it after all. */
  readonly onNot: () => void;
}

/** One drum: where it is now, and how. */
export const HowIsIt = ({ flight, drum, onSaid, onNot }: HowIsItProps) => {
  const [said, setSaid] = useState(drum);
  const position = flight.sheet?.drums.find(({ number }) => number === drum.drum)?.position;
  return (
    <Page
      above={`${flight.id}${position === undefined ? '' : ` · was in ${position}`}`}
      title={
        <h1 className="title">
          <DrumNumber number={drum.drum} big />
        </h1>
      }
      acts={
        <>
          <Press onPress={onNot}>Nothing of this drum</Press>
          <Main onPress={() => onSaid(said)}>Next drum</Main>
        </>
      }
    >
      <Choices
        legend="Where is it now?"
        of={[
          { value: 'left at', word: 'Left here' },
          { value: 'brought home', word: 'Bring back' },
        ]}
        chosen={said.kind}
        onChoose={(kind) => setSaid({ ...said, kind })}
      />
      <Choices
        legend="How is it?"
        of={conditions}
        chosen={said.condition}
        onChoose={(condition) => setSaid({ ...said, condition })}
      />
      {said.condition !== 'sound' && (
        <Notice kind="check" word="Then." title={`${drum.drum} goes on hold on this phone at Keep.`}>
          Mark it X on the end before it goes aboard or is left. Base hears when this phone is next heard.
        </Notice>
      )}
    </Page>
  );
};
