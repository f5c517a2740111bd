import type { ReactNode } from 'react';
import { DrumNumber } from '../../phone/index.js';

interface DrumRowProps {
  readonly number: string;
  readonly held?: boolean;
  /** `picked`: something is said of it; `back`: it does not stay where it is. */
  readonly look: 'plain' | 'picked' | 'back';
  readonly side: ReactNode;
  readonly below?: ReactNode;
  readonly onPress: () => void;
}

/** A drum that can be pressed: its number, what is said of it at the side, and more of that below. */
export const DrumRow = ({ number, held = false, look, side, below, onPress }: DrumRowProps) => (
  <li>
    <button type="button" className={look === 'plain' ? 'row' : `row ${look}`} onClick={onPress}>
      <span>
        <DrumNumber number={number} held={held} />
      </span>
      <span className="side">{side}</span>
      {below !== undefined && <span className="sub">{below}</span>}
    </button>
  </li>
);
