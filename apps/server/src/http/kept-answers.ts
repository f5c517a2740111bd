interface Kept<From, T> {
  /** What it was made from. */
  readonly from: From;
  readonly answer: Promise<T>;
}

interface Keeping<From> {
  /** Whether an answer made from the first may still be given when the second holds. */
  readonly mayServe: (made: From, now: From) => boolean;
  readonly most: number;
}

/**
 * Answers that many ask for, kept as long as what they were made from holds. Whoever asks reads that first, so that an
 * answer may be newer than it is taken for, never older. Those who ask while one is being made wait for the same one; what
 * failed is not kept: the next who asks tries again.
 */
export class KeptAnswers<From, T> {
  private readonly kept = new Map<string, Kept<From, T>>();

  constructor(private readonly keeping: Keeping<From>) {}

  async read(
    key: string,
    now: From,
    make: () => Promise<T>,
  ): Promise<{ readonly from: From; readonly answer: T }> {
    const known = this.kept.get(key);
    const { from, answer } =
      known !== undefined && this.keeping.mayServe(known.from, now) ? known : this.keep(key, now, make());
    return { from, answer: await answer };
  }

  private keep(key: string, from: From, answer: Promise<T>): Kept<From, T> {
    if (this.kept.size >= this.keeping.most) this.kept.clear();
    const made = { from, answer };
    this.kept.set(key, made);
    answer.catch(() => {
      if (this.kept.get(key) === made) this.kept.delete(key);
    });
    return made;
  }
}
