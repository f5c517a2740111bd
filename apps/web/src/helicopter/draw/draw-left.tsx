import { print, printNumber } from '@drumline/units';
import { useEffect, useRef } from 'react';
import { Keypad } from '../../phone/index.js';
import { DipBox, HowDipped } from '../dip/dip-box.js';
import { tableOf } from '../dip/dips.js';
import type { JudgedDraw } from './draw.js';
import type { Box } from './draw-litres.js';
import type { DrawStep } from './draw-page.js';
import { leftByStick, partUsed } from './draw-stick.js';

interface DrawLeftProps {
  readonly step: DrawStep;
  readonly judged: JudgedDraw;
  /** What the keys of the page write into. */
  readonly box: Box | null;
  readonly setBox: (box: Box | null) => void;
}

/** The stick in the drum that stays open: looked at, where the rest is worked out. */
export const DrawLeft = ({ step, judged, box, setBox }: DrawLeftProps) => {
  const { here, draft, setDraft } = step;
  const part = useRef<HTMLDivElement>(null);
  const tables = here.places.dipTables ?? [];
  const table = tableOf(draft, tables);
  const drum = partUsed(judged);
  const isTyping = table !== null && box === 'leftCm';
  // The box in use and its keys stand clear of the acts at the foot.
  useEffect(() => {
    if (isTyping) part.current?.scrollIntoView({ block: 'start' });
  }, [isTyping]);
  if (drum === undefined || tables.length === 0) return null;
  const dipped = leftByStick(draft, step);
  const choose = (dipTable: string | null) => {
    setDraft({ ...draft, dipTable });
    setBox(dipTable === null ? null : 'leftCm');
  };
  return (
    <>
      <HowDipped
        legend={`Left in ${drum.number}`}
        none="Not looked at"
        tables={tables}
        chosen={table}
        onChoose={choose}
      />
      {table !== null && (
        <div className="grid stick" ref={part}>
          <DipBox
            label={`Wetted stick in ${drum.number}`}
            table={table}
            value={draft.leftCm ?? ''}
            now={isTyping}
            onPress={() => setBox(isTyping ? null : 'leftCm')}
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
      {isTyping && <Keypad value={draft.leftCm ?? ''} onType={(leftCm) => setDraft({ ...draft, leftCm })} />}
    </>
  );
};
