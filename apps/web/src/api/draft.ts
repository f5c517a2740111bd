import { useState } from 'react';

const prefix = 'drumline.draft.';

/** What a person has begun and not kept: it outlives a reload and a restart. `null` forgets it. */
export const useDraft = <T>(name: string, first: T): [T, (next: T | null) => void] => {
  const [written, setWritten] = useState<{ readonly name: string; readonly value: T } | null>(null);
  // Another name is another draft: a flight that was still being looked for has none.
  const value = written?.name === name ? written.value : readDraft(name, first);
  return [
    value,
    (next) => {
      if (next === null) localStorage.removeItem(prefix + name);
      else localStorage.setItem(prefix + name, JSON.stringify(next));
      setWritten({ name, value: next ?? first });
    },
  ];
};

const readDraft = <T>(name: string, first: T): T => {
  const text = localStorage.getItem(prefix + name);
  return text === null ? first : (JSON.parse(text) as T);
};
