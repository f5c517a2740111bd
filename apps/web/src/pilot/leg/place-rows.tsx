import type { FlightHere } from '../use-flight.js';

interface PlaceRowsProps {
  readonly here: FlightHere;
  /** From 1: the alternates that will do come first. */
  readonly leg: number;
  /** Not among them. */
  readonly but: string;
  readonly onChoose: (code: string) => void;
}

/** Any place of the territory, those first that the evening before had in mind. */
export const PlaceRows = ({ here: { flight, day }, leg, but, onChoose }: PlaceRowsProps) => {
  const alternates =
    flight.sheet?.legs[leg - 1]?.goBack.alternates.flatMap(({ place, whyNot }) =>
      whyNot === null ? [place] : [],
    ) ?? [];
  const rank = (code: string) => (alternates.includes(code) ? alternates.indexOf(code) : alternates.length);
  const places = day.places
    .filter(({ code }) => code !== but)
    .toSorted((one, other) => rank(one.code) - rank(other.code) || one.code.localeCompare(other.code));
  return (
    <ul className="rows">
      {places.map(({ code, name, drums, capacityDrums }) => (
        <li key={code}>
          <button type="button" className="row" onClick={() => onChoose(code)}>
            <span>
              <b>{code}</b> {name}
            </span>
            <span className="sub">
              holds {drums}
              {capacityDrums === null ? '' : ` of ${capacityDrums}`} drums by the book
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
};
