import { figure } from '../../../ui/index.js';
import type { TieDown as Counted } from '../sheet-read.js';

/** Straps for each drum by direction, as a planning aid; or what is missing to count them. */
export const TieDown = ({ tieDown }: { readonly tieDown: Counted | null }) => {
  if (tieDown === null) return null;
  const { counted, words, caution } = tieDown;
  return (
    <section className="section load-tie-down" aria-label="Tie-down">
      <h2>
        Tie-down <small>straps for each drum</small>
      </h2>
      {counted !== null && (
        <dl>
          {counted.needs.map(({ direction, neededLb, straps }) => (
            <div key={direction}>
              <dt>{direction === 'sideways' ? 'each side' : direction}</dt>
              <dd>
                <b>{straps ?? 'none hold'}</b> <small>{figure(neededLb)} lb</small>
              </dd>
            </div>
          ))}
        </dl>
      )}
      <p className={counted === null ? 'plum' : ''}>{words}</p>
      <p>
        <b>{caution}</b>
      </p>
    </section>
  );
};
