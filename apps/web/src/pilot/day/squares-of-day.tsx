import { Link } from 'wouter';
import { useDay } from './day.js';

/** Where the phone may forget: each flight's square, for a second phone. */
export const SquaresOfDay = () => {
  const flights = useDay()?.day.flights.filter(({ sheet }) => sheet !== null) ?? [];
  return (
    <ul className="rows">
      {flights.map(({ id, route, version, sheet }) => (
        <li key={id}>
          <Link className="row" href={`/${id}/square`}>
            <b>Show {id} as a code square</b>
            <span className="side">{sheet!.checkCode}</span>
            <span className="sub">
              {route.join(' to ')}, version {version}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
};
