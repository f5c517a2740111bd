import { useLocation } from 'wouter';
import { type Person, type Report, type Reporter, useKeeping } from '../../phone/index.js';

/** Keeps what was reported, then goes on to another page; where it could not be kept, the page stays. */
export const useReporting = (person: Person) => {
  const { keepReports, notKept } = useKeeping(person);
  const [, go] = useLocation();
  const report = async (
    make: (reporter: Reporter) => Report | readonly Report[],
    then: string,
    onKept?: () => void | Promise<void>,
  ): Promise<void> => {
    if (!(await keepReports((reporter) => [make(reporter)].flat()))) return;
    await onKept?.();
    go(then);
  };
  return { report, notKept };
};
