import { Link } from 'wouter';
import { Notice, Page } from '../phone/index.js';
import { useFlight } from './use-flight.js';

/** Drums that come down where the plan has no landing. */
export const Elsewhere = ({ id, leg }: { readonly id: string; readonly leg: number }) => {
  const here = useFlight(id);
  if (here === undefined || here === null) return <Page title={id} />;
  const { flight, day } = here;
  const alternates = flight.sheet?.legs[leg - 1]?.goBack.alternates.map(({ place }) => place) ?? [];
  const rank = (code: string) => (alternates.includes(code) ? alternates.indexOf(code) : alternates.length);
  const places = day.places
    .filter(({ code }) => code !== flight.route[leg])
    .toSorted((one, other) => rank(one.code) - rank(other.code) || one.code.localeCompare(other.code));
  return (
    <Page
      above={
        <Link href={`/${id}/${leg}`}>
          {id} · {flight.aircraft} · planned for {flight.route[leg]}
        </Link>
      }
      title="Where are the drums?"
    >
      <Notice kind="note" word="That is all right." title="Any place counts.">
        The plan does not stop you. The dispatcher gets one thing to look at.
      </Notice>
      <ul className="rows">
        {places.map(({ code, name, drums, capacityDrums }) => (
          <li key={code}>
            <Link className="row" href={`/${id}/left/${leg}/${code}`}>
              <span>
                <b>{code}</b> {name}
              </span>
              <span className="sub">
                holds {drums}
                {capacityDrums === null ? '' : ` of ${capacityDrums}`} drums by the book
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
};
