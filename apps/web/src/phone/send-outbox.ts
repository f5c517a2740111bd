import { ask, raisedSchema, readAs, type Said } from './ask.js';
import { type BaseAnswer, type Entry, kept } from './kept.js';
import { territoryNow } from './line.js';
import { onTheWay, waitingEntries } from './outbox.js';
import { sessionEnded } from './who.js';

/** So many in a row that base could not work on: then it is base, not they. */
const mostFailed = 3;

/**
 * Sends what waits, the oldest first and each as it was kept: base counts an id once, so that a request whose answer was
 * lost is sent again. One that base cannot work on keeps nothing else out.
 */
export const sendOutbox = async (): Promise<void> => {
  let failed = 0;
  for (const entry of await waitingEntries()) {
    const outcome = await sendEntry(entry);
    if (outcome === 'no line' || outcome === 'signed out') return;
    failed = outcome === 'failed' ? failed + 1 : 0;
    if (failed === mostFailed) return;
  }
};

type Outcome = 'answered' | Exclude<Said['kind'], 'answer' | 'refused'>;

const sendEntry = async (entry: Entry & { readonly answers: readonly BaseAnswer[] }): Promise<Outcome> => {
  const answered = new Set(entry.answers.map(({ path }) => path));
  onTheWay.set(new Set([...onTheWay.get(), entry.seq]));
  try {
    for (const { path, body } of entry.requests.filter((each) => !answered.has(each.path))) {
      const said = await ask('PUT', path, body);
      if (said.kind === 'signed out') sessionEnded();
      if (said.kind !== 'answer' && said.kind !== 'refused') return said.kind;
      await kept.answers.put(answerOf(path, said));
    }
    return 'answered';
  } finally {
    onTheWay.set(new Set([...onTheWay.get()].filter((seq) => seq !== entry.seq)));
  }
};

const answerOf = (path: string, said: Extract<Said, { kind: 'answer' | 'refused' }>): BaseAnswer => {
  const at = territoryNow().toISOString();
  if (said.kind === 'refused') {
    // What is wrong with it, in the words of the trade; where nothing is named, what base says of it as a whole.
    const says = said.faults.length > 0 ? said.faults : [`${said.what}. ${said.words}`];
    return { path, outcome: 'asks', at, says };
  }
  const read = readAs(raisedSchema, said.body);
  const says = [...(read?.raised ?? []).map(({ what }) => what), ...(read?.report?.raised ?? [])];
  return { path, outcome: read?.entered === false ? 'asks' : 'with base', at, says };
};
