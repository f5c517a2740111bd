import type { ReactNode } from 'react';
import type { ApiProblem } from '../api/index.js';
import { Button } from './button.js';

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
  problem === undefined ? null : (
    <MessageLine what={problem.what} why={problem.why} next={problem.next}>
      {problem.faults.length > 0 && (
        <ul>
          {problem.faults.map((fault) => (
            <li key={fault.path + fault.problem}>
              {fault.path !== '' && <b>{fault.path}: </b>}
              {fault.problem} {fault.remedy}
            </li>
          ))}
        </ul>
      )}
      {problem.status >= 500 && problem.request !== undefined && <small>Request {problem.request}</small>}
    </MessageLine>
  );

/** Nothing there: one sentence with the last known fact. */
export const EmptyLine = ({ children }: { readonly children: ReactNode }) => (
  <p className="empty">{children}</p>
);

/** The re-read failed: the last picture stays, and this says of when it is. */
export const StaleLine = ({ problem, of, again }: { problem: ApiProblem; of: string; again: () => void }) => (
  <div className="message stale" role="status">
    <p>
      <b>{sentence(problem.what)}</b> You see the picture of {of}.
    </p>
    <Button small onPress={again}>
      Try now
    </Button>
  </div>
);

const sentence = (text: string): string => (/[.:!?]$/.test(text) ? text : `${text}.`);
