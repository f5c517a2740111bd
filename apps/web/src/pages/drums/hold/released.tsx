import { useState } from 'react';
import { z } from 'zod';
import { useCalendar } from '../../../api/index.js';
import { Button } from '../../../ui/index.js';
import { type Subject, subjectWords } from './hold-words.js';

export const latestReleaseSchema = z.object({
  release: z
    .object({
      at: z.string(),
      by: z.array(z.string()),
      reason: z.string(),
      callBack: z.array(z.object({ called: z.string(), radioScript: z.string() })),
    })
    .nullable(),
});

export type Release = NonNullable<z.output<typeof latestReleaseSchema>['release']>;

interface ReleasedProps {
  readonly of: Subject;
  readonly release: Release;
  readonly onHold: () => void;
  readonly onClose: () => void;
}

/** Its hold is over: by whom, and who was told to keep off it and has to hear so. */
export const Released = ({ of, release: { at, by, reason, callBack }, onHold, onClose }: ReleasedProps) => {
  const { when } = useCalendar();
  const [chosen, setChosen] = useState('');
  const shown = callBack.find(({ called }) => called === chosen) ?? callBack[0];
  const words = subjectWords(of);
  return (
    <section className="drums-follows" aria-label={`Released: ${words}`}>
      <h2>
        {words.charAt(0).toUpperCase() + words.slice(1)} is released <small>{reason}</small>
      </h2>
      <p role="status">
        <b className="pine">
          Released {when(at)} by {by.join(' and ')}.
        </b>{' '}
        {callBack.length === 0
          ? 'Nobody was called about the hold.'
          : `Call back: ${callBack.map(({ called }) => called).join(', ')}.`}
      </p>
      {shown !== undefined && (
        <>
          <h2 className="drums-script-for">
            <label htmlFor="drums-release-script-for">Radio script for</label>
            <select
              id="drums-release-script-for"
              value={shown.called}
              onChange={(event) => setChosen(event.target.value)}
            >
              {callBack.map(({ called }) => (
                <option key={called}>{called}</option>
              ))}
            </select>
          </h2>
          <blockquote className="drums-script">{shown.radioScript}</blockquote>
        </>
      )}
      <div className="drums-acts">
        <Button small onPress={onClose}>
          Close
        </Button>
        <Button small onPress={onHold}>
          Hold {words} again
        </Button>
      </div>
    </section>
  );
};
