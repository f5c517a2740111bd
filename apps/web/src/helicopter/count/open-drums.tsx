import type { DipTable } from '@drumline/stock';
import { print } from '@drumline/units';
import { useState } from 'react';
import { Keypad } from '../../phone/index.js';
import { DipBox, HowDipped } from '../dip/dip-box.js';
import { foundInOpen, type OpenDrumsDraft, sticksOf, tableOf } from '../dip/dips.js';
import { FigureBox } from '../figure-box.js';

interface OpenDrumsProps {
  readonly draft: OpenDrumsDraft;
  readonly tables: readonly DipTable[];
  readonly onChange: (changed: Partial<OpenDrumsDraft>) => void;
}

export const OpenDrums = ({ draft, tables, onChange }: OpenDrumsProps) => {
  const table = tableOf(draft, tables);
  const [box, setBox] = useState<number | null>(0);
  const press = (drum: number) => setBox(box === drum ? null : drum);
  const sticks = sticksOf(draft);
  const found = foundInOpen(draft, tables).litres;
  const type = (typed: string) =>
    onChange(
      table === null
        ? { openLitres: typed }
        : { dips: sticks.map((cm, drum) => (drum === box ? typed : cm)) },
    );
  return (
    <>
      <HowDipped tables={tables} chosen={table} onChoose={(dipTable) => onChange({ dipTable })} />
      <div className="grid">
        {table === null ? (
          <FigureBox
            label="In the open drums together"
            unit="L"
            value={draft.openLitres}
            now={box !== null}
            onPress={() => setBox(box === null ? 0 : null)}
          />
        ) : (
          sticks.map((cm, drum) => (
            <DipBox
              // biome-ignore lint/suspicious/noArrayIndexKey: an open drum has no number here, only its turn
              key={drum}
              label={draft.open === 1 ? 'Wetted stick' : `Wetted stick, open drum ${drum + 1}`}
              table={table}
              value={cm}
              now={box === drum}
              onPress={() => press(drum)}
            />
          ))
        )}
        {table !== null && found !== null && draft.open > 1 && (
          <p className="small">Together {print(found, 'L')}</p>
        )}
      </div>
      {box !== null && (
        <Keypad value={table === null ? draft.openLitres : (sticks[box] ?? '')} onType={type} />
      )}
    </>
  );
};
