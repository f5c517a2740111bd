import type { LoadSheet, TotalsComparison } from '@drumline/loading';
import { print } from '@drumline/units';
import { Notice } from '../../phone/index.js';
import type { Compared } from './two-totals.js';

/** The arithmetic of what is apart: "8,528 lb and 8,258 lb: 270 lb apart"; empty: nothing is. */
export const apartWords = ({ load, takeoff }: Compared): string =>
  [load, takeoff]
    .filter(({ agrees }) => !agrees)
    .map(({ words }) => words)
    .join('. ');

/** Of the two pairs the one that has more to say. */
const agreeWords = ({ load, takeoff }: Compared): string =>
  load.advice.length > takeoff.advice.length ? load.advice : takeoff.advice;

interface WhatItSaysProps {
  readonly compared: Compared;
  readonly sheet: LoadSheet;
  readonly bySoftFigures: boolean;
}

/** That they agree, or that Loaded waits and what usually causes such a difference. */
export const WhatItSays = ({ compared, sheet, bySoftFigures }: WhatItSaysProps) => (
  <>
    {compared.agrees ? (
      <Notice
        kind={sheet.holds ? 'agree' : 'note'}
        word={sheet.holds ? 'Agrees.' : 'The totals agree.'}
        title={agreeWords(compared)}
      >
        {compared.roundingWords}
      </Notice>
    ) : (
      <Notice kind="stop" word="Loaded waits." title={`More than ${print(sheet.toleranceLb, 'lb')} apart.`}>
        {apartWords(compared)}
      </Notice>
    )}
    {bySoftFigures && (
      <Notice kind="check" word="Surface unknown: soft counts." title="Loaded is sent by the soft figures.">
        {sheet.legs.flatMap(({ goBack: { ifSoft } }) => ifSoft?.words ?? []).join(' ')}
      </Notice>
    )}
    <Slips name="Load" of={compared.load} />
    <Slips name="Take-off weight" of={compared.takeoff} />
  </>
);

/** The two simplest that would explain it, within the tolerance too; a rounding is no slip. */
const Slips = ({ name, of: { agrees, differenceLb, slips, advice } }: SlipsProps) => {
  if (differenceLb === 0) return null;
  const [first] = slips;
  if (first?.kind === 'rounding') return <Said name={name} words={`${first.title}: ${first.words}`} />;
  return (
    <>
      {slips.slice(0, 2).map(({ kind, title, words }) => (
        <Notice key={kind + words} kind="check" word={`${name}, may be.`} title={title}>
          {words}
        </Notice>
      ))}
      {!agrees && (slips.length === 0 || slips.length > 2) && <Said name={name} words={advice} />}
    </>
  );
};

interface SlipsProps {
  readonly name: string;
  readonly of: TotalsComparison;
}

const Said = ({ name, words }: { readonly name: string; readonly words: string }) => (
  <p className="said">
    <b>{name}.</b> {words}
  </p>
);
