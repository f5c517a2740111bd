import type { LoadSheet } from '@drumline/loading';

/** How the drums are tied, and what is told of them as dangerous goods. */
export const LoadWords = ({ sheet, leg }: { sheet: LoadSheet; leg: number }) => {
  const { particulars, passengersAndDrums } = sheet.legs[leg]!;
  return (
    <>
      {sheet.tieDown !== null && particulars.length > 0 && (
        <>
          <h2 className="sect">Tie-down</h2>
          <p className="said">
            {sheet.tieDown.words} <b>{sheet.tieDown.caution}</b>
          </p>
        </>
      )}
      {particulars.length > 0 && (
        <>
          <h2 className="sect">Dangerous goods aboard</h2>
          <ul className="said lines">
            {particulars.map(({ label, value }) => (
              <li key={label}>
                <b>{label}</b> {value ?? 'to be written in on paper'}
              </li>
            ))}
            {passengersAndDrums.words !== null && (
              <li>
                <b>{passengersAndDrums.words}</b>
              </li>
            )}
            {sheet.particularsMissing && <li>{sheet.particularsMissing}</li>}
          </ul>
        </>
      )}
    </>
  );
};
