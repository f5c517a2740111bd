import type { LoadSheet, TotalsComparison } from '@drumline/loading';
import { print } from '@drumline/units';
import { Notice } from '../phone/index.js';
import type { Compared } from './two-totals.js';

/** The arithmetic of what is apart: "8,528 lb and 8,258 lb: 270 lb apart"; empty: nothing is. */
export const apartWords = ({ load, takeoff }: Compared): string =>
  [load, takeoff]
    .filter(({ agrees }) => !agrees)
    .map(({ words }) => words)
    .join('. ');

interface WhatItSaysProps {
  readonly compared: Compared;
  readonly sheet: LoadSheet;
  readonly bySoftFigures: boolean;
}

/** That they agree, or that Loaded waits and what usually causes such a difference. */
export const WhatItSays = ({ compared, sheet, bySoftFigures }: WhatItSaysProps) => (
  <>
    {compared.agrees ? (
      <Notice kind="agree" word="Agrees." title={compared.takeoff.advice}>
        {compared.roundingWords}
      </Notice>
    ) : (
      <Notice kind="stop" word="Loaded waits." title={`More than ${print(sheet.toleranceLb, 'lb')} apart.`}>
        {apartWords(compared)}
      </Notice>
    )}
    {bySoftFigures && (
      <Notice kind="check" word="Surface unknown: soft counts." title="Loaded is sent by the soft figures.">
        {sheet.legs[0]!.goBack.ifSoft?.words ?? ''}
      </Notice>
    )}
    <Slips name="Load" of={compared.load} />
    <Slips name="Take-off weight" of={compared.takeoff} />
  </>
);

/** More than two would explain anything. */
const Slips = ({ name, of }: { readonly name: string; readonly of: TotalsComparison }) => {
  if (of.agrees) return null;
  if (of.slips.length === 0 || of.slips.length > 2)
    return (
      <p className="said">
        <b>{name}.</b> {of.advice}
      </p>
    );
  return of.slips.map(({ kind, title, words }) => (
    <Notice key={kind + words} kind="check" word="May be." title={title}>
      {words}
    </Notice>
  ));
};
