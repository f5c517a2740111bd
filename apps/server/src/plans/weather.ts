/** Fortnights that every plan is judged by, the same for all of them. */
export const weather = { fortnights: 1000, seed: 1 };
