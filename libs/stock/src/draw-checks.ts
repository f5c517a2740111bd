/** One thing that is looked at before a drum is pumped. */
export interface DrawCheck {
  /** As it is written in a line of the office, and stands over its box on a slip. */
  readonly id: 'seal' | 'date' | 'clear' | 'dry';
  /** As it is told of a drum that was looked at. */
  readonly said: string;
}

/** What is looked at before a drum is pumped, in this order: the same on the phone, on a slip and in a line of the office. */
export const drawChecks: readonly DrawCheck[] = [
  { id: 'seal', said: 'seal or bung' },
  { id: 'date', said: 'date' },
  { id: 'clear', said: 'clear and bright' },
  { id: 'dry', said: 'no water' },
];

/** What is done with a drum before it is looked at; common practice, no source: the operator's manual decides. */
export const beforeDraw = 'stood, tilted, bonded';

/** "Looked at: seal or bung, no water."; empty: nothing was. */
export const lookedAtWords = (ids: readonly DrawCheck['id'][]): string => {
  const said = drawChecks.filter(({ id }) => ids.includes(id)).map((check) => check.said);
  return said.length === 0 ? '' : `Looked at: ${said.join(', ')}.`;
};
