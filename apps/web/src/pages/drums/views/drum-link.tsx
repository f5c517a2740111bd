import { type Go, openDrum } from '../address.js';

/** A number that opens its drum. */
export const DrumLink = ({ number, go }: { readonly number: string; readonly go: Go }) => (
  <button type="button" className="plain-link drums-link" onClick={() => openDrum(go, number)}>
    {number}
  </button>
);

/** The focus goes to the next number of the list, or the one before; Enter opens it. */
export const moveAmongDrums = (by: 1 | -1): void => {
  const links = [...document.querySelectorAll<HTMLElement>('.drums-list .drums-link')];
  const at = links.indexOf(document.activeElement as HTMLElement);
  links[at === -1 ? 0 : Math.min(Math.max(at + by, 0), links.length - 1)]?.focus();
};
