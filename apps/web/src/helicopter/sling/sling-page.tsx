import { print } from '@drumline/units';
import { useState } from 'react';
import { Link } from 'wouter';
import { clockNow, DrumNumber, Main, Notice, NotKept, Page, Press, useKeeping } from '../../phone/index.js';
import { type CacheView, cacheView } from '../cache-view.js';
import { LastReport } from '../last-report.js';
import { movementsOf } from '../own-movements.js';
import { afterThese } from '../places-now.js';
import { droppedReport, type Lift, setDownReport } from '../reports.js';
import { TickRow } from '../tick-row.js';
import type { AtPlace } from '../use-places.js';
import { levelWords } from '../words.js';
import { liftWeight, nextLift, slingPlan, toLift } from './sling.js';

/** Drums under the hook, lift by lift: each is where it was until somebody says set down. */
export const SlingPage = ({ here, place, person }: AtPlace) => {
  const view = cacheView(here, place);
  const plan = slingPlan(here, place);
  const { helicopter } = here.places;
  const perLift = helicopter?.drumsPerLift ?? 1;
  const [other, setOther] = useState<readonly string[] | null>(null);
  const [chosenTo, setTo] = useState<string | null>(null);
  const [isDropping, setIsDropping] = useState(false);
  const { keepReport, notKept } = useKeeping(person);
  const to = chosenTo ?? plan?.to ?? '';
  const drums = other ?? nextLift(view, plan, perLift);
  const lift: Lift = { helicopter: helicopter?.id ?? person.crew ?? person.fullName, from: place, to, drums };
  const waits = to === '' ? 'Say where to' : drums.length === 0 ? 'No sealed drum here is fit' : null;
  const done = async (make: typeof setDownReport): Promise<void> => {
    if (!(await keepReport((reporter) => make(reporter, lift)))) return;
    setOther(null);
    setIsDropping(false);
  };
  return (
    <Page
      above={
        <>
          <span>{lift.helicopter}</span>
          {plan !== null && (
            <span>
              {plan.setDown} of {plan.drums} set down
            </span>
          )}
        </>
      }
      title={`Sling ${place} to ${to === '' ? '…' : to}`}
      acts={
        <>
          <NotKept words={notKept} />
          <div className="two">
            <Press onPress={() => setOther(other === null ? drums : null)}>
              {other === null ? 'Other drums' : 'Oldest first'}
            </Press>
            <button type="button" className="btn stop" onClick={() => setIsDropping(!isDropping)}>
              {isDropping ? 'Not dropped' : 'Load dropped'}
            </button>
          </div>
          {isDropping ? (
            <Main
              waits={waits}
              small={`${drums.length} drums dropped, nobody knows where`}
              onPress={() => void done(droppedReport)}
            >
              Keep
            </Main>
          ) : (
            <Main
              waits={waits}
              small={`this lift at ${to}, ${drums.length} ${drums.length === 1 ? 'drum' : 'drums'}`}
              onPress={() => void done(setDownReport)}
            >
              Set down
            </Main>
          )}
        </>
      }
    >
      <LastReport here={here} place={place} />
      <ToField here={here} from={place} to={to} onChoose={setTo} />
      <h2 className="sect">
        This lift, {drums.length} of at most {perLift} · {liftWeight(view, drums)}, rigging not counted
      </h2>
      {other === null ? (
        <div className="drums said">
          {drums.map((number) => (
            <DrumNumber key={number} number={number} />
          ))}
        </div>
      ) : (
        <Pick view={view} drums={drums} onPick={setOther} />
      )}
      {drums.length > perLift && (
        <Notice kind="check" word="Check." title={`${drums.length} drums on one hook; ${perLift} is usual.`}>
          The hook limit and the manual decide.
        </Notice>
      )}
      {isDropping ? (
        <Notice kind="stop" word="Dropped." title="Their place becomes unknown, and base looks for them." />
      ) : (
        <Then here={here} lift={lift} />
      )}
      <p className="foot">
        Still at {place} until you say set down. Oldest fit first. Part drums do not fly under a sling. The
        approved manual decides what the hook takes.
      </p>
      <Link className="btn inset back" href={`/at/${place}`}>
        Back to {view.name}
      </Link>
    </Page>
  );
};

interface ToFieldProps {
  readonly here: AtPlace['here'];
  readonly from: string;
  readonly to: string;
  readonly onChoose: (place: string) => void;
}

const ToField = ({ here, from, to, onChoose }: ToFieldProps) => (
  <label className="field said">
    To
    <select value={to} onChange={({ target }) => onChoose(target.value)}>
      <option value="">Choose a place</option>
      {here.places.places
        .filter(({ code }) => code !== from)
        .map(({ code, name }) => (
          <option key={code} value={code}>
            {name} {code}
          </option>
        ))}
    </select>
  </label>
);

interface PickProps {
  readonly view: CacheView;
  readonly drums: readonly string[];
  readonly onPick: (drums: readonly string[]) => void;
}

const Pick = ({ view, drums, onPick }: PickProps) => (
  <ul className="rows">
    {toLift(view).map(({ drum: { number, grossKg } }) => (
      <TickRow
        key={number}
        ticked={drums.includes(number)}
        onTurn={() =>
          onPick(drums.includes(number) ? drums.filter((each) => each !== number) : [...drums, number])
        }
      >
        <DrumNumber number={number} /> {print(grossKg, 'kg', 1)}
      </TickRow>
    ))}
  </ul>
);

/** What both places have after this lift, by the same rules as after Keep. */
const Then = ({ here, lift }: { readonly here: AtPlace['here']; readonly lift: Lift }) => {
  if (lift.to === '' || lift.drums.length === 0) return null;
  const kept = setDownReport({ by: '', clock: clockNow(), newId: () => '' }, lift);
  const then = afterThese(here, movementsOf(kept));
  const words = [lift.to, lift.from].map((place) => {
    const { stock, level } = cacheView(then, place);
    return `${place} ${print(stock.usableLitres, 'L')}${level === null ? '' : `, ${levelWords[level].toLowerCase()}`}`;
  });
  return <Notice kind="note" word="After this lift:" title={`${words.join('; ')}.`} />;
};
