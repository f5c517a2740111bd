import type { DrumToOpen } from '@drumline/stock';
import { print } from '@drumline/units';
import { DrumNumber } from '../../phone/index.js';
import type { JudgedDraw } from './draw.js';

interface DrawnDrumsProps {
  readonly rows: readonly DrumToOpen[];
  readonly judged: JudgedDraw;
}

/** What comes out of each drum, and what is left in it. */
export const DrawnDrums = ({ rows, judged }: DrawnDrumsProps) => (
  <ul className="rows drawn">
    {rows.map(({ drum, fitness }) => {
      const draw = judged.split.draws.find(({ number }) => number === drum.number);
      return (
        <li key={drum.number} className="row">
          <span>
            <DrumNumber number={drum.number} held={fitness !== 'fit'} />{' '}
            {draw !== undefined && <b>{print(draw.litres, 'L')}</b>}
          </span>
          <span className="side">
            {draw === undefined
              ? print(drum.litres, 'L')
              : draw.leftLitres === 0
                ? 'empty then'
                : `${print(draw.leftLitres, 'L')} left`}
          </span>
        </li>
      );
    })}
  </ul>
);
