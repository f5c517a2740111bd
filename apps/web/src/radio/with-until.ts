/** The line with a last day for one of its reports, counted from 0 as they are read. */
export const withUntil = (line: string, report: number, day: string): string => {
  let at = -1;
  return line
    .split(/([,;])/)
    .map((part) => {
      if (/^[\s,;]*$/.test(part)) return part;
      at += 1;
      return at === report ? `${part.trimEnd()} until ${day}` : part;
    })
    .join('');
};
