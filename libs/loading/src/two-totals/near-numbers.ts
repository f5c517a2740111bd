/**
 * Drum numbers of a load that a wrong number may have been meant for: one digit different, two digits changed over,
 * or one digit missing or too many. Empty: nothing near.
 */
export function nearNumbers(typed: string, onLoad: readonly string[]): readonly string[] {
  return onLoad.filter(
    (number) =>
      number !== typed &&
      (differingPlaces(typed, number) === 1 || swapped(typed, number) || oneDropped(typed, number)),
  );
}

const differingPlaces = (a: string, b: string): number =>
  a.length === b.length ? [...a].filter((digit, at) => digit !== b[at]).length : Number.POSITIVE_INFINITY;

const swapped = (a: string, b: string): boolean =>
  differingPlaces(a, b) === 2 && [...a].sort().join('') === [...b].sort().join('');

function oneDropped(a: string, b: string): boolean {
  const [shorter, longer] = a.length < b.length ? [a, b] : [b, a];
  return (
    longer.length === shorter.length + 1 &&
    [...longer].some((_, at) => longer.slice(0, at) + longer.slice(at + 1) === shorter)
  );
}
