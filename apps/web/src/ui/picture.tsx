import type { ReactNode } from 'react';
import { type ApiProblem, outOfReach, type Read, useIsClockAwaited, useLink } from '../api/index.js';
import { Button } from './button.js';
import { MessageLine, ProblemLine, StaleLine } from './message.js';

interface PictureProps<T> {
  readonly read: Read<T>;
  readonly children: (value: T) => ReactNode;
}

/**
 * Shows what was read: "Checking..." until the first answer is there, and the territory's clock, by which all of it is told;
 * the problem where there never was an answer, and otherwise the last picture, with a line above it when it could not be read
 * again, or base does not hear us at all. A territory that is there no more leaves no picture.
 */
export function Picture<T>({ read, children }: PictureProps<T>) {
  const { value, readAt, again } = read;
  const problem = useWhyOfBefore(read);
  const isClockAwaited = useIsClockAwaited();
  if (problem?.kind === 'not-set-up') return <ProblemLine problem={problem} />;
  if (value === undefined || isClockAwaited) {
    if (problem === undefined || value !== undefined)
      return (
        <p className="checking" role="status">
          Checking...
        </p>
      );
    return (
      <div className="first-read-failed">
        {problem.isOutOfReach ? (
          <MessageLine
            what={problem.what}
            why="You have not seen this on this machine yet: there is no last picture of it."
            next={problem.next}
          />
        ) : (
          <ProblemLine problem={problem} />
        )}
        <Button onPress={again}>Try now</Button>
      </div>
    );
  }
  return (
    <>
      {problem !== undefined && readAt !== undefined && (
        <StaleLine problem={problem} readAt={readAt} again={again} />
      )}
      {children(value)}
    </>
  );
}

/**
 * Why what was read is a picture of before; undefined: it is of now. Nothing need have been asked since the connection broke:
 * what is on the page is of before all the same.
 */
export const useWhyOfBefore = ({ problem }: Read<unknown>): ApiProblem | undefined => {
  const isWithBase = useLink().state === 'with base';
  return problem ?? (isWithBase ? undefined : outOfReach());
};

/** Two reads as one: there when both are, and as good as the worse. */
export const bothOf = <A, B>(a: Read<A>, b: Read<B>): Read<readonly [A, B]> => ({
  value: a.value === undefined || b.value === undefined ? undefined : [a.value, b.value],
  readAt: [a.readAt, b.readAt].sort((one, other) => Number(one) - Number(other))[0],
  problem: a.problem ?? b.problem,
  isChecking: a.isChecking || b.isChecking,
  again: () => {
    a.again();
    b.again();
  },
});
