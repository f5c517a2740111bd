/** Exit codes for scripts; `drumline --help` prints this list. */
export const exitCodes = {
  /** Done; for `check` no fault, for `plan` no avoidable shortage. */
  done: 0,
  /** `check` found faults, or no plan is possible. */
  faults: 1,
  /** The command line was not understood. */
  usage: 2,
  /** The document could not be read or has faults. */
  badInput: 3,
  /** Stopped by Ctrl-C; the best plan so far was written. */
  interrupted: 130,
  /** A defect in the program. */
  defect: 70,
} as const;

/** Ends the command with a message for people and an exit code for scripts; thrown by commands, caught once in main. */
export class CommandEnd extends Error {
  constructor(
    readonly exitCode: number,
    message: string,
  ) {
    super(message);
  }
}
