const place = 'drumline.last-answer';

/** By this machine's clock: a page that is loaded anew while base is silent counts from here, not from its own beginning. */
export const noteAnswer = (at: Date): void => {
  try {
    localStorage.setItem(place, at.toISOString());
  } catch {
    // A browser that keeps nothing counts from its own beginning.
  }
};

export const lastAnswerAt = (): Date => {
  try {
    const at = Date.parse(localStorage.getItem(place) ?? '');
    return Number.isNaN(at) || at > Date.now() ? new Date() : new Date(at);
  } catch {
    return new Date();
  }
};
