import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** The page is about to be printed: tables take the place of what only a screen can show. */
export const useIsPrinting = (): boolean => {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    // Before the browser lays the paper out, not after.
    const before = () => flushSync(() => setPrinting(true));
    const after = () => setPrinting(false);
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
    return () => {
      window.removeEventListener('beforeprint', before);
      window.removeEventListener('afterprint', after);
    };
  }, []);
  return isPrinting;
};
