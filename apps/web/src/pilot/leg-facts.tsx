import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { DrumNumber, spanWords, whenWords } from '../phone/index.js';
import type { LegProps } from './leg-card.js';
import { drumsOnLeg, type LegWords, legWords, stripWords, surfaceAt } from './leg-words.js';
import { LoadWords } from './load-words.js';
import type { FlightHere } from './use-flight.js';

interface LegFactsProps extends LegProps {
  readonly now: Date;
}

/** The essentials of the leg, then everything that was decided the evening before. */
export const LegFacts = ({ here, leg, now }: LegFactsProps) => {
  const { flight, day } = here;
  const state = surfaceAt(day, here.surfaces, { code: flight.route[leg]!, now }).state;
  const words = legWords(flight, leg - 1, state === null || state === 'soft');
  const place = day.places.find(({ code }) => code === flight.route[leg]);
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
      <Essentials here={here} leg={leg} now={now} words={words} />
      {place !== undefined && stripWords(place) !== '' && (
        <>
          <h2 className="sect">Strip</h2>
          <p className="said">{stripWords(place)}</p>
        </>
      )}
      <h2 className="sect">Decided the evening before</h2>
      <ul className="said lines">
        {words.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>{flight.sheet!.fuelWords}</li>
      </ul>
      <LoadWords sheet={flight.sheet!} leg={leg - 1} />
      <Link className="btn inset" href={`/${flight.id}/square`}>
        Show as a code square
      </Link>
    </>
  );
};

const Essentials = ({ here, leg, now, words }: LegFactsProps & { readonly words: LegWords }) => (
  <dl className="facts">
    <Fact of="Drums">
      <Drums here={here} leg={leg} />
    </Fact>
    <Fact of="Binds">
      <strong>{words.binds.main}</strong>
      <br />
      {words.binds.rest}
    </Fact>
    {words.leave !== null && (
      <Fact of="Unload or stay" over={words.leave.over}>
        <strong>{words.leave.main}</strong>
        {words.leave.rest.map((line) => (
          <span key={line} className="small line-below">
            {line}
          </span>
        ))}
      </Fact>
    )}
    <Fact of="Go back if">
      <strong>{words.goBack.main}</strong>
      {words.goBack.rest.map((line) => (
        <span key={line} className="line-below">
          {line}
        </span>
      ))}
    </Fact>
    <Fact of="Surface">
      <Surface here={here} leg={leg} now={now} />
    </Fact>
    <Fact of="Fuel">{words.fuel}</Fact>
  </dl>
);

const Fact = ({ of, over = false, children }: { of: string; over?: boolean; children: ReactNode }) => (
  <div>
    <dt>{of}</dt>
    <dd className={over ? 'over' : ''}>{children}</dd>
  </div>
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

const countWords = (drums: number): string => (drums === 1 ? '1 drum' : `${drums} drums`);

const Surface = ({ here, leg, now }: LegFactsProps) => {
  const code = here.flight.route[leg]!;
  const { state, report } = surfaceAt(here.day, here.surfaces, { code, now });
  const ifSoft = here.flight.sheet?.legs[leg - 1]?.goBack.ifSoft ?? null;
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
