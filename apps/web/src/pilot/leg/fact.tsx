import type { ReactNode } from 'react';
import type { LegWords } from './leg-words.js';

export const Fact = ({ of, over = false, children }: { of: string; over?: boolean; children: ReactNode }) => (
  <div>
    <dt>{of}</dt>
    <dd className={over ? 'over' : ''}>{children}</dd>
  </div>
);

export const UnloadOrStay = ({ leave }: { readonly leave: NonNullable<LegWords['leave']> }) => (
  <Fact of="Unload or stay" over={leave.over}>
    <strong>{leave.main}</strong>
    {leave.rest.map((line) => (
      <span key={line} className="small line-below">
        {line}
      </span>
    ))}
  </Fact>
);

export const countWords = (drums: number): string => (drums === 1 ? '1 drum' : `${drums} drums`);
