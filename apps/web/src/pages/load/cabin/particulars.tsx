import type { SheetLeg } from '../sheet-read.js';

/** Dangerous goods for the pilot, and by which approval passengers fly with them. */
export const Particulars = ({
  leg,
  missing,
}: {
  readonly leg: SheetLeg;
  readonly missing: string | null;
}) => {
  const { particulars, passengersAndDrums } = leg;
  if (particulars.length === 0 && passengersAndDrums.words === null) return null;
  return (
    <section className="section load-particulars">
      <h2>
        Dangerous goods, {leg.from}-{leg.to}
      </h2>
      {passengersAndDrums.words !== null && (
        <p className={passengersAndDrums.allowed ? '' : 'plum'}>
          <b>{passengersAndDrums.words}</b>
        </p>
      )}
      <dl>
        {particulars.map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value ?? 'to be written in'}</dd>
          </div>
        ))}
      </dl>
      {missing !== null && <p className="plum">{missing}</p>}
    </section>
  );
};
