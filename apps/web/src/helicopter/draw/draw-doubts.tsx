import { print } from '@drumline/units';
import { Notice } from '../../phone/index.js';
import { figure } from '../words.js';
import { gaugeWords, type JudgedDraw } from './draw.js';
import { IntoReserve } from './draw-for-what.js';
import type { LitresStep } from './draw-litres.js';

interface DrawDoubtsProps {
  readonly step: LitresStep;
  readonly judged: JudgedDraw;
}

/** What stands against a draw, and what speaks for it. None of it keeps it from being kept. */
export const DrawDoubts = ({ step, judged }: DrawDoubtsProps) => {
  const { draft, rows, here } = step;
  const { gauge, split, fromReserveLitres } = judged;
  const density = here.places.bookDensityKgPerLitre;
  const words = gauge === null ? null : gaugeWords(gauge, figure(draft.litres) ?? 0, density);
  const notFit = rows.filter(({ fitness }) => fitness !== 'fit');
  return (
    <>
      {notFit.map(({ drum, fitness, hold }) => (
        <Notice
          key={drum.number}
          kind="stop"
          word={fitness === 'held' ? 'HOLD.' : 'Past retest.'}
          title={`${drum.number}${hold === null ? '' : `: ${hold.reason}`}.`}
        >
          Pump no more of it. Kept anyway, base is told, and fuel quality with it.
        </Notice>
      ))}
      {split.beyondLitres > 0 && (
        <Notice
          kind="check"
          word="Check."
          title={`${print(split.beyondLitres, 'L')} more than the book has.`}
        >
          Was there another drum? Kept as you write it, base looks at it.
        </Notice>
      )}
      {words !== null && gauge !== null && (
        <Notice kind={gauge.agrees ? 'agree' : 'check'} word={words.word} title={words.title}>
          {words.rest}
        </Notice>
      )}
      {fromReserveLitres > 0 && draft.medevac === null && (
        <IntoReserve {...step} litres={fromReserveLitres} />
      )}
    </>
  );
};
