/** Words that are understood over a poor radio: figures one by one, letters by the ICAO spelling alphabet (Annex 10). */
const figures = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const letters =
  'Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu'.split(
    ' ',
  );

/** "F05" is "Foxtrot zero five"; "07:10" is "zero seven one zero". */
export const spoken = (code: string): string =>
  [...code.toUpperCase()]
    .flatMap((sign) => {
      if (sign >= '0' && sign <= '9') return [figures[Number(sign)]!];
      if (sign >= 'A' && sign <= 'Z') return [letters[sign.charCodeAt(0) - 65]!];
      return sign === '-' ? ['dash'] : [];
    })
    .join(' ');

/** "zero four four seven to zero four five two" where drum numbers follow one another, else each by itself. */
export const spokenNumbers = (numbers: readonly string[]): string =>
  runsOf([...numbers].sort(byNumber))
    .map(([first, last, count]) =>
      count > 2
        ? `${spoken(first)} to ${spoken(last)}`
        : count === 2
          ? `${spoken(first)}, ${spoken(last)}`
          : spoken(first),
    )
    .join(', ');

const byNumber = new Intl.Collator('en', { numeric: true }).compare;

type Run = [first: string, last: string, count: number];

const runsOf = (sorted: readonly string[]): readonly Run[] => {
  const runs: Run[] = [];
  for (const number of sorted) {
    const run = runs.at(-1);
    const follows =
      run !== undefined && run[1].length === number.length && Number(run[1]) + 1 === Number(number);
    if (follows) {
      run[1] = number;
      run[2]++;
    } else runs.push([number, number, 1]);
  }
  return runs;
};
