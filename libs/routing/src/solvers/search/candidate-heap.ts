/** Candidate trips (route, day), the best score on top; it grows as needed and is emptied for each use. */
export class CandidateHeap {
  size = 0;
  private score = new Float64Array(1024);
  private route = new Int32Array(1024);
  private day = new Int32Array(1024);

  topScore(): number {
    return this.score[0];
  }
  topRoute(): number {
    return this.route[0];
  }
  topDay(): number {
    return this.day[0];
  }

  push(score: number, route: number, day: number): void {
    if (this.size === this.score.length) this.grow();
    let at = this.size++;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (this.score[parent] >= score) break;
      this.copy(parent, at);
      at = parent;
    }
    this.set(at, score, route, day);
  }

  pop(): void {
    const last = --this.size;
    if (last > 0) this.sink(this.score[last], this.route[last], this.day[last]);
  }

  /** Gives the top candidate another score. */
  rescore(score: number): void {
    this.sink(score, this.route[0], this.day[0]);
  }

  private sink(score: number, route: number, day: number): void {
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= this.size) break;
      if (child + 1 < this.size && this.score[child + 1] > this.score[child]) child++;
      if (this.score[child] <= score) break;
      this.copy(child, at);
      at = child;
    }
    this.set(at, score, route, day);
  }

  private set(at: number, score: number, route: number, day: number): void {
    this.score[at] = score;
    this.route[at] = route;
    this.day[at] = day;
  }

  private copy(from: number, to: number): void {
    this.set(to, this.score[from], this.route[from], this.day[from]);
  }

  private grow(): void {
    const size = this.score.length * 2;
    const widen = <A extends Float64Array | Int32Array>(to: A, from: A): A => {
      to.set(from);
      return to;
    };
    this.score = widen(new Float64Array(size), this.score);
    this.route = widen(new Int32Array(size), this.route);
    this.day = widen(new Int32Array(size), this.day);
  }
}
