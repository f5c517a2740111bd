import { useEffect, useState } from 'react';

/**
 * A part of the program that few pages need, fetched when one does; the phone has it without a line, as it keeps the whole
 * program. Undefined: on its way, or not wanted; null: it cannot be had now. The same function at every drawing.
 */
export const usePart = <T>(fetchPart: () => Promise<T>, isWanted = true): T | null | undefined => {
  const [part, setPart] = useState<{ readonly is: T | null }>();
  useEffect(() => {
    if (!isWanted) return;
    let isOver = false;
    const show = (is: T | null) => {
      if (!isOver) setPart({ is });
    };
    fetchPart().then(show, () => show(null));
    return () => {
      isOver = true;
    };
  }, [fetchPart, isWanted]);
  return part?.is;
};
