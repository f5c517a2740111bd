import { useState } from 'react';
import { useCalendar, useMe } from '../../../api/index.js';
import { Button, inWords, Picture } from '../../../ui/index.js';
import type { HoldEffect } from '../drums-read.js';
import { PrintSheet, printSheet } from '../print-sheet.js';
import { CallList, toCall, useCalls } from './calls.js';
import { type Subject, subjectWords } from './hold-words.js';

interface ScriptsProps {
  readonly effect: HoldEffect;
  readonly of: Subject;
  /** The hold that is set; null: it is not, or a report of something unsound set it. */
  readonly hold: string | null;
}

/** To be read out, place by place and crew by crew, with the numbers read back; who is called leaves the list. */
export const Scripts = ({ effect, of, hold }: ScriptsProps) => {
  const scripts = [
    ...effect.places.map(({ place, radioScript }) => [place, radioScript] as const),
    ...effect.flights.map(({ flight, radioScript }) => [flight, radioScript] as const),
  ];
  const names = scripts.map(([name]) => name);
  const read = useCalls(hold);
  const [chosen, setChosen] = useState('');
  const [next] = toCall(names, read.value?.calls ?? []);
  const [to, words] = scripts.find(([name]) => name === chosen) ??
    scripts.find(([name]) => name === next) ??
    scripts[0] ?? ['', ''];
  if (scripts.length === 0) return null;
  return (
    <section className="section" aria-label="Radio script">
      <h2 className="drums-script-for">
        <label htmlFor="drums-script-for">Radio script for</label>
        <select id="drums-script-for" value={to} onChange={(event) => setChosen(event.target.value)}>
          {names.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
        <Button small onPress={() => printSheet('scripts')}>
          {printWords(effect)}
        </Button>
      </h2>
      <blockquote className="drums-script">{words}</blockquote>
      {hold !== null && (
        <Picture read={read}>
          {({ calls }) => (
            <CallList hold={hold} all={names} calls={calls} shown={to} onCalled={() => setChosen('')} />
          )}
        </Picture>
      )}
      <PrintedScripts scripts={scripts} effect={effect} of={of} />
    </section>
  );
};

/** "Print all 10 scripts, 7 places and 3 flights": a crew is called for its flight. */
const printWords = ({ places, flights }: HoldEffect): string => {
  const all = places.length + flights.length;
  if (all === 1) return 'Print the script';
  const parts = [
    ...(places.length > 0 ? [inWords(places.length, 'places')] : []),
    ...(flights.length > 0 ? [inWords(flights.length, 'flights')] : []),
  ];
  return `Print all ${all} scripts, ${parts.join(' and ')}`;
};

interface PrintedScriptsProps {
  readonly scripts: readonly (readonly [to: string, words: string])[];
  readonly effect: HoldEffect;
  readonly of: Subject;
}

const PrintedScripts = ({ scripts, effect, of }: PrintedScriptsProps) => {
  const { date, time, now } = useCalendar();
  const { fullName } = useMe();
  return (
    <PrintSheet name="scripts">
      <h1>Radio scripts: hold of {subjectWords(of)}</h1>
      <p>{effect.message}</p>
      {scripts.map(([to, words]) => (
        <section key={to} className="drums-printed-script">
          <h2>{to}</h2>
          <p className="words">{words}</p>
          <p className="by-hand">Read out at, by</p>
          <p className="by-hand">Numbers read back, by</p>
        </section>
      ))}
      <p>
        Printed {date(now)}, {time(now)}, {fullName}. A later print replaces it.
      </p>
    </PrintSheet>
  );
};
