import { printNumber } from '@drumline/units';
import type { ReactNode } from 'react';

interface FigureBoxProps {
  readonly label: ReactNode;
  readonly unit: string;
  readonly value: string;
  /** The keys write into it. */
  readonly now: boolean;
  readonly onPress: () => void;
}

/** A figure that the keypad writes into; pressed, it is the one. */
export const FigureBox = ({ label, unit, value, now, onPress }: FigureBoxProps) => (
  <button type="button" className="figure" aria-pressed={now} onClick={onPress}>
    <span className="small soft">{label}</span>
    <span className={now ? 'typed now' : 'typed'}>
      <span className={now ? 'caret' : ''}>{/^\d+$/.test(value) ? printNumber(Number(value)) : value}</span>
      <span className="unit">{unit}</span>
    </span>
  </button>
);
