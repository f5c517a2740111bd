/** What was done to a flight, after "was": "amended". */
export const actDone = (lastAct: string): string => done[lastAct] ?? `changed (${lastAct})`;

const done: Readonly<Record<string, string>> = {
  offer: 'offered',
  replan: 're-planned',
  approve: 'approved',
  amend: 'amended',
  'set positions': 'given other positions',
  decline: 'declined',
  give: 'given',
  load: 'loaded',
  'take off': 'reported off',
  land: 'reported landed',
  report: 'accounted for',
  close: 'closed',
  'let go': 'let go',
  refuse: 'refused',
  'call off': 'called off',
  mark: 'marked',
  unmark: 'unmarked',
  keep: 'kept as it is',
  'hold in place': 'held in place',
  'free to move': 'freed to move',
};
