import { DrumNumber } from '../../phone/index.js';
import { countWords, Fact, UnloadOrStay } from './fact.js';
import type { LegFactsProps } from './leg-facts.js';
import { LegSurface } from './leg-surface.js';
import type { ReportedWords } from './reported-words.js';

/** What is still aboard, whether the aeroplane may leave with it, and the surface. */
export const AfterReport = ({
  here,
  leg,
  now,
  reported: { aboard, left, leftWords, back, leave },
}: LegFactsProps & { readonly reported: ReportedWords }) => (
  <dl className="facts">
    <Fact of="Still aboard">
      <strong>{countWords(aboard.length)}</strong>
      <span className="drums">
        {aboard.map((number) => (
          <DrumNumber key={number} number={number} held={here.held.has(number)} />
        ))}
      </span>
      <span className="small line-below">
        {left.length} left, {back} brought back, by this phone
        {leftWords !== '' && `. ${leftWords}`}
      </span>
    </Fact>
    {leave !== null && <UnloadOrStay leave={leave} />}
    <Fact of="Surface">
      <LegSurface here={here} leg={leg} now={now} />
    </Fact>
  </dl>
);
