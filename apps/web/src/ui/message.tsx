import type { ReactNode } from 'react';
import { type ApiProblem, useCalendar, useTerritoryTime } from '../api/index.js';
import { Button } from './button.js';
import { NotSetUp } from './not-set-up.js';

interface MessageLineProps {
  readonly what: string;
  readonly why?: string;
  readonly next?: string;
  /** `fault`: something did not happen. `note`: something to know. */
  readonly kind?: 'fault' | 'note';
  readonly children?: ReactNode;
}

/** What, why, and what next, in one or two plain sentences. It stays until it is resolved. */
export const MessageLine = ({ what, why = '', next = '', kind = 'fault', children }: MessageLineProps) => (
  <div className={`message ${kind}`} role={kind === 'fault' ? 'alert' : 'status'}>
    <p>
      <b>{sentence(what)}</b> {why} {next}
    </p>
    {children}
  </div>
);

/** A refused request in the server's words, with its faults line by line. */
export const ProblemLine = ({ problem }: { readonly problem: ApiProblem | undefined }) =>
  problem === undefined ? null : problem.kind === 'not-set-up' ? (
    <NotSetUp what={problem.what} why={`${problem.why} ${problem.next}`} />
  ) : (
    <MessageLine what={problem.what} why={problem.why} next={problem.next}>
      {problem.faults.length > 0 && (
        <ul>
          {problem.faults.map((fault) => (
            <li key={fault.path + fault.problem}>
              {fault.path !== '' && <b>{pathWords(fault.path)}: </b>}
              {fault.problem} {fault.remedy}
            </li>
          ))}
        </ul>
      )}
      {problem.status >= 500 && problem.request !== undefined && <small>Request {problem.request}</small>}
    </MessageLine>
  );

/** "timeZone" as people read it: "time zone". Words that are there already, "at 15 degC", stay as they are. */
export const pathWords = (path: string): string =>
  path.includes(' ')
    ? path
    : path.replace(/([a-z])([A-Z])/g, (_, end: string, start: string) => `${end} ${start.toLowerCase()}`);

/** Nothing there: one sentence with the last known fact. */
export const EmptyLine = ({ children }: { readonly children: ReactNode }) => (
  <p className="empty">{children}</p>
);

interface StaleLineProps {
  readonly problem: ApiProblem;
  readonly readAt: Date;
  readonly again: () => void;
}

/** The re-read failed: the last picture stays, and this says of when it is, by the territory's clock. */
export const StaleLine = ({ problem, readAt, again }: StaleLineProps) => {
  const { when } = useCalendar();
  const ofTerritory = useTerritoryTime();
  const kept = problem.isOutOfReach
    ? ' It is tried again by itself; radio and paper entries are kept here meanwhile.'
    : '';
  return (
    <div className="message stale" role="status">
      <p>
        <b>{sentence(problem.what)}</b> You see the picture of {when(ofTerritory(readAt.toISOString()))}.
        {kept}
      </p>
      <Button small onPress={again}>
        Try now
      </Button>
    </div>
  );
};

const sentence = (text: string): string => (/[.:!?]$/.test(text) ? text : `${text}.`);
