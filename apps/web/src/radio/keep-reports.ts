import { useRef } from 'react';
import { ApiProblem, newId, put, useAct, useCalendar, useMe } from '../api/index.js';
import { type KeptLine, keepLine } from '../paper/kept-lines.js';
import type { SaidSurface } from './read-line.js';
import { reportWords } from './touched.js';

export interface KeptSurface {
  readonly id: string;
  readonly report: SaidSurface;
}

/** The same line sent twice is the same reports. Out of reach, each is kept on this machine until base has it. */
export const useKeepReports = () => {
  const ids = useRef<{ line: string; ids: readonly string[] }>({ line: '', ids: [] });
  const calendar = useCalendar();
  const { fullName } = useMe();
  return useAct(async (line: string, reports: readonly SaidSurface[]) => {
    if (ids.current.line !== line) ids.current = { line, ids: reports.map(newId) };
    for (const [at, report] of reports.entries()) {
      const id = ids.current.ids[at]!;
      await put(pathOf(id), report).catch((error: unknown) => {
        const isOut = error instanceof ApiProblem && error.isOutOfReach;
        const enteredAt = calendar.now.toISOString();
        const kept = { id, text: line, words: reportWords(report, calendar), enteredAt, enteredBy: fullName };
        if (!isOut || !keepLine(waitingLine(report, kept))) throw error;
      });
    }
    const { ids: sent } = ids.current;
    ids.current = { line: '', ids: [] };
    return reports.map((report, at) => ({ id: sent[at]!, report }));
  });
};

const pathOf = (id: string): string => `/api/surface-reports/${id}`;

const waitingLine = (
  report: SaidSurface,
  kept: Pick<KeptLine, 'id' | 'text' | 'words' | 'enteredAt' | 'enteredBy'>,
): KeptLine => ({
  ...kept,
  flight: null,
  happenedAt: report.at,
  writtenAt: report.at,
  by: report.by,
  means: 'radio',
  requests: [{ path: pathOf(kept.id), body: report }],
  answered: 0,
  state: 'kept',
  says: [],
});
