import { spanWords, whenWords } from '../../phone/index.js';
import type { LegFactsProps } from './leg-facts.js';
import { surfaceAt } from './leg-words.js';

/** As it counts now, with its report and what to do where soft counts. */
export const LegSurface = ({ here, leg, now }: LegFactsProps) => {
  const code = here.flight.route[leg]!;
  const { state, report } = surfaceAt(here.day, here.surfaces, { code, now });
  const isOver = here.own.drums.some((drum) => drum.kind === 'left at' && drum.leg === leg);
  const ifSoft = isOver ? null : (here.flight.sheet?.legs[leg - 1]?.goBack.ifSoft ?? null);
  const isSoft = state === null || state === 'soft';
  return (
    <>
      <strong>{state === null ? 'Unknown: soft counts' : state[0]!.toUpperCase() + state.slice(1)}</strong>{' '}
      {report === null
        ? 'Nobody has reported.'
        : `${state === null ? `${report.state}, ` : ''}${whenWords(report.at, now)} by ${report.by}, ${spanWords(now.getTime() - Date.parse(report.at))} ago`}
      {isSoft && ifSoft !== null && <span className="small line-below">{ifSoft.words}</span>}
    </>
  );
};
