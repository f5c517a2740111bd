import { useState } from 'react';

/** What a person has begun and not kept: it outlives a reload and a restart. `null` forgets it. */
export const useDraft = <T>(name: string, first: T): [T, (next: T | null) => void] => {
  const key = `drumline.draft.${name}`;
  const [value, setValue] = useState<T>(() => {
    const text = localStorage.getItem(key);
    return text === null ? first : (JSON.parse(text) as T);
  });
  return [
    value,
    (next) => {
      if (next === null) localStorage.removeItem(key);
      else localStorage.setItem(key, JSON.stringify(next));
      setValue(next ?? first);
    },
  ];
};
