import { print } from '@drumline/units';
import { DrumNumber, Main, Notice, Page } from '../phone/index.js';
import { aboveLoaded, type LoadedDraft, Steps } from './loaded-steps.js';
import type { FlightHere } from './use-flight.js';

export interface StepProps {
  readonly here: FlightHere;
  readonly draft: LoadedDraft;
  readonly setDraft: (next: LoadedDraft | null) => void;
}

/** Each place with its drum, front at the top: read it, then tap it. */
export const Positions = ({ here, draft, setDraft }: StepProps) => {
  const { flight, held } = here;
  const { drums } = flight.sheet!;
  const heldAboard = drums.filter(({ number }) => held.has(number));
  const unread = drums.filter(({ number }) => !draft.read.includes(number)).map(({ number }) => number);
  const toggle = (number: string) =>
    setDraft({
      ...draft,
      read: draft.read.includes(number)
        ? draft.read.filter((each) => each !== number)
        : [...draft.read, number],
    });
  return (
    <Page
      above={aboveLoaded(flight)}
      title="Read it, then tap it"
      acts={
        <Main
          waits={unread.length > 0 ? `${unread.length} not read yet: ${unread.join(', ')}` : null}
          onPress={() => setDraft({ ...draft, step: 'totals' })}
        >
          Positions right
        </Main>
      }
    >
      <Steps now="positions" />
      {heldAboard.map(({ number }) => (
        <Notice
          key={number}
          kind="stop"
          word="HOLD."
          title={`${number} may not go out: ${held.get(number)}.`}
        />
      ))}
      <div className="cabin">
        <span className="front">FRONT</span>
        {drums.map(({ number, position, grossKg, lb }) => (
          <button
            key={number}
            type="button"
            className={draft.read.includes(number) ? 'seat read' : 'seat'}
            aria-pressed={draft.read.includes(number)}
            onClick={() => toggle(number)}
          >
            <span className="pos">{position}</span>
            <DrumNumber number={number} held={held.has(number)} />
            <span className={draft.read.includes(number) ? 'box yes' : 'box'} aria-hidden="true" />
            <span className="w">
              {print(grossKg, 'kg', 1)} · {print(lb, 'lb')}
            </span>
          </button>
        ))}
      </div>
      <p className="foot">{balanceWords(flight)}</p>
      <p className="foot">
        Another drum, or another place? Ask base for a new version, or press Problem on the leg.
      </p>
    </Page>
  );
};

const balanceWords = ({ balance, sheet }: FlightHere['flight']): string => {
  const leg = sheet!.legs[0]!;
  const first = balance.filter((each) => each.leg === `${leg.from}-${leg.to}`);
  const parts = first
    .filter(({ moment }) => moment === 'zero fuel' || moment === 'take-off')
    .map(
      ({ moment, armIn, aftIn }) =>
        `${armIn.toFixed(1)} in ${moment}${aftIn === null ? '' : `, aft limit ${aftIn.toFixed(1)} in`}`,
    );
  const inside = first.every((each) => each.inside);
  return parts.length === 0 ? '' : `Balance ${inside ? 'inside' : 'OUTSIDE'}: ${parts.join('; ')}.`;
};
