import { type Litres, litres, print, printNumber } from '@drumline/units';
import { useState } from 'react';
import { Keypad } from '../phone/index.js';
import { DipBox, HowDipped } from './dip-box.js';
import { dipOf, tableOf } from './dips.js';
import type { JudgedDraw } from './draw.js';
import type { DrawDraft } from './draw-draft.js';
import type { DrawStep } from './draw-page.js';

/** The drum that the pump stopped in; undefined: none is left part used. */
const partUsed = ({ split }: JudgedDraw) => split.draws.find(({ leftLitres }) => leftLitres > 0);

/** What the stick says is left in it; null: nobody looked, or the figure is none. */
export const leftByStick = (
  draft: Pick<DrawDraft, 'leftCm' | 'dipTable'>,
  { here }: Pick<DrawStep, 'here'>,
): Litres | null => {
  const table = tableOf(draft, here.places.dipTables ?? []);
  const read = table === null ? null : dipOf(table, draft.leftCm ?? '');
  return read === null || read === undefined ? null : litres(Math.round(read.litres));
};

/** The stick in the drum that stays open: looked at, where the rest is worked out. */
export const DrawLeft = ({ step, judged }: { readonly step: DrawStep; readonly judged: JudgedDraw }) => {
  const { here, draft, setDraft } = step;
  const [isTyping, setIsTyping] = useState(false);
  const tables = here.places.dipTables ?? [];
  const table = tableOf(draft, tables);
  const drum = partUsed(judged);
  if (drum === undefined || tables.length === 0) return null;
  const dipped = leftByStick(draft, step);
  return (
    <>
      <HowDipped
        legend={`Left in ${drum.number}`}
        none="Not looked at"
        tables={tables}
        chosen={table}
        onChoose={(dipTable) => setDraft({ ...draft, dipTable })}
      />
      {table !== null && (
        <div className="grid">
          <DipBox
            label={`Wetted stick in ${drum.number}`}
            table={table}
            value={draft.leftCm ?? ''}
            now={isTyping}
            onPress={() => setIsTyping(!isTyping)}
          />
          {dipped !== null && (
            <p className="small" role="status">
              {printNumber(Math.abs(dipped - drum.leftLitres), 0)} L{' '}
              {dipped < drum.leftLitres ? 'less' : 'more'} than the {print(drum.leftLitres, 'L')} that the
              book will have. Both are kept.
            </p>
          )}
        </div>
      )}
      {table !== null && isTyping && (
        <Keypad value={draft.leftCm ?? ''} onType={(leftCm) => setDraft({ ...draft, leftCm })} />
      )}
    </>
  );
};
