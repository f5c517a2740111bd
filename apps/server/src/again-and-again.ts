/** Stops it and waits for what is being done. */
export type Stop = () => Promise<void>;

/** Does some work every so many milliseconds, one at a time and never keeping the program alive, until it is stopped. */
export const againAndAgain = (
  everyMs: number,
  work: () => Promise<unknown>,
  onError: (error: unknown) => void,
): Stop => {
  let running: Promise<unknown> | null = null;
  const timer = setInterval(() => {
    running ??= work()
      .catch(onError)
      .finally(() => {
        running = null;
      });
  }, everyMs);
  timer.unref();
  return async () => {
    clearInterval(timer);
    await running;
  };
};
