import { Link, useLocation } from 'wouter';
import { actDone } from '../../api/act-done.js';
import { Main, Notice, Page, useTerritoryNow, whenWords } from '../../phone/index.js';
import { useFlight } from '../use-flight.js';
import { open } from './day.js';
import { differences, nameOf, newsOf } from './newer-version.js';

/** What base has instead of the load that is open; the person opens it, or stays. */
export const NewerVersion = ({ id }: { readonly id: string }) => {
  const here = useFlight(id);
  const now = useTerritoryNow();
  const [, go] = useLocation();
  if (here === undefined || here === null || here.newer === null || here.newer === 'gone')
    return (
      <Page
        title={id}
        acts={
          <Link className="btn" href={`/${id}/1`}>
            Back to the leg
          </Link>
        }
      />
    );
  const { flight, newer, own } = here;
  const isSameVersion = newer.version === flight.version;
  const [opened, newest] = [nameOf(flight, newer), nameOf(newer, flight)];
  return (
    <Page
      above={`${id} · ${flight.route.slice(0, -1).join(' to ')}`}
      title={
        isSameVersion
          ? `Version ${flight.version} says other things now`
          : `Version ${newer.version} has come in`
      }
      acts={
        <>
          <Link className="btn" href={`/${id}/1`}>
            Stay on {opened} for now
          </Link>
          <Main onPress={() => void open(newer).then(() => go(`/${id}/1`))}>Open {newest}</Main>
        </>
      }
    >
      <Notice kind="check" word={`You have ${opened} open.`} title="Nothing has changed on your page yet.">
        {isSameVersion ? (
          `${newsOf(flight, newer)} Version ${newer.version} is ${newest} now.`
        ) : (
          <>
            {id} was {actDone(newer.lastAct)} {whenWords(newer.changedAt, now)} by {newer.changedByName}
            {newer.reason === null ? '.' : `: ${newer.reason}`}
          </>
        )}
      </Notice>
      <table className="cmp wraps">
        <thead>
          <tr>
            <td />
            <th className="r" scope="col">
              Open
            </th>
            <th className="r" scope="col">
              Come in
            </th>
          </tr>
        </thead>
        <tbody>
          {differences(flight, newer).map((row) => (
            <tr key={row.of}>
              <th scope="row">{row.of}</th>
              <td className="f">{row.opened}</td>
              <td className="f">{row.newest}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {own.loadedVersion !== null && (
        <p className="said">
          You have reported <b>Loaded</b> on version {own.loadedVersion}. That stays written. Load by the new
          one, and report it again.
        </p>
      )}
      <p className="said">
        Any printed sheet of {opened}: <b>throw it away</b>.
      </p>
    </Page>
  );
};
