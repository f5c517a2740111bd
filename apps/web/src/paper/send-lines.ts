import { useEffect } from 'react';
import { z } from 'zod';
import { ApiProblem, put } from '../api/index.js';
import { changeLine, type KeptLine, linesNow, openLines } from './kept-lines.js';

const againMs = 3_000;

/** Sends what waits, by itself, on whichever page the person is. */
export const useSendLines = (person: string): void => {
  useEffect(() => {
    openLines(person);
    const goNow = () => void sendLines();
    goNow();
    const timer = setInterval(goNow, againMs);
    window.addEventListener('online', goNow);
    return () => {
      clearInterval(timer);
      window.removeEventListener('online', goNow);
    };
  }, [person]);
};

let isOn = false;

/** The oldest first; base counts an id once, so that what had no answer is sent again. */
export const sendLines = async (): Promise<void> => {
  if (isOn) return;
  isOn = true;
  try {
    for (let next = nextLine(); next !== undefined; next = nextLine()) if (!(await sendLine(next))) return;
  } finally {
    isOn = false;
  }
};

const nextLine = (): KeptLine | undefined =>
  linesNow().find((line) => line.state === 'kept' && !waitsFor(line));

/** What happened to a flight afterwards waits until what base asks about is settled. */
export const waitsFor = (line: KeptLine): KeptLine | undefined => {
  const all = linesNow();
  return all
    .slice(0, all.indexOf(line))
    .find(({ flight, state }) => line.flight !== null && flight === line.flight && state === 'asks');
};

/** False: there is no line to base now. */
const sendLine = async (line: KeptLine): Promise<boolean> => {
  const says = [...line.says];
  for (let at = line.answered; at < line.requests.length; at += 1) {
    const { path, body } = line.requests[at]!;
    try {
      says.push(...whatBaseSays((await put(path, body)).body));
      changeLine(line.id, { answered: at + 1, says: [...new Set(says)] });
    } catch (error) {
      if (!(error instanceof ApiProblem)) throw error;
      if (error.isOutOfReach || error.status >= 500) return false;
      changeLine(line.id, { state: 'asks', says: [refusalWords(error)] });
      return true;
    }
  }
  changeLine(line.id, { state: 'with base' });
  return true;
};

const refusalWords = ({ what, why, next, faults }: ApiProblem): string =>
  faults.length === 0
    ? `${what}. ${why} ${next}`.trim()
    : faults.map(({ problem, remedy }) => `${problem} ${remedy}`).join(' ');

const answerSchema = z.object({
  raised: z.array(z.object({ what: z.string() })).optional(),
  report: z.object({ raised: z.array(z.string()) }).optional(),
});

const whatBaseSays = (body: unknown): readonly string[] => {
  const read = answerSchema.safeParse(body);
  if (!read.success) return [];
  return [...(read.data.raised ?? []).map(({ what }) => what), ...(read.data.report?.raised ?? [])];
};
