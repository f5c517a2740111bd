import { type KeyboardEvent, useRef, useState } from 'react';
import type { ChartScale } from './chart-scale.js';
import { kindInWords, type PlaceRow } from './place-rows.js';

interface PlaceButtonsProps {
  readonly rows: readonly PlaceRow[];
  readonly scale: ChartScale;
  readonly selected: string | undefined;
  readonly onOpen: (code: string) => void;
}

/** A button over each mark. One of them is reached by Tab, the arrows go on from north to south, Enter opens the card. */
export const PlaceButtons = ({ rows, scale, selected, onOpen }: PlaceButtonsProps) => {
  const list = useRef<HTMLUListElement>(null);
  const [stop, setStop] = useState(selected);
  const codes = rows.map(({ place }) => place.code);
  const tabStop = codes.includes(stop ?? '') ? stop : codes[0];
  const go = (event: KeyboardEvent) => {
    const to = codes[indexFor(event.key, codes.indexOf(tabStop!), codes.length)];
    if (to === undefined) return;
    event.preventDefault();
    setStop(to);
    list.current?.querySelector<HTMLElement>(`[data-place="${CSS.escape(to)}"]`)?.focus();
  };
  return (
    <ul
      ref={list}
      className="map-places"
      aria-label="Places from north to south; the arrows go from one to the next"
      onKeyDown={go}
    >
      {rows.map(({ place, words }) => {
        const { x, y } = scale.at(place);
        return (
          <li key={place.code} style={{ left: x, top: y }}>
            <button
              type="button"
              data-place={place.code}
              aria-label={`${place.code} ${place.name}, ${kindInWords(place)}${words === '' ? '' : `: ${words}`}`}
              aria-pressed={place.code === selected}
              tabIndex={place.code === tabStop ? 0 : -1}
              onClick={() => {
                setStop(place.code);
                onOpen(place.code);
              }}
            />
          </li>
        );
      })}
    </ul>
  );
};

const indexFor = (key: string, from: number, count: number): number => {
  switch (key) {
    case 'ArrowDown':
    case 'ArrowRight':
      return Math.min(from + 1, count - 1);
    case 'ArrowUp':
    case 'ArrowLeft':
      return Math.max(from - 1, 0);
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return -1;
  }
};
