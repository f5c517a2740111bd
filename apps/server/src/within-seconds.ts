/** The answer, or an error where it takes longer. What was asked goes on, and nobody waits for it. */
export const withinSeconds = async <Answer>(seconds: number, answer: Promise<Answer>): Promise<Answer> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${seconds} s`)), seconds * 1000);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
};
