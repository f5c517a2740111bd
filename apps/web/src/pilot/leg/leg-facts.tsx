import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { DrumNumber } from '../../phone/index.js';
import type { OpenedFlight } from '../day/opened-flight.js';
import type { FlightHere } from '../use-flight.js';
import { AfterReport } from './after-report.js';
import { countWords, Fact, UnloadOrStay } from './fact.js';
import type { LegProps } from './leg-card.js';
import { LegSurface } from './leg-surface.js';
import { drumsOnLeg, isSoftNow, type LegWords, legWords, stripWords } from './leg-words.js';
import { LoadWords } from './load-words.js';
import { reportedWords } from './reported-words.js';

export interface LegFactsProps extends LegProps {
  readonly now: Date;
}

/**
 * The essentials of the leg, then everything that was decided the evening before. Once drums are reported on it, what is
 * still aboard comes first, and the rest stands under its name: as planned before the report.
 */
export const LegFacts = ({ here, planned, leg, now }: LegFactsProps & { readonly planned: OpenedFlight }) => {
  const { flight, day, own } = here;
  const softCounts = isSoftNow(day, here.surfaces, { code: flight.route[leg]!, now });
  const reported = reportedWords(flight, leg - 1, { planned, reported: own.drums, softCounts });
  const stands = reported === null ? flight : planned;
  const words = legWords(stands, leg - 1, softCounts);
  if (words === null)
    return (
      <div className="said">
        <p>
          <b>No load sheet.</b> {flight.why}
        </p>
      </div>
    );
  return (
    <>
      {reported === null ? (
        <Essentials here={here} leg={leg} now={now} words={words} />
      ) : (
        <AfterReport here={here} leg={leg} now={now} reported={reported} />
      )}
      <Strip here={here} leg={leg} />
      <h2 className="sect">
        {reported === null ? 'Decided the evening before' : 'As planned, before the report'}
      </h2>
      {reported !== null && (
        <dl className="facts">
          <Fact of="Drums">{countWords(words.drums.length)}</Fact>
          <Decided words={words} />
        </dl>
      )}
      <ul className="said lines">
        {words.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>{stands.sheet!.fuelWords}</li>
      </ul>
      <LoadWords sheet={stands.sheet!} leg={leg - 1} />
      <Link className="btn inset" href={`/${flight.id}/square`}>
        Show as a code square
      </Link>
    </>
  );
};

const Strip = ({ here: { day, flight }, leg }: LegProps) => {
  const place = day.places.find(({ code }) => code === flight.route[leg]);
  if (place === undefined || stripWords(place) === '') return null;
  return (
    <>
      <h2 className="sect">Strip</h2>
      <p className="said">{stripWords(place)}</p>
    </>
  );
};

const Essentials = ({ here, leg, now, words }: LegFactsProps & { readonly words: LegWords }) => (
  <dl className="facts">
    <Fact of="Drums">
      <Drums here={here} leg={leg} />
    </Fact>
    <Decided words={words}>
      <Fact of="Surface">
        <LegSurface here={here} leg={leg} now={now} />
      </Fact>
    </Decided>
  </dl>
);

/** What was decided of the leg in few words; with what stands between going back and fuel. */
const Decided = ({ words, children }: { readonly words: LegWords; readonly children?: ReactNode }) => (
  <>
    <Fact of="Binds">
      <strong>{words.binds.main}</strong>
      <br />
      {words.binds.rest}
    </Fact>
    {words.leave !== null && <UnloadOrStay leave={words.leave} />}
    <Fact of={words.goBack.of}>
      <strong>{words.goBack.main}</strong>
      {words.goBack.rest.map((line) => (
        <span key={line} className="line-below">
          {line}
        </span>
      ))}
    </Fact>
    {children}
    <Fact of="Fuel">{words.fuel}</Fact>
    <Fact of="Balance" over={!words.balance.isInside}>
      <strong>{words.balance.main}</strong>
      {words.balance.moments.map((moment) => (
        <span key={moment} className="small line-below">
          {moment}
        </span>
      ))}
    </Fact>
  </>
);

const Drums = ({ here, leg }: { readonly here: FlightHere; readonly leg: number }) => {
  const { flight, own, held } = here;
  const { onSheet, besides } = drumsOnLeg(flight, leg - 1, own.drums);
  const numbers = [...onSheet, ...besides];
  const said = new Set(own.drums.map(({ drum }) => drum));
  const left = own.drums.filter(({ kind }) => kind === 'left at').length;
  return (
    <>
      <strong>{numbers.length === 0 ? 'No drums' : countWords(numbers.length)}</strong>
      <span className="drums">
        {numbers.map((number) => (
          <span key={number} className={said.has(number) ? 'done' : ''}>
            <DrumNumber number={number} held={held.has(number)} />
          </span>
        ))}
      </span>
      {besides.length > 0 && (
        <span className="small line-below">
          <b>{besides.join(', ')} not on the sheet:</b> in no weight here. Weigh, and add by hand.
        </span>
      )}
      {own.drums.length > 0 && (
        <span className="small">
          {left} left, {own.drums.length - left} brought back, by this phone
        </span>
      )}
    </>
  );
};
