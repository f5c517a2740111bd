import './cabin.css';
import type { SheetDrum } from '@drumline/loading';
import { print } from '@drumline/units';
import { DrumNumber } from '../../phone/index.js';

interface CabinProps {
  readonly drums: readonly SheetDrum[];
  readonly held: ReadonlyMap<string, string>;
  readonly isRead: (number: string) => boolean;
  /** The first of two that change places; null: none is chosen. */
  readonly first: string | null;
  readonly onTap: (drum: SheetDrum) => void;
}

/** Seen from above, front at the top. */
export const Cabin = ({ drums, held, isRead, first, onTap }: CabinProps) => (
  <div className="cabin">
    <span className="front">FRONT</span>
    {drums.map((drum) => {
      const { number, position, grossKg, lb } = drum;
      const isOn = isRead(number);
      return (
        <button
          key={position}
          type="button"
          className={`seat${isOn ? ' read' : ''}${first === position ? ' first' : ''}`}
          aria-pressed={isOn}
          onClick={() => onTap(drum)}
        >
          <span className="pos">{position}</span>
          <DrumNumber number={number} held={held.has(number)} />
          <span className={isOn ? 'box yes' : 'box'} aria-hidden="true" />
          <span className="w">
            {print(grossKg, 'kg', 1)} · {print(lb, 'lb')}
          </span>
        </button>
      );
    })}
  </div>
);
